// The worked solution as text: what must stand in it, how wide it is, in which letters.
#include "samples.h"
#include "views/lettering.h"

namespace ohmfold::views {
namespace {

using test::lines_of;
using test::problem_files;
using test::trace_of;

void expect_parts(const std::string& text, const std::vector<std::string>& parts) {
  std::size_t at = 0;
  for (const std::string& part : parts) {
    const std::size_t found = text.find(part, at);
    EXPECT_NE(found, std::string::npos) << "missing (in this order): " << part << "\n" << text;
    if (found != std::string::npos) at = found;
  }
}

TEST(RenderText, KeepsTheWidth) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    for (const Letters letters : {Letters::unicode, Letters::ascii}) {
      TextOptions options;
      options.letters = letters;
      for (const std::string& line : lines_of(render_text(trace, options))) {
        EXPECT_LE(display_width(line), 80U) << file.name << ": " << line;
        EXPECT_FALSE(line.ends_with(' ')) << file.name << ": " << line;
      }
    }
  }
}

TEST(RenderText, WritesAsciiWhereAsked) {
  TextOptions options;
  options.letters = Letters::ascii;
  for (const SourceText& file : problem_files()) {
    for (const char c : render_text(trace_of(file), options)) {
      ASSERT_LT(static_cast<unsigned char>(c), 0x80U) << file.name;
    }
  }
}

TEST(RenderText, ColoursOnlyWhereAsked) {
  const Trace trace = trace_of(problem_files().front());
  EXPECT_EQ(render_text(trace).find('\033'), std::string::npos);
  TextOptions options;
  options.colour = true;
  std::string coloured = render_text(trace, options);
  EXPECT_NE(coloured.find('\033'), std::string::npos);
  for (const std::string code : {"\033[1m", "\033[0m"}) {
    for (std::size_t at = coloured.find(code); at != std::string::npos;
         at = coloured.find(code, at)) {
      coloured.erase(at, code.size());
    }
  }
  EXPECT_EQ(coloured, render_text(trace));
}

TEST(RenderText, LetsNoEscapeOfTheFileThrough) {
  Problem problem = *trace_of(test::kDisagreeing).problem;
  problem.title = "\033[31mred";
  EXPECT_EQ(render_text(solve(problem)).find('\033'), std::string::npos);
}

TEST(RenderText, UsesTheFiguresAskedFor) {
  const Trace trace = trace_of(
      "battery E = 1 V from G to T\nresistor R1 = 3 ohm from T to G\nfind current through R1\n");
  TextOptions options;
  options.figures = 5;
  expect_parts(render_text(trace, options), {"I_R1 = 1/3 A ≈ 333.33 mA."});
}

// Values of a problem with plain numbers, worked out by hand: R34 = 18, R234 = 6, R = 10 ohm.
TEST(RenderText, GoesThroughAProblemInTheOrderOfAPage) {
  const Trace trace = trace_of(
      "title \"Reference\"\ntext \"How large are the currents?\"\nbattery E = 30 V from G to T\n"
      "resistor R1 = 4 ohm from T to A\nresistor R2 = 9 ohm from A to G\n"
      "resistor R3 = 7 ohm from A to C\nresistor R4 = 11 ohm from C to G\n"
      "find resistance seen by E\nfind current through E\nfind current through R4\n");
  expect_parts(
      render_text(trace),
      {"Reference",
       "How large are the currents?",
       "Given",
       "R4    resistor  11 Ω",
       "Asked",
       "2.  The current through E, I_E, in A.",
       "Assumed",
       "Solution",
       "Plan",
       "Combine R3 and R4 in series, then R2 and R34 in parallel, then R1 and R234 in\nseries",
       "Only R3 and R4 meet at point C, so the same current runs through both.",
       "R34 = R3 + R4 = 7 Ω + 11 Ω = 18 Ω   (more than the larger, 11 Ω)",
       "Redraw 1:",
       "1/R234 = 1/R2 + 1/R34 = 1/(9 Ω) + 1/(18 Ω) = 3/(18 Ω) = 1/(6 Ω)",
       "R234   = 6 Ω   (less than the smaller, 9 Ω)",
       "R1234 = R1 + R234 = 4 Ω + 6 Ω = 10 Ω",
       "R_eq = R1234 = R1 + (R2 ∥ (R3 + R4)) = 10 Ω",
       "I_E     = E / R_eq = 30 V / 10 Ω = 3 A",
       "The way back",
       "Undo step 3",
       "V_R234 = I_R234 · R234 = 3 A · 6 Ω = 18 V",
       "Undo step 2",
       "I_R2  = V_R2 / R2 = 18 V / 9 Ω = 2 A",
       "Undo step 1",
       "V_R3 = I_R3 · R3 = 1 A · 7 Ω = 7 V",
       "R4    11 Ω     11 V  1 A  11 W",
       "Answers",
       "1.  The resistance that battery E sees is R_eq = 10 Ω.",
       "2.  The current through E is I_E = 3 A.",
       "3.  The current through R4 is I_R4 = 1 A.",
       "Check",
       "3 A       = 2 A + 1 A",
       "90 W = 36 W + 36 W + 7 W + 11 W",
       "Caution"});
}

TEST(RenderText, SaysWhereAPartIsCountedTheOtherWay) {
  const Trace trace = trace_of(
      "battery E = 6 V internal 0.5 ohm from G to B\nresistor R1 = 1.5 ohm from A to B\n"
      "resistor R2 = 10 ohm from A to G\nfind current through R1\n");
  expect_parts(render_text(trace),
               {"Current of the battery", "I_E   = E / (R_eq + r_E) = 6 V / (11.5 Ω + 0.5 Ω)",
                "I_R12 = −I_E = −1/2 A", "The way back",
                "I_R2 = −I_R12 = 1/2 A = 0.5 A   (same current, counted the other way)",
                "I_R1 = I_R12 = −1/2 A",
                "I_R1 = −1/2 A = −0.5 A. The minus sign: it runs\n    from B to A."});
}

TEST(RenderText, SaysWhyABridgeNeedsAnotherMethod) {
  const Trace trace = trace_of(
      "battery E = 6 V from G to T\nresistor R1 = 1 ohm from T to A\n"
      "resistor R2 = 2 ohm from A to G\nresistor R3 = 3 ohm from T to B\n"
      "resistor R4 = 4 ohm from B to G\nresistor R5 = 5 ohm from A to B\nfind current through "
      "R5\n");
  expect_parts(render_text(trace),
               {"This is a bridge.", "R5 joins", "V_T − V_G = E = 6 V",
                "(V_A − V_T) / R1 + (V_A − V_G) / R2 + (V_A − V_B) / R5 = 0   (at A)",
                "(V_A − 6 V) / 1 Ω + V_A / 2 Ω + (V_A − V_B) / 5 Ω = 0   (at A)", "V_A = 612/155 V",
                "V_B = 552/155 V", "R_eq = V_E / I_E",
                "The current through R5 is I_R5 = 12/155 A ≈ 77.4 mA."});
}

TEST(RenderText, SaysWhatIsNotDetermined) {
  expect_parts(render_text(trace_of(test::kUndetermined)),
               {"I_W1 is not determined: ideal wires form a loop",
                "1.  The current through W1 is not determined: ideal wires form a loop",
                "2.  The potential at X is not determined: it is joined to nothing",
                "3.  The resistance between X and A is not determined: no path of resistors"});
}

TEST(RenderText, SaysWhatContradicts) {
  expect_parts(render_text(trace_of(test::kShorted)),
               {"Case 1: S open", "R_eq = 4 Ω", "Case 2: S closed",
                "Ideal battery E is short-circuited by S: round the loop through G and T, 18 V is",
                "The cases side by side", "contradiction"});
}

TEST(RenderContradictions, HasOneLineForEach) {
  EXPECT_EQ(render_contradictions(trace_of(test::kShorted)),
            "sample.circuit: case \"S closed\": error: ideal battery E is short-circuited by S: "
            "round the loop through G and T, 18 V is left over\n");
  EXPECT_EQ(render_contradictions(trace_of(test::kDisagreeing)),
            "sample.circuit: error: the ideal parts E2 and E1 form a loop whose voltages do not "
            "sum to zero: round the loop through G and T, 1 V is left over\n");
  EXPECT_EQ(render_contradictions(trace_of(problem_files().front())), "");
}

TEST(RenderText, ComparesCases) {
  for (const SourceText& file : problem_files()) {
    const Trace trace = trace_of(file);
    const bool compares = render_text(trace).find("The cases side by side") != std::string::npos;
    EXPECT_EQ(compares, trace.cases.size() > 1) << file.name;
  }
}

/// A ladder of so many rungs, its resistances all unlike.
std::string ladder(int rungs) {
  std::string text = "battery E = 10 V from G to P0\n";
  for (int i = 0; i < rungs; ++i) {
    const std::string n = std::to_string(i);
    const std::string next = std::to_string(i + 1);
    text += "resistor A" + n + " = " + std::to_string(3 + i % 7) + " ohm from P" + n + " to P" +
            next + "\nresistor B" + n + " = " + std::to_string(5 + i % 11) + " ohm from P" + next +
            " to G\n";
  }
  return text + "find current through E\n";
}

TEST(RenderText, ShowsTheBeginningAndTheEndOfALongSolution) {
  const std::string text = render_text(trace_of(ladder(150)));
  expect_parts(text, {"Of 301 parts", "\n20. ", "Of 299 steps, 274 are not shown here", "\n299. ",
                      "lines of this kind are not shown here"});
  EXPECT_EQ(text.find("\n21. "), std::string::npos);
  EXPECT_LT(lines_of(text).size(), 800U);
}

TEST(RenderText, DescribesNumbersThatAreTooLong) {
  const std::string text = render_text(trace_of(ladder(1500)));
  expect_parts(text, {"digits) Ω ≈ ", "would be too long to write",
                      "The current through E is I_E = (a fraction of", "modulo random primes"});
  for (const std::string& line : lines_of(text)) {
    EXPECT_LE(display_width(line), 80U) << line;
  }
}

}  // namespace
}  // namespace ohmfold::views
