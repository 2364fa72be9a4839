// What is said of lines that are no claims: the place, what was found, what to do.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "language/claims_shown.h"
#include "language/findings_of.h"
#include "language/work_problem.h"

namespace ohmfold {

using enum DiagnosticKind;

const std::vector<FindingRow>& work_rows() {
  static const std::vector<FindingRow> kRows{
      {unknown_claim, "hello world",
       "a.work:1:1: error: no claim begins with 'hello'; claims look like R12 = R1 + R2 = 6 ohm or "
       "current through E = 2 A\n"
       "    hello world\n"
       "    ^~~~~\n"},
      {circuit_line, "battery E = 12 V from A to B",
       "a.work:1:1: error: 'battery' begins a line of a circuit file; a work file holds claims "
       "such "
       "as R12 = R1 + R2 = 6 ohm\n"
       "    battery E = 12 V from A to B\n"
       "    ^~~~~~~\n"},
      {combination_without_name, "R1 || R2 = 3 ohm",
       "a.work:1:1: error: this combination has no name; write a name and '=' in front of it, as "
       "in "
       "R12 = R1 + R2\n"
       "    R1 || R2 = 3 ohm\n"
       "    ^~~~~~~~\n"},
      {ambiguous_short_form, "V_ABA = 3 V",
       "a.work:1:1: error: 'V_ABA' can mean voltage from A to BA and voltage from AB to A; write "
       "in "
       "words which of them, such as voltage from A to BA = ...\n"
       "    V_ABA = 3 V\n"
       "    ^~~~~\n"},
      {left_over_in_claim, "A and B at the same potential now",
       "a.work:1:31: error: 'now' is left over at the end of the claim; a line holds one claim\n"
       "    A and B at the same potential now\n"
       "                                  ^~~\n"},
      {value_too_long, "R5 = (((r^20)^20)^20)^20",
       "a.work:1:6: error: this value is too long to work with; write it shorter\n"
       "    R5 = (((r^20)^20)^20)^20\n"
       "         ^\n"},
      {nul_byte, std::string("I_E = \0", 7),
       "a.work:1:7: error: a NUL byte stands here; a work file is plain text\n"
       "    I_E = \xEF\xBF\xBD\n"
       "          ^\n"},
      {suspicious_value, "R12 = R34",
       "a.work:1:7: warning: 'R34' is read as the letter code for 17/50 ohm; write the value as a "
       "number if that is meant\n"
       "    R12 = R34\n"
       "          ^~~\n"},
  };
  return kRows;
}

namespace {

TEST(WorkFindings, AreShownToTheLastCharacter) {
  for (const FindingRow& row : work_rows()) {
    const SourceText source = work_text(row.input);
    const Diagnostics found = read_work(source, problem_of_works()).diagnostics;
    EXPECT_EQ(rendered(found, source), row.expected);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().kind, row.kind);
  }
}

struct SlipRow {
  std::string line;
  std::uint32_t column, length;  ///< of the place, from 1, in bytes
  std::string says;
};

const std::vector<SlipRow>& slips() {
  static const std::vector<SlipRow> kRows{
      {"R1 || R2", 1, 8,
       "this combination has no name; write a name and '=' in front of it, as in R12 = R1 + R2"},
      {"(R1 + R2) || R3 = 3", 1, 15,
       "this combination has no name; write a name and '=' in front of it, as in R12 = R1 + R2"},
      {"R1 + R2 = R12 = 6 ohm", 1, 7,
       "this combination has no name; write a name and '=' in front of it, as in R12 = R1 + R2"},
      {"R1 and R2 in paralell make R5", 14, 8,
       "expected 'series', 'parallel', 'delta' or 'star', found 'paralell'; did you mean "
       "'parallel'?"},
      {"R1 and R2 in series", 20, 0,
       "expected 'make' and a name for the result, found the end of the line; write for example R1 "
       "and R2 in series make R12 = 6 ohm"},
      {"R1 and R2 in series = 6 ohm", 21, 1,
       "expected 'make' and a name for the result, found '='; write for example R1 and R2 in "
       "series make R12 = 6 ohm"},
      {"R1 and R2 in series make", 25, 0,
       "expected the name of the result, found the end of the line"},
      {"R1 and R2 in series make R12 6 ohm", 30, 1, "expected '=', found '6'"},
      {"R1 in series make R12", 1, 2, "expected two or more parts, found 'R1'"},
      {"R1 and R2 make R12", 11, 4,
       "expected 'in series', 'in parallel' or 'at the same potential', found 'make'"},
      {"R12 R1 + R2 = 6", 5, 2, "expected '=', found 'R1'; a combination looks like R12 = R1 + R2"},
      {"R12 = R1 + = 6", 12, 1, "expected the name of a part, found '='"},
      {"R12 = (R1 + R2 = 6", 16, 1, "expected ')', found '='"},
      {"R12 = R1 + R2) = 6", 14, 1,
       "expected '+', '||' or the end, found ')'; there is no '(' that it closes"},
      {"R12 = ()", 8, 1, "expected the name of a part, found ')'"},
      {"R12 = R1 R2", 7, 2, "expected a value, found 'R1'; parts are combined as R12 = R1 + R2"},
      {"R12 = R1 + 4", 12, 1, "'4' is not a name; a combination names its parts, such as R1 + R2"},
      {"R12 = R1 + R2 = 4 + 2 = 6 ohm", 19, 1,
       "'+' is left over at the end of the claim; write the value worked out"},
      {"R12 = R34 = 6 ohm", 7, 3,
       "expected parts joined by '+' or '||', found 'R34'; a claim has one value, at its end"},
      {"R12 = 4 + 2", 9, 1, "'+' is left over at the end of the claim; write the value worked out"},
      {"R12 =", 6, 0, "expected a value, found the end of the line"},
      {"R12 \u2248 R1 + R2", 5, 3, "expected '=', found '\u2248'"},
      {"= (R1 + R2)", 1, 1, "expected the name of a part, found '='"},
      {"12 = R1 + R2", 1, 2,
       "'12' is not a name; a name is a letter followed by letters, digits or _"},
      {"R1 = R2", 6, 2, "expected a value, found 'R2'; parts are combined as R12 = R1 + R2"},
      {"R12", 1, 3,
       "no claim begins with 'R12'; claims look like R12 = R1 + R2 = 6 ohm or current through E = "
       "2 A"},
      {"voltge across R1 = 3 V", 1, 6, "no claim begins with 'voltge'; did you mean 'voltage'?"},
      {"resistor R7 = 4 ohm from A to B", 1, 8,
       "'resistor' begins a line of a circuit file; a work file holds claims such as R12 = R1 + R2 "
       "= 6 ohm"},
      {"find current through E", 1, 4,
       "'find' begins a line of a circuit file; a work file holds claims such as R12 = R1 + R2 = 6 "
       "ohm"},
      {"current E = 3 A", 9, 1, "expected 'through', found 'E'"},
      {"current through E", 18, 0, "expected '=', found the end of the line"},
      {"current through E 3 A", 19, 1, "expected '=', found '3'"},
      {"current through E = 3 A at last", 25, 2,
       "'at' is left over at the end of the claim; a claim ends with its value"},
      {"equivalent R = 3", 12, 1, "expected 'resistance', found 'R'"},
      {"value R5 = 3", 7, 2, "expected 'of', found 'R5'"},
      {"no pair", 4, 4,
       "expected 'current through' or 'series or parallel pair left', found 'pair'"},
      {"no series or parallel left", 23, 4, "expected 'pair', found 'left'"},
      {"I_E = 4,5 A", 7, 3, "'4,5' is not a number; write 4.5"},
      {"I_E = 3 k", 9, 1, "'k' is a prefix without a unit; write kA"},
      {"I_E = 3 / 4", 9, 1,
       "'/' is not a number; a fraction is written without spaces, such as 15/8"},
      {"I_E = --3", 8, 2, "'-3' is not a number; numbers look like 12, 4.7, 15/8 or 1.2e3"},
      {"I_E = 1/0", 7, 3, "'1/0' divides by zero"},
      {"I_E = 4k7", 8, 2, "'k7' is not a unit; letter codes such as 4k7 are for resistances"},
      {"I_E = x", 7, 1, "expected a value, found 'x'; write a number and a unit"},
      {"R5 = 2 q", 8, 1, "'q' is not a unit; units are ohm, V, A, W and S, with p n u m k M G"},
      {"R5 = 2 r q", 10, 1, "there is no symbol 'q'; the symbols are r and U"},
      {"R5 = 2 r +", 11, 0, "expected a number or a symbol, found the end of the line"},
      {"R5 = (r", 8, 0, "expected ')', found the end of the line"},
      {"R5 = r)", 7, 1, "expected an operator or the end of the value, found ')'"},
      {"R5 = r/(r - r)", 7, 1, "'/' divides by zero"},
      {"R5 = r^99", 8, 2, "expected a whole power up to 20, found '99'"},
      {"R5 = r^2^3", 9, 1, "expected an operator or the end of the value, found '^'"},
      {"R5 = 2 * -r", 10, 1, "expected a number or a symbol, found '-'"},
      {"V_ABA = 3 V", 1, 5,
       "'V_ABA' can mean voltage from A to BA and voltage from AB to A; write in words which of "
       "them, such as voltage from A to BA = ..."},
      {"V_T = 3 V", 1, 3,
       "'V_T' can mean potential at T and value of V_T; write in words which of them, such as "
       "potential at T = ..."},
      {"V_R1 = V_R2", 8, 4,
       "expected a value, found 'V_R2'; potentials of two points are compared as V_A = V_B"},
      {"A, B and T at the same potential", 10, 1,
       "expected two points, found 'T'; a claim compares two points"},
      {"A and B at same potential", 12, 4, "expected 'the', found 'same'"},
      {"R1 R2 in delta make Ra Rb Rc", 16, 4, "expected three parts, found 2"},
      {"R1 R2 R3 R4 in delta make Ra Rb Rc", 10, 2, "expected three parts, found 4"},
      {"R1 R2 R3 in delta make Ra Rb", 29, 0, "expected three names for the parts made, found 2"},
      {"R1 R2 R3 in delta make Ra Rb Rc = 2,5, 3, 1 ohm", 33, 1,
       "expected three values after '=', found 4; commas stand between values; decimals have a "
       "point"},
      {"R1 R2 R3 in delta make Ra Rb Rc = 2, x, 1 ohm", 38, 1,
       "'x' is neither a number nor a declared symbol; write a number and a unit"},
      {"R1 R2 R3 in delta make Ra Rb Rc meeting N", 41, 1, "expected 'at', found 'N'"},
      {"case S open", 6, 1,
       "expected the label of a case in quotes, found 'S'; such as case \"S open\""},
      {"case \"S open\": S open", 16, 1,
       "'S' is left over at the end of the claim; the circuit file says what a case sets"},
  };
  return kRows;
}

TEST(WorkFindings, TellThePlaceAndTheRemedy) {
  for (const SlipRow& row : slips()) {
    const Outcome<Work> work = read_work(work_text(row.line), problem_of_works());
    EXPECT_FALSE(work) << row.line;
    ASSERT_EQ(work.diagnostics.size(), 1U) << row.line;
    const Diagnostic& found = work.diagnostics.front();
    EXPECT_EQ(message(found), row.says) << row.line;
    EXPECT_EQ(found.where, (Span{1, row.column - 1, row.length})) << row.line;
  }
}

TEST(WorkFindings, OfAllLinesAreReportedInOneRun) {
  std::string text;
  for (const SlipRow& row : slips()) text += row.line + "\nI_E = 2 A\n";
  const Outcome<Work> work = read_work(work_text(text), problem_of_works());
  EXPECT_FALSE(work);
  ASSERT_EQ(work.diagnostics.size(), slips().size());
  for (std::size_t i = 0; i < slips().size(); ++i) {
    EXPECT_EQ(work.diagnostics[i].where.line, 2 * i + 1);
    EXPECT_EQ(message(work.diagnostics[i]), slips()[i].says);
  }
}

TEST(ClaimFindings, SayThatOneClaimIsReadAtATime) {
  const SourceText source = work_text("I_E = 2 A\nI_R1 = 2 A\n");
  const Outcome<Claim> claim = read_claim(source, problem_of_works(), {});
  EXPECT_FALSE(claim);
  ASSERT_EQ(claim.diagnostics.size(), 1U);
  EXPECT_EQ(claim.diagnostics.front().kind, several_claims);
  EXPECT_EQ(rendered(claim.diagnostics, source),
            "a.work:2:1: error: a second claim stands here; one claim is read at a time\n"
            "    I_R1 = 2 A\n"
            "    ^~~~~~~~~~\n");
}

TEST(ClaimFindings, AreThoseOfAWork) {
  for (const SlipRow& row : slips()) {
    const Outcome<Claim> claim = read_claim(work_text(row.line), problem_of_works(), {});
    EXPECT_FALSE(claim) << row.line;
    ASSERT_EQ(claim.diagnostics.size(), 1U) << row.line;
    EXPECT_EQ(message(claim.diagnostics.front()), row.says);
  }
}

}  // namespace
}  // namespace ohmfold
