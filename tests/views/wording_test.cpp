// Every fact, law, reason and caution has words that name its parts and points.
#include "views/wording.h"

#include <set>

#include "samples.h"

namespace ohmfold::views {
namespace {

using test::trace_of;

class WordingTest : public testing::Test {
 protected:
  static constexpr PointId kA{2};
  static constexpr PointId kB{3};
  static constexpr PartId kE{0}, kR1{1}, kR2{2}, kR5{3}, kS{4}, kM{5}, kN{6}, kW{7}, kZ{8};

  std::string text(const Fact& fact) const { return plain_text(words_.fact(fact)); }
  std::string text(const Return& item) const { return plain_text(words_.reason(item)); }
  std::string text(const Caution& caution) const { return plain_text(words_.caution(caution)); }

  Trace trace_ = trace_of(
      "battery E = 6 V internal 1 ohm from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to B\nresistor R5 = 5 ohm from B to G\nswitch S from A to B\n"
      "voltmeter M from A to B\nammeter N from T to U\nwire W from U to V\n"
      "resistor Z = 0 ohm from V to U\ncase \"open\": S open\n");
  const Reduction& reduction_ = trace_.cases.front().main;
  PartNames names_{*trace_.problem, reduction_};
  Wording words_{*trace_.problem, reduction_, names_};
};

TEST_F(WordingTest, HasAClauseForEveryFact) {
  const std::vector<std::pair<Fact, std::string>> rows{
      {IsOpenSwitch{kS}, "switch S is open, so it joins nothing"},
      {IsVoltmeter{kM}, "voltmeter M is ideal, so no current runs through it"},
      {IsTakenOut{kR5}, "R5 is taken out"},
      {IsTakenOut{kE}, "battery E is lifted out"},
      {IsWire{kW}, "W is an ideal wire"},
      {IsWire{kZ}, "Z has 0 Ω, so it is an ideal wire"},
      {IsWire{kE}, "battery E is replaced by its internal resistance of 0 Ω, an ideal wire"},
      {IsClosedSwitch{kS}, "switch S is closed, so it is an ideal wire"},
      {IsAmmeter{kN}, "ammeter N is ideal, so it is a wire"},
      {IsShorted{kR5}, "a wire stands in place of R5"},
      {BothEndsOn{kR5, kA}, "both ends of R5 are joined to point A"},
      {HangsFrom{kA}, "only point A joins this piece to the rest of the circuit"},
      {IsOnlyLink{kR5}, "R5 is the only link between its two sides"},
      {JoinedToNothing{}, "no source is joined to this piece"},
      {MeetOnlyAt{kR1, kR2, kA}, "only R1 and R2 meet at point A"},
      {JoinSameTwoPoints{kA, kB}, "the parts join the same two points, A and B"},
      {CarryOneCurrent{kR1, kR5}, "whatever current passes R1 passes R5 too"},
      {TooFewParts{}, "it takes two parts or more"},
      {AlsoMeets{kR5, kB}, "at point B, R5 is joined too"},
      {SourceBetween{kE, kA}, "at point A, battery E is joined too"},
      {SourceBetween{PartId{99}, kA}, "point A is one of the two points asked about"},
      {ShareNoPoint{kR1, kR5}, "R1 and R5 share no point"},
      {EndsDiffer{kR1, kR2, kA, kB}, "R1 ends at point A, but R2 ends at point B"},
      {NotAResistor{kS}, "switch S is not a resistor"},
      {NotAResistor{kE}, "battery E is not a resistor"},
      {IsNotAGap{kM}, "voltmeter M joins its two points, so it cannot be left out"},
      {IsNotAWire{kR1}, "R1 is not an ideal wire"},
      {EndsApart{kR1, kA, kB}, "the ends of R1 are two different points, A and B"},
      {LiesOnALoop{kR1}, "a closed path through a source runs through R1"},
      {ChainCloses{kR1, kA}, "the chain that begins with R1 comes back to point A"},
      {NotABattery{kR1}, "R1 is not a battery"},
      {IsSwitchedOff{kE}, "source E is replaced by a gap: it gives no current"},
      {DriveAlike{kE, kR1}, "E and R1 drive it the same way"},
      {DriveAgainst{kE, kR1}, "R1 drives against E"},
      {FormDelta{kA, kB, kA}, "the parts form a triangle between A, B and A"},
      {AllMeetAt{kA}, "nothing else is joined at point A"},
      {Balanced{kR5, kR1, kR2, kR2, kR1},
       "R1 is to R2 as R2 is to R1, so there is no voltage across R5"},
      {Symmetric{kA, kB}, "a symmetry of the circuit puts point B in the place of point A"},
      {InTheMiddle{kA}, "point A is half-way between the terminals"},
      {Moves{kA, kB}, "it moves A to B"},
      {SamePotential{kA, kB}, "points A and B are at the same potential"},
      {WrongNumber{3, false}, "it takes 3 parts"},
      {WrongNumber{4, true}, "it takes 4 parts or more"},
      {FormNoDelta{kR1}, "R1 does not close a triangle with the others"},
      {EndTogether{kR1, kR2, kA}, "R1 and R2 both end at point A"},
      {PotentialsDiffer{kA, kB}, "point A is at a higher potential than point B"},
      {NotOneSource{}, "potentials are compared as one source drives them through resistors alone"},
      {NotFed{kA}, "no resistors join point A to the source"},
      {CarryOneCurrent{kR1, kR2}, "whatever current passes R1 passes R2 too"},
      {TooLargeToTell{}, "the circuit is too large to compare its potentials exactly"},
  };
  std::set<std::size_t> seen;
  for (const auto& [fact, expected] : rows) {
    EXPECT_EQ(text(fact), expected);
    seen.insert(fact.index());
  }
  EXPECT_EQ(seen.size(), std::variant_size_v<Fact>) << "a fact without a row";
}

TEST_F(WordingTest, HasASentenceForEveryLaw) {
  for (int i = 0; i <= static_cast<int>(Law::superposition); ++i) {
    Return item;
    item.law = static_cast<Law>(i);
    item.part = kR1;
    item.from = {kR2};
    item.value = Undetermined::ideal_loop;
    const std::string sentence = text(item);
    EXPECT_TRUE(sentence.ends_with('.')) << sentence;
    EXPECT_FALSE(law_title(item.law).empty());
    EXPECT_FALSE(law_word(item.law).empty());
  }
}

TEST_F(WordingTest, RemarksNameTheBattery) {
  EXPECT_EQ(
      plain_text(words_.remark({RemarkKind::battery_charged, kE, Current{2}})),
      "Battery E is being charged: 2 A runs into its + terminal, so it takes up power instead "
      "of delivering it.");
  EXPECT_EQ(plain_text(words_.remark({RemarkKind::battery_idle, kE, Current{}})),
            "Battery E delivers nothing: no current runs through it.");
}

TEST_F(WordingTest, CautionsNameThePartAndTheValue) {
  EXPECT_EQ(text(Caution{CautionKind::part_power, kR1, Power{2}}),
            "R1 takes up 2 W: more than the 1/4 W that a common small resistor bears.");
  EXPECT_EQ(text(Caution{CautionKind::high_voltage, kR1, Voltage{72}}),
            "There is 72 V across R1: more than 60 V can give a dangerous shock.");
  EXPECT_EQ(text(Caution{CautionKind::high_voltage, PartId{}, Voltage{72}}),
            "Between two of the points there is 72 V: more than 60 V can give a dangerous shock.");
  EXPECT_EQ(text(Caution{CautionKind::battery_current, kE, Current{11}}),
            "Battery E gives 11 A: currents above 10 A heat wires and can start a fire.");
  EXPECT_EQ(text(Caution{CautionKind::short_circuit, kE, Current{30}}),
            "Battery E is short-circuited and gives 30 A: a real one gets hot and can burst.");
}

/// The reasons of the steps of a circuit's first case.
std::vector<std::string> reasons(const std::string& text) {
  const Trace trace = trace_of(text);
  const Reduction& reduction = trace.cases.front().main;
  const PartNames names(*trace.problem, reduction);
  const Wording words(*trace.problem, reduction, names);
  std::vector<std::string> result;
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    result.push_back(plain_text(words.reason(reduction.steps[i])));
  }
  return result;
}

TEST(StepReason, NamesPartsAndPoints) {
  EXPECT_EQ(reasons("battery E = 6 V from G to T\nresistor R1 = 1 ohm from T to A\n"
                    "resistor R2 = 2 ohm from A to B\nresistor R3 = 3 ohm from B to G\n"
                    "resistor R4 = 3 ohm from T to G\n"),
            (std::vector<std::string>{
                "Only R1 and R2 meet at point A, and only R2 and R3 at point B, so the same "
                "current runs through all of them.",
                "R4 and R123 both join T and G, so the same voltage lies across both."}));
}

TEST(StepReason, SaysWhatBecomesOnePoint) {
  EXPECT_EQ(
      reasons("battery E = 6 V from G to T\nwire from T to A\nresistor R1 = 1 ohm from A to G\n"
              "resistor R2 = 1 ohm from T to A\nresistor R3 = 1 ohm from A to X\n"),
      (std::vector<std::string>{
          "Wire 1 is an ideal wire. No voltage lies between T and A, so from here on they "
          "are one point, called T.",
          "Both ends of R2 are joined to point T, so there is no voltage across it and no "
          "current runs through it.",
          "R3 meets the rest of the circuit at point T alone, so no closed path runs "
          "through it: it carries no current."}));
}

TEST(StepReason, ListsNoMoreThanAFewFacts) {
  std::string text = "battery E = 6 V from P0 to P9\n";
  for (int i = 0; i < 9; ++i) {
    text += "resistor R" + std::to_string(i + 1) + " = 1 ohm from P" + std::to_string(i) + " to P" +
            std::to_string(i + 1) + "\n";
  }
  const std::string reason = reasons(text).front();
  EXPECT_NE(reason.find("and so on"), std::string::npos) << reason;
  EXPECT_LT(reason.size(), 250U);
}

TEST(Words, BlameNobody) {
  for (const SourceText& file : test::problem_files()) {
    const std::string text = render_text(trace_of(file));
    for (const char* word : {"wrong", "mistake", "you ", "You ", "error", "obviously", "simply"}) {
      // The problem's own statement may say what it likes.
      EXPECT_EQ(text.find(word, text.find("\nGiven")), std::string::npos) << file.name << word;
    }
  }
}

}  // namespace
}  // namespace ohmfold::views
