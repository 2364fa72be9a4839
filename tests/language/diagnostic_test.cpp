// Every kind of finding is shown here once, to the last character.

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>
#include <vector>

#include "language/findings_of.h"
#include "language/symbol_rows.h"

namespace ohmfold {
namespace {

/// A circuit file (or what stands after the two good lines of one) and all that is said of it.
struct Row {
  DiagnosticKind kind;
  std::string input;
  std::string expected;
};

const std::string kGood =
    "battery E = 12 V from G to T\n"
    "resistor R1 = 4 ohm from T to G\n";

using enum DiagnosticKind;

const std::vector<Row>& rows() {
  static const std::vector<Row> kRows{
      {not_utf8, "title \"caf\xE9\"\n" + kGood,
       "a.circuit:1:11: error: this byte is not UTF-8 text; save the file as UTF-8\n"
       "    title \"caf\xEF\xBF\xBD\"\n"
       "              ^\n"},
      {nul_byte, std::string("title \"a\0b\"\n", 12) + kGood,
       "a.circuit:1:9: error: a NUL byte stands here; a circuit is plain text\n"
       "    title \"a\xEF\xBF\xBD"
       "b\"\n"
       "            ^\n"},
      {stray_character, "title \"\x1B[31m\"\n" + kGood,
       "a.circuit:1:8: error: the character U+001B has no place in a text; remove it\n"
       "    title \"\xEF\xBF\xBD[31m\"\n"
       "           ^\n"},
      {stray_character, "title \"a\u202Eb\"\n" + kGood,
       "a.circuit:1:9: error: the character U+202E has no place in a text; remove it\n"
       "    title \"a\xEF\xBF\xBD"
       "b\"\n"
       "            ^\n"},
      {unclosed_text, "title \"Porch\n" + kGood,
       "a.circuit:1:7: error: this text has no closing quote; a text ends with \" on the same "
       "line\n"
       "    title \"Porch\n"
       "          ^\n"},
      {line_too_long, "# " + std::string(4'000'000, '-') + "\n" + kGood,
       "a.circuit:1:1: error: this line has more than 4000000 bytes\n"
       "    # " +
           std::string(75, '-') +
           "...\n"
           "    ^\n"},
      {unknown_statement, kGood + "resitor R2 = 4 ohm from T to G\nfind power in R2\n",
       "a.circuit:3:1: error: 'resitor' is not a statement; did you mean 'resistor'?\n"
       "    resitor R2 = 4 ohm from T to G\n"
       "    ^~~~~~~\n"},
      {later_statement, kGood + "find norton between T and G\n",
       "a.circuit:3:6: error: 'find norton' is not part of this version; ask for a current, "
       "voltage, "
       "potential, power, resistance or thevenin\n"
       "    find norton between T and G\n"
       "         ^~~~~~\n"},
      {expected, kGood + "resistor R2 = 4 ohm form T to G\n",
       "a.circuit:3:21: error: expected 'from', found 'form'\n"
       "    resistor R2 = 4 ohm form T to G\n"
       "                        ^~~~\n"},
      {trailing_words, kGood + "battery F = 9 V from G to T internal 1 ohm  # old\n",
       "a.circuit:3:29: error: 'internal' is left over at the end of the statement; the internal "
       "resistance stands before 'from'\n"
       "    battery F = 9 V from G to T internal 1 ohm  # old\n"
       "                                ^~~~~~~~\n"},
      {bad_name, kGood + "wire from 0 to T\n",
       "a.circuit:3:11: error: '0' is not a name; a name is a letter followed by letters, digits "
       "or _\n"
       "    wire from 0 to T\n"
       "              ^\n"},
      {name_taken, kGood + "lamp R1 = 5 ohm from T to G\n",
       "a.circuit:3:6: error: the name 'R1' is already taken; every part needs a name of its own\n"
       "    lamp R1 = 5 ohm from T to G\n"
       "         ^~\n"
       "a.circuit:2:10: note: first here\n"
       "    resistor R1 = 4 ohm from T to G\n"
       "             ^~\n"},
      {unknown_part, kGood + "find current through r1\nfind power in R9\n",
       "a.circuit:3:22: error: there is no part 'r1'; did you mean 'R1'?\n"
       "    find current through r1\n"
       "                         ^~\n"
       "a.circuit:4:15: error: there is no part 'R9'; the parts are E and R1\n"
       "    find power in R9\n"
       "                  ^~\n"},
      {unknown_point, kGood + "ground X\n",
       "a.circuit:3:8: error: there is no point 'X'; the points are G and T\n"
       "    ground X\n"
       "           ^\n"},
      {wrong_kind_of_part, kGood + "case \"a\": R1 open\n",
       "a.circuit:3:11: error: 'R1' is a resistor: only a switch can be open or closed; a part can "
       "be removed or shorted\n"
       "    case \"a\": R1 open\n"
       "              ^~\n"},
      {bad_number, kGood + "resistor R2 = 4,7 kohm from T to G\nresistor R3 = 4..7 from T to G\n",
       "a.circuit:3:15: error: '4,7' is not a number; write 4.7\n"
       "    resistor R2 = 4,7 kohm from T to G\n"
       "                  ^~~\n"
       "a.circuit:4:15: error: '4..7' is not a number; numbers look like 12, 4.7, 15/8 or 1.2e3\n"
       "    resistor R3 = 4..7 from T to G\n"
       "                  ^~~~\n"},
      {number_too_large, kGood + "resistor R2 = 1e10000 ohm from T to G\n",
       "a.circuit:3:15: error: this number has too many digits or too large an exponent; up to "
       "100000 digits and exponents up to 9999 are read\n"
       "    resistor R2 = 1e10000 ohm from T to G\n"
       "                  ^~~~~~~\n"},
      {division_by_zero, kGood + "resistor R2 = 4/0 ohm from T to G\n",
       "a.circuit:3:15: error: '4/0' divides by zero\n"
       "    resistor R2 = 4/0 ohm from T to G\n"
       "                  ^~~\n"},
      {symbol_in_value, kGood + "resistor R2 = r/3 from T to G\n",
       "a.circuit:3:15: error: 'r/3' is neither a number nor a declared symbol; "
       "write a number and a unit\n"
       "    resistor R2 = r/3 from T to G\n"
       "                  ^~~\n"},
      {unknown_unit, kGood + "resistor R2 = 4 Kohm from T to G\nresistor R3 = 2 r from T to G\n",
       "a.circuit:3:17: error: 'Kohm' is not a unit; did you mean 'kohm'?\n"
       "    resistor R2 = 4 Kohm from T to G\n"
       "                    ^~~~\n"
       "a.circuit:4:17: error: 'r' is not a unit; units are ohm, V, A, W and S, with p n u m k M "
       "G\n"
       "    resistor R3 = 2 r from T to G\n"
       "                    ^\n"},
      {wrong_unit, kGood + "resistor R2 = 4 V from T to G\n",
       "a.circuit:3:17: error: 'V' is no unit of resistance; the unit here is ohm\n"
       "    resistor R2 = 4 V from T to G\n"
       "                    ^\n"},
      {negative_resistance, kGood + "resistor R2 = -3 ohm from T to G\n",
       "a.circuit:3:15: error: a resistance cannot be negative\n"
       "    resistor R2 = -3 ohm from T to G\n"
       "                  ^~\n"},
      {prefix_without_unit, kGood + "battery F = 9 k from G to T\n",
       "a.circuit:3:15: error: 'k' is a prefix without a unit; write kV\n"
       "    battery F = 9 k from G to T\n"
       "                  ^\n"},
      {figures_out_of_range, kGood + "figures 31\n",
       "a.circuit:3:9: error: there are no 31 significant figures to round to; write a whole "
       "number from 1 to 30\n"
       "    figures 31\n"
       "            ^~\n"},
      {given_twice, kGood + "ground T\nground G\n",
       "a.circuit:4:8: error: the ground is given a second time; once is enough\n"
       "    ground G\n"
       "           ^\n"
       "a.circuit:3:8: note: first here\n"
       "    ground T\n"
       "           ^\n"},
      {set_twice, kGood + "case \"a\": R1 shorted, R1 removed\n",
       "a.circuit:3:23: error: 'R1' is set twice in one case; keep one of the two\n"
       "    case \"a\": R1 shorted, R1 removed\n"
       "                          ^~\n"},
      {case_taken, kGood + "case \"a\": R1 shorted\ncase \"a\": R1 removed\n",
       "a.circuit:4:6: error: there is already a case \"a\"; every case needs a label of its own\n"
       "    case \"a\": R1 removed\n"
       "         ^~~\n"
       "a.circuit:3:6: note: first here\n"
       "    case \"a\": R1 shorted\n"
       "         ^~~\n"},
      {switch_not_set,
       kGood + "switch S1 from T to G\nswitch S2 from T to G\ncase \"a\": S1 open\ncase \"b\":\n",
       "a.circuit:5:6: error: this case does not set switch S2; add open or closed for every "
       "switch\n"
       "    case \"a\": S1 open\n"
       "         ^~~\n"
       "a.circuit:6:6: error: this case does not set the switches S1 and S2; add open or closed "
       "for every switch\n"
       "    case \"b\":\n"
       "         ^~~\n"},
      {switches_need_cases, kGood + "switch S1 from T to G\nswitch S2 from T to G\n",
       "a.circuit:3:8: error: the switches S1 and S2 can stand in several ways, and no case says "
       "how; add a line such as: case \"first\": S1 open, S2 closed\n"
       "    switch S1 from T to G\n"
       "           ^~\n"},
      {same_two_points, kGood + "battery F = 9 V from T to T\nresistor R2 = 4 ohm from G to G\n",
       "a.circuit:3:27: error: both ends of battery F are at 'T'; its terminals need two points\n"
       "    battery F = 9 V from T to T\n"
       "                              ^\n"
       "a.circuit:4:31: warning: both ends of resistor R2 are at 'G'; it carries nothing\n"
       "    resistor R2 = 4 ohm from G to G\n"
       "                                  ^\n"},
      {no_parts, "# nothing yet\n",
       "a.circuit: error: there are no parts in this circuit; a part is a line such as: resistor "
       "R1 = 4 ohm from A to B\n"},
      {nothing_to_find, "resistor R1 = 4 ohm from A to B\nresistor R2 = 4 ohm from B to A\n",
       "a.circuit: warning: there is neither a battery nor a question, so nothing flows; add a "
       "battery, or a line such as: find resistance between A and B\n"},
      {lonely_point, kGood + "resistor R2 = 5 ohm from T to X\n",
       "a.circuit:3:31: warning: only resistor R2 touches point 'X'; no current can flow there\n"
       "    resistor R2 = 5 ohm from T to X\n"
       "                                  ^\n"},
      {suspicious_value,
       kGood + "resistor R2 = 3 m from T to G\nresistor R10 = R10 from T to G\n"
               "resistor R3 = R10 from T to G\n",
       "a.circuit:3:17: warning: 'm' is read as mohm; write mohm if that is meant; M is a million\n"
       "    resistor R2 = 3 m from T to G\n"
       "                    ^\n"
       "a.circuit:5:15: warning: 'R10' is read as the letter code of a resistance, not as the "
       "part; write the value as a number\n"
       "    resistor R3 = R10 from T to G\n"
       "                  ^~~\n"},
  };
  return kRows;
}

TEST(CircuitFindings, AreShownToTheLastCharacter) {
  for (const Row& row : rows()) EXPECT_EQ(circuit_findings(row.input), row.expected);
}

TEST(CircuitFindings, LeaveNoProblemBesideAnError) {
  for (const Row& row : rows()) {
    const Outcome<Problem> outcome = read_circuit(circuit_text(row.input));
    EXPECT_NE(outcome.value.has_value(), has_error(outcome.diagnostics)) << row.expected;
  }
}

/// Kinds that no circuit file brings about.
const std::vector<Row>& other_rows() {
  static const std::vector<Row> kRows{
      {empty_expression, "4 + ()",
       "expression:1:6: error: expected a value or '(', found ')'\n"
       "    4 + ()\n"
       "         ^\n"},
  };
  return kRows;
}

TEST(ExpressionFindings, AreShownToTheLastCharacter) {
  for (const Row& row : other_rows()) EXPECT_EQ(expression_findings(row.input), row.expected);
}

/// What the program says of a file that it cannot read, and of a very long list.
TEST(FileFindings, HaveNoPlace) {
  const SourceText source{.name = "lost.circuit", .text = {}};
  Diagnostic finding{};
  finding.kind = unreadable_file;
  finding.arguments = {"no such file"};
  EXPECT_EQ(render(finding, source), "lost.circuit: error: it cannot be read: no such file");
  finding.kind = file_too_large;
  finding.arguments = {"256 MiB"};
  EXPECT_EQ(render(finding, source), "lost.circuit: error: it is larger than 256 MiB");
  finding.kind = more_findings;
  finding.severity = Severity::warning;
  finding.arguments = {"17"};
  EXPECT_EQ(render(finding, source), "lost.circuit: warning: and 17 more");
}

TEST(SymbolFindings, AreShownToTheLastCharacter) {
  for (const SymbolRow& row : symbol_rows()) {
    const SourceText source = circuit_text(kGood + row.input);
    std::string text;
    for (const Diagnostic& found : read_circuit(source).diagnostics)
      text += render(found, source) + "\n";
    EXPECT_EQ(text, row.expected);
  }
}

TEST(Findings, ShowEveryKindInATest) {
  std::set<DiagnosticKind> shown{unreadable_file, file_too_large, more_findings, several_claims};
  for (const Row& row : rows()) {
    shown.insert(row.kind);
    const Diagnostics found = read_circuit(circuit_text(row.input)).diagnostics;
    const bool is_there = std::any_of(found.begin(), found.end(), [&row](const Diagnostic& each) {
      return each.kind == row.kind;
    });
    EXPECT_TRUE(is_there) << row.expected;
  }
  for (const SymbolRow& row : symbol_rows()) shown.insert(row.kind);
  for (const Row& row : other_rows()) shown.insert(row.kind);
  for (const FindingRow& row : unknown_rows()) shown.insert(row.kind);
  for (const FindingRow& row : work_rows()) shown.insert(row.kind);
  for (std::size_t i = 0; i < kDiagnosticKinds; ++i) {
    EXPECT_TRUE(shown.contains(static_cast<DiagnosticKind>(i))) << "kind " << i;
  }
}

}  // namespace
}  // namespace ohmfold
