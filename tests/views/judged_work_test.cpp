// Lines, values as they were written, and names of a judged work.
#include "views/judged_work.h"

#include "judged_samples.h"

namespace ohmfold::views {
namespace {

using test::JudgedSample;

TEST(FiguresOf, CountsWhatIsWritten) {
  const std::vector<std::pair<std::string, std::optional<int>>> rows{{"18.0", 3},
                                                                     {"0.0180", 3},
                                                                     {"6", 1},
                                                                     {"-0.5", 1},
                                                                     {"6.67", 3},
                                                                     {"20/3", std::nullopt},
                                                                     {"1200", std::nullopt},
                                                                     {"1201", 4},
                                                                     {"1.2e3", std::nullopt},
                                                                     {"0", std::nullopt},
                                                                     {"", std::nullopt},
                                                                     {".50", 2}};
  for (const auto& [digits, figures] : rows) EXPECT_EQ(figures_of(digits), figures) << digits;
}

TEST(WrittenWords, KeepDigitsPrefixAndUnit) {
  const auto text = [](const std::string& digits, std::optional<Unit> unit, int power) {
    return plain_text(written_words(JudgedSample::written(digits, unit, power), 3));
  };
  EXPECT_EQ(text("6.670", Unit::ohm, 0), "6.670 Ω");
  EXPECT_EQ(text("6.67", Unit::ohm, 3), "6.67 kΩ");
  EXPECT_EQ(text("20/3", Unit::ampere, -3), "20/3 mA");
  EXPECT_EQ(text("-0.5", std::nullopt, 0), "−0.5");
  EXPECT_EQ(text("2", Unit::volt, 1), "20 V");  // no prefix stands for ten
}

TEST(JudgedLine, GivesTheRightValueInTheFormOfTheWrittenOne) {
  JudgedSample sample;
  CombineClaim claim;
  claim.value = JudgedSample::written("6.67", Unit::ohm, 3);
  Judgement& line = sample.add("R12 = R1 + R2 = 6.67 kohm", claim);
  line.right = Quantity(Number(6661), Unit::ohm);
  const JudgedWork judged(sample.exercise, sample.work, sample.judged);
  EXPECT_EQ(plain_text(JudgedLine(judged, 0).right_as_stated()), "6.66 kΩ");
}

TEST(JudgedLine, AimsAtThePersonsOwnNumbers) {
  JudgedSample sample;
  Judgement& line = sample.add_value(Claimed::current, "R2", "1", Unit::ampere);
  line.right = Quantity(Number(2), Unit::ampere);
  const JudgedWork judged(sample.exercise, sample.work, sample.judged);
  EXPECT_EQ(JudgedLine(judged, 0).target()->number, Number(2));
  line.own = Quantity(Number(3), Unit::ampere);
  EXPECT_EQ(JudgedLine(judged, 0).target()->number, Number(3));
}

TEST(JudgedWork, CountsLinesAsTheFileDoes) {
  JudgedSample sample;
  for (int i = 0; i < 3; ++i) sample.add_value(Claimed::current, "R2", "1", Unit::ampere);
  sample.work.claims[0].where.line = 4;
  sample.work.claims[1].where.line = 9;
  sample.work.claims[2].where.line = 0;  // no place: the claim itself is counted
  const JudgedWork judged(sample.exercise, sample.work, sample.judged);
  const std::vector<std::size_t> all{0, 1, 2};
  EXPECT_EQ(plain_text(judged.lines(all)), "lines 4, 9 and 3");
  EXPECT_EQ(plain_text(judged.lines(std::span(all).first(1))), "line 4");
}

TEST(CaseWords, SayWhatAClaimIsAbout) {
  const JudgedSample sample;
  const JudgedWork judged(sample.exercise, sample.work, sample.judged);
  const CaseWords& words = judged.of_case(0);
  const PartId e = sample.part("E");
  const PointId a = sample.point("A");
  const PointId b = sample.point("B");
  const std::vector<std::string> expected{"the current through E",
                                          "the voltage across E",
                                          "the power in E",
                                          "the value of E",
                                          "the voltage from A to B",
                                          "the potential at A",
                                          "the resistance between A and B",
                                          "the resistance that battery E feeds",
                                          "the equivalent resistance"};
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(plain_text(words.quantity(static_cast<Claimed>(i), e, a, b)), expected[i]);
  }
}

TEST(PartNames, CanBeThoseOfANetworkOfItsOwn) {
  const JudgedSample sample;
  const PartNames names(*sample.exercise.problem, {"R1", "Rx"},
                        {"G", "A", "B", "D", "C", "F", "N1"});
  EXPECT_EQ(names.of(PartId{1}), "Rx");
  EXPECT_EQ(names.of(PointId{1}), "A");
  EXPECT_EQ(names.of(PointId{6}), "N1");
}

}  // namespace
}  // namespace ohmfold::views
