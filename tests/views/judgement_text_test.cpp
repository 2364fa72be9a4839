// A judged work as text: what stands where, and that it fits the width.
#include "judged_samples.h"
#include "views/lettering.h"

namespace ohmfold {
namespace {

using test::JudgedSample;

std::string text_of(const JudgedSample& sample, const TextOptions& options = {}) {
  return render_judgement_text(sample.exercise, sample.work, sample.judged, options);
}

/// A work with a right line, one that is not, one that follows from it, and one without a name.
JudgedSample mixed() {
  JudgedSample sample;
  Judgement& series = sample.add_combination(Joining::series, "R3 R4", "R34", "18");
  series.value = ValueVerdict::exact;
  series.why = {MeetOnlyAt{sample.part("R3"), sample.part("R4"), sample.point("C")}};
  Judgement& added = sample.add_combination(Joining::parallel, "R2 R34", "R234", "27");
  added.value = ValueVerdict::wrong;
  added.right = Quantity(Number(6), Unit::ohm);
  Diagnosis diagnosis;
  diagnosis.error = KnownError::added_in_parallel;
  diagnosis.parts = added.operands;
  added.errors = {diagnosis};
  Judgement& current = sample.add_value(Claimed::current, "E", "0.909", Unit::ampere);
  current.value = ValueVerdict::on_own;
  current.caused_by = {1};
  current.right = Quantity(parse_number("5/2").number, Unit::ampere);
  Judgement& unknown = sample.add_value(Claimed::power, "R2", "36", Unit::watt);
  unknown.hindrance = Hindrance::unknown_name;
  unknown.name = "R43";
  unknown.suggestion = "R34";
  sample.judged.cases.front().attempted = {0};
  sample.judged.cases.front().answered = {2};
  sample.judged.cases.front().open = {1};
  sample.judged.marks.method = 3;
  sample.judged.marks.most_method = 4;
  sample.judged.marks.accuracy = 2;
  sample.judged.marks.most_accuracy = 4;
  return sample;
}

TEST(JudgementText, SaysLineMarkAndReplyThenWhatIsAskedAndTheMarks) {
  EXPECT_EQ(text_of(mixed()),
            "1.  R34 = R3 + R4 = 18 ohm\n"
            "    ✓ right. R3 and R4: nothing else joins at point C. The value is right.\n"
            "\n"
            "2.  R234 = R2 || R34 = 27 ohm\n"
            "    ✗ not right. 27 Ω comes out when R2 and R34 are added. Compare the result\n"
            "    with the smaller of R2 and R34: should parts in parallel make more than\n"
            "    that, or less?\n"
            "\n"
            "3.  current through E = 0.909 A\n"
            "    → follows. The value is right on your own earlier numbers, from line 2.\n"
            "\n"
            "4.  power in R2 = 36 W\n"
            "    ? cannot be judged. Nothing is called R43. Is R34 meant?\n"
            "\n"
            "\n"
            "So far\n"
            "══════\n"
            "•   Right so far: the power in R2.\n"
            "•   Not right yet: the current through E.\n"
            "•   Still asked: the voltage from A to B.\n"
            "\n"
            "Marks: method 3 of 4, accuracy 2 of 4. In all 5 of 8.\n");
}

TEST(JudgementText, FitsTheWidth) {
  for (const int width : {40, 60, 80, 120}) {
    TextOptions options;
    options.width = width;
    for (const std::string& line : test::lines_of(text_of(mixed(), options))) {
      EXPECT_LE(views::display_width(line), static_cast<std::size_t>(width)) << line;
    }
  }
}

TEST(JudgementText, IsPlainWhereThatIsAskedFor) {
  TextOptions options;
  options.letters = Letters::ascii;
  const std::string text = text_of(mixed(), options);
  for (const char c : text) EXPECT_LT(static_cast<unsigned char>(c), 0x80U);
  EXPECT_NE(text.find("x not right"), std::string::npos);
  EXPECT_NE(text.find("-> follows"), std::string::npos);
  EXPECT_EQ(text.find('\033'), std::string::npos);
}

TEST(JudgementText, HasColourOnlyWhereThatIsAskedFor) {
  TextOptions options;
  options.colour = true;
  EXPECT_NE(text_of(mixed(), options).find('\033'), std::string::npos);
  EXPECT_EQ(text_of(mixed()).find('\033'), std::string::npos);
}

TEST(JudgementText, GivesNoRightValueAway) {
  const JudgedSample sample = mixed();
  EXPECT_EQ(text_of(sample).find("5/2"), std::string::npos);
  EXPECT_EQ(text_of(sample).find("2.5"), std::string::npos);
  EXPECT_EQ(text_of(sample).find("6 Ω"), std::string::npos);
}

TEST(JudgementText, TellsTheLostMarksForUnitAndFigures) {
  JudgedSample sample = mixed();
  TextOptions options;
  options.width = 200;
  const auto ends_with = [&](const std::string& end) {
    return text_of(sample, options).ends_with(end);
  };
  EXPECT_TRUE(ends_with("accuracy 2 of 4. In all 5 of 8.\n"));
  sample.judged.marks.unit_lost = true;
  EXPECT_TRUE(ends_with("One mark less for a unit, once in a work. In all 4 of 8.\n"));
  sample.judged.marks.figures_lost = true;
  EXPECT_TRUE(ends_with("One mark less for figures, once in a work. In all 3 of 8.\n"));
}

TEST(JudgementText, GroupsTheLinesByCase) {
  JudgedSample sample(
      "battery E = 6 V from G to A\nresistor R1 = 2 ohm from A to B\n"
      "resistor R2 = 1 ohm from B to G\nswitch S from A to B\nfind current through E\n");
  ASSERT_EQ(sample.judged.cases.size(), 2U);
  for (const std::size_t one : {1U, 0U}) {
    Judgement& line = sample.add_value(Claimed::current, "E", one == 0 ? "2" : "6", Unit::ampere);
    line.case_index = one;
    line.value = ValueVerdict::exact;
    sample.judged.cases[one].answered = {0};
  }
  const std::string text = text_of(sample);
  const std::size_t first = text.find("Case \"S open\"\n");
  const std::size_t second = text.find("Case \"S closed\"\n");
  ASSERT_NE(first, std::string::npos) << text;
  ASSERT_NE(second, std::string::npos) << text;
  EXPECT_LT(first, second);
  EXPECT_LT(text.find("2.  current through E = 2 A"), second);
  EXPECT_NE(text.find("Nothing more is asked."), std::string::npos);
}

TEST(JudgementText, LosesNoLineOfACaseThatIsNotBegun) {
  JudgedSample sample(
      "battery E = 6 V from G to A\nresistor R1 = 2 ohm from A to G\nswitch S from A to X\n");
  ASSERT_EQ(sample.judged.cases.size(), 2U);
  for (CaseStanding& one : sample.judged.cases) one.is_begun = false;
  Judgement& line = sample.add("case \"S ajar\"", CaseClaim{{"S ajar", {}}});
  line.hindrance = Hindrance::unknown_name;
  line.name = "S ajar";
  EXPECT_NE(text_of(sample).find("? cannot be judged. Nothing in the problem or in another line"),
            std::string::npos)
      << text_of(sample);
}

TEST(JudgementText, SaysNothingOfALineThatOnlyStartsACase) {
  JudgedSample sample;
  sample.add("case \"S open\"", CaseClaim{{"S open", {}}});
  EXPECT_EQ(text_of(sample).find("case \"S open\""), std::string::npos);
}

TEST(Reply, IsOneWrappedParagraph) {
  TextOptions options;
  options.width = 40;
  const JudgedSample sample = mixed();
  const std::string reply = render_reply(sample.exercise, sample.work, sample.judged, 1, options);
  EXPECT_TRUE(reply.starts_with("27 Ω comes out when R2 and R34 are\nadded.")) << reply;
  EXPECT_TRUE(reply.ends_with("?\n")) << reply;
}

TEST(Hint, StatesAValueOnlyAtTheLastLevel) {
  const JudgedSample sample = mixed();
  Hint hint;
  hint.kind = HintKind::mend;
  hint.claim = 1;
  const auto text = [&](HintLevel level) {
    return render_hint(sample.exercise, sample.work, sample.judged, hint, level);
  };
  EXPECT_EQ(text(HintLevel::nudge).find("6 Ω"), std::string::npos);
  EXPECT_EQ(text(HintLevel::point).find("6 Ω"), std::string::npos);
  EXPECT_NE(text(HintLevel::tell).find("That makes 6 Ω."), std::string::npos);
}

TEST(Standing, ListsThePartsThatAreLeftWithThePersonsOwnValues) {
  JudgedSample sample(
      "battery E = 6 V internal 1 ohm from G to A\nresistor R1 = 2 ohm from A to B\n"
      "resistor R2 = 3 ohm from B to G\n");
  CaseStanding standing = sample.judged.cases.front();
  standing.own_resistance.assign(standing.network.part_count(), std::nullopt);
  standing.own_resistance[sample.part("R12").index] = Number::quotient(11, 2);
  standing.is_own = true;
  EXPECT_EQ(render_standing(sample.exercise, standing),
            "Part  from  to  value\n"
            "────  ────  ──  ─────────────────\n"
            "E     G     A   6 V, internal 1 Ω\n"
            "R12   A     G   11/2 Ω = 5.5 Ω\n"
            "\n"
            "This is the circuit as the lines so far have left it. One of them is not right,\n"
            "so it is not the one of the problem.\n");
}

}  // namespace
}  // namespace ohmfold
