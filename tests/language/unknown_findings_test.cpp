// What is said of a file in which unknown values and given facts do not fit each other.

#include <gtest/gtest.h>

#include <algorithm>

#include "language/findings_of.h"

namespace ohmfold {

using enum DiagnosticKind;

const std::vector<FindingRow>& unknown_rows() {
  static const std::vector<FindingRow> kRows{
      {unknown_here,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "battery F = 4 V internal unknown from G to T\n"
       "case \"a\": R1 = unknown\n",
       "a.circuit:3:26: error: 'unknown' cannot stand here; write a number and a unit\n"
       "    battery F = 4 V internal unknown from G to T\n"
       "                             ^~~~~~~\n"
       "a.circuit:4:11: error: 'R1' is a resistor: its value is unknown; a case can remove or "
       "short it\n"
       "    case \"a\": R1 = unknown\n"
       "              ^~\n"},
      {wrong_kind_of_part,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "case \"a\": R1 = 4 ohm\n"
       "given current through E = 2 A\n",
       "a.circuit:3:11: error: 'R1' is a resistor: its value is unknown; a case can remove or "
       "short it\n"
       "    case \"a\": R1 = 4 ohm\n"
       "              ^~\n"},
      {value_is_known,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "resistor R2 = 4 ohm from T to G\n"
       "given current through E = 2 A\n"
       "find R2\n",
       "a.circuit:5:6: error: the value of 'R2' is known; ask for its current, voltage or power\n"
       "    find R2\n"
       "         ^~\n"},
      {wrong_kind_of_part,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "wire W from T to T2\n"
       "given current through E = 2 A\n"
       "find W\n",
       "a.circuit:5:6: error: 'W' is a wire: it has no value\n"
       "    find W\n"
       "         ^\n"},
      {too_few_givens,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n",
       "a.circuit:2:10: error: an unknown value needs a known fact, and the file gives none; add a "
       "line such as: given current through R1 = 2 A\n"
       "    resistor R1 = unknown from T to G\n"
       "             ^~\n"},
      {too_few_givens,
       "battery E = unknown from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given current through E = 2 A\n",
       "a.circuit:2:10: error: 2 unknown values need 2 known facts, and the file gives 1; add a "
       "line such as: given current through R1 = 2 A\n"
       "    resistor R1 = unknown from T to G\n"
       "             ^~\n"},
      {too_many_unknowns,
       "battery E = 12 V from G to T\n"
       "lamp L1 = unknown from T to G\n"
       "lamp L2 = unknown from T to G\n"
       "lamp L3 = unknown from T to G\n"
       "lamp L4 = unknown from T to G\n"
       "lamp L5 = unknown from T to G\n"
       "lamp L6 = unknown from T to G\n"
       "lamp L7 = unknown from T to G\n"
       "lamp L8 = unknown from T to G\n"
       "lamp L9 = unknown from T to G\n",
       "a.circuit:10:6: error: this is unknown number 9; values are found for up to 8 unknowns\n"
       "    lamp L9 = unknown from T to G\n"
       "         ^~\n"},
      {given_without_unknown,
       "battery E = 12 V from G to T\n"
       "resistor R1 = 4 ohm from T to G\n"
       "given current through E = 3 A\n",
       "a.circuit:3:7: error: something is given, and no value is unknown; write unknown in place "
       "of the value that is to be found\n"
       "    given current through E = 3 A\n"
       "          ^~~~~~~\n"},
      {given_resistance_zero,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given resistance between T and G = 0\n",
       "a.circuit:3:7: error: a given resistance cannot be zero\n"
       "    given resistance between T and G = 0\n"
       "          ^~~~~~~~~~\n"},
      {negative_resistance,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given resistance seen by E = -4 ohm\n",
       "a.circuit:3:30: error: a resistance cannot be negative\n"
       "    given resistance seen by E = -4 ohm\n"
       "                                 ^~\n"},
      {given_needs_case,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "switch S from T to G\n"
       "given current through E = 2 A in case \"S open\"\n"
       "given voltage across S = 9 V\n",
       "a.circuit:5:7: error: this given names no case, and another one does; say for each in "
       "which case it holds\n"
       "    given voltage across S = 9 V\n"
       "          ^~~~~~~\n"},
      {unknown_case,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "switch S from T to G\n"
       "given current through E = 2 A in case \"S shut\"\n",
       "a.circuit:4:39: error: there is no case \"S shut\"; the cases are S open and S closed\n"
       "    given current through E = 2 A in case \"S shut\"\n"
       "                                          ^~~~~~~~\n"},
      {unknown_case,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given current through E = 2 A in case \"hot\"\n",
       "a.circuit:3:39: error: there is no case \"hot\"; this circuit has no cases\n"
       "    given current through E = 2 A in case \"hot\"\n"
       "                                          ^~~~~\n"},
      {unknown_beside_symbol,
       "symbol r\n"
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "resistor R2 = 2 r from T to G\n"
       "given current through E = 2 A\n",
       "a.circuit:3:10: error: the value of 'R1' is unknown while symbol 'r' has no value; give "
       "the symbol a value\n"
       "    resistor R1 = unknown from T to G\n"
       "             ^~\n"
       "a.circuit:1:8: note: first here\n"
       "    symbol r\n"
       "           ^\n"},
      {wrong_unit,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given current through E = 2 V\n",
       "a.circuit:3:29: error: 'V' is no unit of current; the unit here is A\n"
       "    given current through E = 2 V\n"
       "                                ^\n"},
      {prefix_without_unit,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given power in R1 = 2 m\n",
       "a.circuit:3:23: error: 'm' is a prefix without a unit; write mW\n"
       "    given power in R1 = 2 m\n"
       "                          ^\n"},
      {expected,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given R1 = 4 ohm\n",
       "a.circuit:3:7: error: expected current, voltage, potential, power or resistance, found "
       "'R1'\n"
       "    given R1 = 4 ohm\n"
       "          ^~\n"},
      {expected,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given current through E\n",
       "a.circuit:3:24: error: expected '=', found the end of the line\n"
       "    given current through E\n"
       "                           ^\n"},
      {expected,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given current through E = 2 A in \"hot\"\n",
       "a.circuit:3:34: error: expected 'case', found a text in quotes\n"
       "    given current through E = 2 A in \"hot\"\n"
       "                                     ^~~~~\n"},
      {unknown_part,
       "battery E = 12 V from G to T\n"
       "resistor R1 = unknown from T to G\n"
       "given current through F = 2 A\n",
       "a.circuit:3:23: error: there is no part 'F'; the parts are E and R1\n"
       "    given current through F = 2 A\n"
       "                          ^\n"},
  };
  return kRows;
}

namespace {

TEST(UnknownFindings, AreShownToTheLastCharacter) {
  for (const FindingRow& row : unknown_rows()) {
    EXPECT_EQ(circuit_findings(row.input), row.expected);
    const Diagnostics found = read_circuit(circuit_text(row.input)).diagnostics;
    EXPECT_TRUE(std::ranges::any_of(found, [&](const Diagnostic& each) {
      return each.kind == row.kind;
    })) << row.expected;
  }
}

TEST(UnknownFindings, LeaveNoProblem) {
  for (const FindingRow& row : unknown_rows()) {
    EXPECT_FALSE(read_circuit(circuit_text(row.input)).value) << row.expected;
  }
}

Problem read(std::string_view text) {
  Outcome<Problem> outcome = read_circuit(circuit_text(text));
  EXPECT_TRUE(outcome.value) << circuit_findings(text);
  return outcome.value ? std::move(*outcome.value) : Problem{};
}

TEST(ReadUnknowns, MakesAnUnknownTheSymbolOfItsName) {
  const Problem problem = read(
      "battery E = unknown internal 2 ohm from G to T\nlamp L = unknown from T to G\n"
      "resistor R = 3 ohm from T to G\n"
      "given current through E = 2 A\ngiven power in L = 500 mW\nfind E\nfind L\n");
  ASSERT_EQ(problem.parts.size(), 3U);
  EXPECT_TRUE(problem.parts[0].unknown);
  EXPECT_EQ(problem.parts[0].value, Number::symbol("E"));
  EXPECT_EQ(problem.parts[0].internal, Number(2));
  EXPECT_TRUE(problem.parts[1].unknown);
  EXPECT_FALSE(problem.parts[2].unknown);
  ASSERT_EQ(problem.questions.size(), 2U);
  EXPECT_EQ(to_string(problem.questions[1], problem), "L");
}

TEST(ReadUnknowns, ReadsEachGivenInTheUnitOfItsQuestion) {
  const Problem problem = read(
      "battery E = 9 V from G to T\nlamp L = unknown from T to A\nresistor R = 3 ohm from A to G\n"
      "given current through L = 250 mA\ngiven voltage across R = 3\n"
      "given voltage from T to A = 1/2 V\ngiven potential at A = -2 V\ngiven power in E = 1.5 W\n"
      "given resistance between T and G = 4k7\ngiven resistance seen by E = 12 ohm\n");
  const std::vector<std::pair<std::string, Number>> expected{
      {"current through L", Number(1) / Number(4)},
      {"voltage across R", Number(3)},
      {"voltage from T to A", Number(1) / Number(2)},
      {"potential at A", Number(-2)},
      {"power in E", Number(3) / Number(2)},
      {"resistance between T and G", Number(4700)},
      {"resistance seen by E", Number(12)}};
  ASSERT_EQ(problem.givens.size(), expected.size());
  for (std::size_t i = 0; i < expected.size(); ++i) {
    EXPECT_EQ(to_string(problem.givens[i].question, problem), expected[i].first);
    EXPECT_EQ(problem.givens[i].value, expected[i].second) << expected[i].first;
    EXPECT_FALSE(problem.givens[i].held_in);
  }
}

TEST(ReadUnknowns, KeepsTheCaseThatAGivenNames) {
  const Problem problem = read(
      "battery E = 9 V from G to T\nlamp L = unknown from T to A\nswitch S from A to G\n"
      "resistor R = 3 ohm from A to G\ngiven current through L = 1 A in case \"S open\"\n");
  ASSERT_EQ(problem.givens.size(), 1U);
  ASSERT_TRUE(problem.givens[0].held_in);
  EXPECT_EQ(problem.givens[0].held_in->label, "S open");
  EXPECT_EQ(problem.givens[0].held_in->settings.size(), 1U);
}

TEST(ReadUnknowns, SaysNothingOfALooseEndThatAGivenNames) {
  EXPECT_EQ(circuit_findings("battery E = 9 V from G to T\nlamp L = unknown from T to G\n"
                             "resistor R = 3 ohm from T to X\ngiven voltage from X to G = 9 V\n"
                             "given current through L = 1 A\n"),
            "");
}

}  // namespace
}  // namespace ohmfold
