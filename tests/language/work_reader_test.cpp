// What each form of a claim becomes.

#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "language/claims_shown.h"
#include "language/findings_of.h"
#include "language/work_problem.h"

namespace ohmfold {
namespace {

struct ClaimRow {
  std::string line;
  std::string expected;
};

std::string claims_of(const std::string& text) {
  const SourceText source = work_text(text);
  const Outcome<Work> work = read_work(source, problem_of_works());
  if (!work) return rendered(work.diagnostics, source);
  std::string shown_claims;
  for (const Claim& claim : work.value->claims) {
    shown_claims += (shown_claims.empty() ? "" : "\n") + shown(claim);
  }
  return shown_claims;
}

void expect_rows(const std::vector<ClaimRow>& rows) {
  for (const ClaimRow& row : rows) EXPECT_EQ(claims_of(row.line), row.expected) << row.line;
}

TEST(WorkReader, ReadsEveryClaimOfTheLanguageInBothForms) {
  expect_rows({
      {"R1 and R2 in series make R12 = 6 ohm", "series R1 R2 -> R12 = 6 [6 e0 ohm]"},
      {"R12 = R1 + R2 = 6 ohm", "series R1 R2 -> R12 = 6 [6 e0 ohm]"},
      {"R12 and R34 in parallel make R5 = 4 ohm", "parallel R12 R34 -> R5 = 4 [4 e0 ohm]"},
      {"R5 = R12 || R34 = 4 ohm", "parallel R12 R34 -> R5 = 4 [4 e0 ohm]"},
      {"equivalent resistance = 4 ohm", "whole_resistance = 4 [4 e0 ohm]"},
      {"R_eq = 4 ohm", "whole_resistance = 4 [4 e0 ohm]"},
      {"current through E = 4.5 A", "current E = 9/2 [4.5 e0 A]"},
      {"I_E = 4.5 A", "current E = 9/2 [4.5 e0 A]"},
      {"voltage across R1 = 12 V", "voltage R1 = 12 [12 e0 V]"},
      {"V_R1 = 12 V", "voltage R1 = 12 [12 e0 V]"},
      {"voltage from A to B = -3 V", "voltage_between A B = -3 [-3 e0 V]"},
      {"potential at A = 6 V", "potential A = 6 [6 e0 V]"},
      {"V_A = 6 V", "potential A = 6 [6 e0 V]"},
      {"power in R2 = 18 W", "power R2 = 18 [18 e0 W]"},
      {"P_R2 = 18 W", "power R2 = 18 [18 e0 W]"},
      {"A and B at the same potential", "same potential A B"},
      {"V_A = V_B", "same potential A B"},
      {"no current through R5", "no current R5"},
      {"I_R5 = 0", "no current R5"},
      {"no series or parallel pair left", "no pair"},
      {"R1 R2 R3 in delta make Ra Rb Rc = 2, 3, 1 ohm meeting at N",
       "delta_star R1 R2 R3 -> Ra Rb Rc = 2 [2 e0 ohm] = 3 [3 e0 ohm] = 1 [1 e0 ohm] at N"},
      {"case \"S open\"", "case S open"},
  });
}

TEST(WorkReader, FlattensNestedCombinations) {
  expect_rows({
      {"R234 = R2 || (R3 + R4) = 6 ohm", "series R3 R4, parallel R2 #0 -> R234 = 6 [6 e0 ohm]"},
      {"Rx = R1 + R2 || R3", "parallel R2 R3, series R1 #0 -> Rx"},
      {"Rx = R1 + R2 | R3", "parallel R2 R3, series R1 #0 -> Rx"},
      {"Rx=R1+R2\u2225R3=5", "parallel R2 R3, series R1 #0 -> Rx = 5 [5 e0 -]"},
      {"Rx = R1 + R2 + R3 = 12", "series R1 R2 R3 -> Rx = 12 [12 e0 -]"},
      {"Rx = (R1 + R2) || (R3 + R4 || R5)",
       "series R1 R2, parallel R4 R5, series R3 #1, parallel #0 #2 -> Rx"},
      {"Rx = ((R1 + R2))", "series R1 R2 -> Rx"},
      {"R_eq = R1 + R234 = 10 ohm", "series R1 R234 -> R_eq = 10 [10 e0 ohm]"},
      {"R1, R2 and R3 in parallel make R5", "parallel R1 R2 R3 -> R5"},
      {"R1, R2, and R3 in parallel makes R5", "parallel R1 R2 R3 -> R5"},
      {"R1 R2 in series make R12 = 6", "series R1 R2 -> R12 = 6 [6 e0 -]"},
      {"R1 and R1 in series make R1", "series R1 R1 -> R1"},
      {"current = power + value", "series power value -> current"},
      {"power and value in series make case", "series power value -> case"},
      {"case = R1 + R2", "series R1 R2 -> case"},
      {"Rx = R1 + r", "series R1 r -> Rx"},
      {"Rx = r || U", "parallel r U -> Rx"},
  });
}

TEST(WorkReader, TakesAPartBeforeAPointAndAPointBeforeTwo) {
  expect_rows({
      {"V_N = 3 V", "voltage N = 3 [3 e0 V]"},
      {"V_AB = 3 V", "potential AB = 3 [3 e0 V]"},
      {"V_BT = 3 V", "voltage_between B T = 3 [3 e0 V]"},
      {"V_TAB = 3 V", "voltage_between T AB = 3 [3 e0 V]"},
      {"V_R12 = 3 V", "voltage R12 = 3 [3 e0 V]"},
      {"V_X = 3 V", "voltage X = 3 [3 e0 V]"},
      {"I_X = 3 A", "current X = 3 [3 e0 A]"},
      {"P_X = 3 W", "power X = 3 [3 e0 W]"},
      {"R_BT = 4 ohm", "resistance_between B T = 4 [4 e0 ohm]"},
      {"R_8 = 4 ohm", "value R_8 = 4 [4 e0 ohm]"},
      {"R_X = 4 ohm", "value R_X = 4 [4 e0 ohm]"},
      {"R5 = 8 ohm", "value R5 = 8 [8 e0 ohm]"},
      {"value of R5 = 8 ohm", "value R5 = 8 [8 e0 ohm]"},
      {"resistance between A and B = 4 ohm", "resistance_between A B = 4 [4 e0 ohm]"},
      {"resistance seen by E = 4 ohm", "resistance_seen_by E = 4 [4 e0 ohm]"},
      {"E = 18", "value E = 18 [18 e0 -]"},
      {"V_X = V_T2", "same potential X T2"},
  });
}

TEST(WorkReader, KnowsTheNamesThatEarlierClaimsBringIn) {
  expect_rows({
      {"BT = R1 + R2\nV_BT = 3 V", "series R1 R2 -> BT\nvoltage BT = 3 [3 e0 V]"},
      {"V_BT = 3 V\nBT = R1 + R2", "voltage_between B T = 3 [3 e0 V]\nseries R1 R2 -> BT"},
      {"R_BT = R1 + R2\nR_BT = 6", "series R1 R2 -> R_BT\nvalue R_BT = 6 [6 e0 -]"},
      {"R_eq = R1 + R2\nR_eq = 6", "series R1 R2 -> R_eq\nwhole_resistance = 6 [6 e0 -]"},
      {"R1 R2 R3 in delta make Ra Rb Rc meeting at M\nV_M = 2 V\nV_Rb = 1 V\nV_MA = 1 V",
       "delta_star R1 R2 R3 -> Ra Rb Rc at M\npotential M = 2 [2 e0 V]\n"
       "voltage Rb = 1 [1 e0 V]\nvoltage_between M A = 1 [1 e0 V]"},
  });
}

TEST(WorkReader, ReadsRewritingsWithAUnitForEachOrForAll) {
  expect_rows({
      {"R1 R2 R3 in star make Ra Rb Rc", "star_delta R1 R2 R3 -> Ra Rb Rc"},
      {"R1, R2 and R3 in delta make Ra, Rb and Rc meeting at M",
       "delta_star R1 R2 R3 -> Ra Rb Rc at M"},
      {"R1 R2 R3 in star make Ra Rb Rc = 2,3,1 kohm",
       "star_delta R1 R2 R3 -> Ra Rb Rc = 2000 [2 e3 ohm] = 3000 [3 e3 ohm] = 1000 [1 e3 ohm]"},
      {"R1 R2 R3 in star make Ra Rb Rc = 2 ohm, 3k and 1 kohm",
       "star_delta R1 R2 R3 -> Ra Rb Rc = 2 [2 e0 ohm] = 3000 [3 e3 ohm] = 1000 [1 e3 ohm]"},
      {"R1 R2 R3 in star makes Ra Rb Rc ~ 2, 10/3, 4k7",
       "star_delta R1 R2 R3 -> Ra Rb Rc = 2 [2 e0 -] = 10/3 [10/3 e0 -] = 4700 [4.7 e3 ohm]"},
      {"R1 R2 R3 in star make Ra Rb Rc = r, 2 r/3, 4 ohm",
       "star_delta R1 R2 R3 -> Ra Rb Rc = r [ e0 -] = 2/3 r [ e0 -] = 4 [4 e0 ohm]"},
  });
}

TEST(WorkReader, KeepsTheDigitsOfAValue) {
  expect_rows({
      {"R5 = 6.670 ohm", "value R5 = 667/100 [6.670 e0 ohm]"},
      {"R5 \u2248 6.67\u03A9", "value R5 = 667/100 [6.67 e0 ohm]"},
      {"R5 ~ 6.67 kohm", "value R5 = 6670 [6.67 e3 ohm]"},
      {"R5 = 20/3 ohm", "value R5 = 20/3 [20/3 e0 ohm]"},
      {"R5 = 4 2/3 ohm", "value R5 = 14/3 [14/3 e0 ohm]"},
      {"R5 = 4 2/2 kohm", "value R5 = 5000 [5/1 e3 ohm]"},
      {"V_R5 = -4 2/3V", "voltage R5 = -14/3 [-14/3 e0 V]"},
      {"R5 = 1.2e3", "value R5 = 1200 [1.2 e3 -]"},
      {"R5 = 1.2e+3", "value R5 = 1200 [1.2 e3 -]"},
      {"R5 = 1.2e-3 kohm", "value R5 = 6/5 [1.2 e0 ohm]"},
      {"R5 = 1e3/2 ohm", "value R5 = 500 [500/1 e0 ohm]"},
      {"R5 = 4k7", "value R5 = 4700 [4.7 e3 ohm]"},
      {"R5 = 470R", "value R5 = 470 [470 e0 ohm]"},
      {"R5 = 4R7 ohm", "value R5 = 47/10 [4.7 e0 ohm]"},
      {"R5 = 2M2", "value R5 = 2200000 [2.2 e6 ohm]"},
      {"R5 = 5L6", "value R5 = 7/1250 [5.6 e-3 ohm]"},
      {"R5 = 0R0", "value R5 = 0 [0.0 e0 ohm]"},
      {"R5 = R47", "value R5 = 47/100 [0.47 e0 ohm]"},
      {"R5 = 4.7 k", "value R5 = 4700 [4.7 e3 ohm]"},
      {"R5 = 4.7 K", "value R5 = 4700 [4.7 e3 ohm]"},
      {"R5 = 4.7 Ohm", "value R5 = 47/10 [4.7 e0 ohm]"},
      {"R5 = 4.7kOhm", "value R5 = 4700 [4.7 e3 ohm]"},
      {"R5 = 4.7 R", "value R5 = 47/10 [4.7 e0 ohm]"},
      {"I_E = -.5 mA", "current E = -1/2000 [-.5 e-3 A]"},
      {"I_E = \u22123 A", "current E = -3 [-3 e0 A]"},
      {"I_E = - 3 A", "current E = -3 [-3 e0 A]"},
      {"I_E = \u2212 4 1/2 A", "current E = -9/2 [-9/2 e0 A]"},
      {"I_E = +3 A", "current E = 3 [3 e0 A]"},
      {"R5 = -3 ohm", "value R5 = -3 [-3 e0 ohm]"},
  });
}

TEST(WorkReader, LeavesAWrongUnitToTheJudge) {
  expect_rows({
      {"I_E = 3 V", "current E = 3 [3 e0 V]"},
      {"V_R1 = 3 kW", "voltage R1 = 3000 [3 e3 W]"},
      {"R5 = 3 mS", "value R5 = 3/1000 [3 e-3 S]"},
      {"P_E = 4k7 ohm", "power E = 4700 [4.7 e3 ohm]"},
      {"R12 = R1 + R2 = 6 V", "series R1 R2 -> R12 = 6 [6 e0 V]"},
      {"I_E = 0 V", "current E = 0 [0 e0 V]"},
      {"E = 18 ohm", "value E = 18 [18 e0 ohm]"},
  });
}

TEST(WorkReader, TakesExactlyNothingForNoCurrent) {
  expect_rows({
      {"I_R5 = 0 A", "no current R5"},
      {"I_R5 = 0 mA", "no current R5"},
      {"current through R5 = 0", "no current R5"},
      {"I_R5 = 0.00 A", "current R5 = 0 [0.00 e0 A]"},
      {"V_R5 = 0", "voltage R5 = 0 [0 e0 -]"},
  });
}

TEST(WorkReader, ReadsValuesWithSymbols) {
  expect_rows({
      {"R5 = 3/2 r + 2 ohm", "value R5 = (3 r + 4)/2 [ e0 ohm]"},
      {"R5 = 2 r", "value R5 = 2 r [ e0 -]"},
      {"R5 = 2r", "value R5 = 2 r [ e0 -]"},
      {"R5 = 2*r/3 ohm", "value R5 = 2/3 r [ e0 ohm]"},
      {"R5 = r - 2 kohm", "value R5 = r - 2000 [ e0 ohm]"},
      {"R5 = -r", "value R5 = -r [ e0 -]"},
      {"R5 = (29 r + 68)/(11 r + 41)", "value R5 = (29 r + 68)/(11 r + 41) [ e0 -]"},
      {"R5 = (29r+68)/(11r+41)ohm", "value R5 = (29 r + 68)/(11 r + 41) [ e0 ohm]"},
      {"I_E = U/(2 r)", "current E = U/(2 r) [ e0 -]"},
      {"I_E = U/(2 r) mA", "current E = U/(2000 r) [ e0 A]"},
      {"P_E = U\u00B2 / r", "power E = U^2/r [ e0 -]"},
      {"P_E = U^2/r", "power E = U^2/r [ e0 -]"},
      {"P_E = (r \u2212 1)\u00B3/(r - 1)^2", "power E = r - 1 [ e0 -]"},
      {"R5 = r (r + 6)/(2 r + 6)", "value R5 = r (r + 6)/(2 r + 6) [ e0 -]"},
      {"R5 = r \u00D7 2 \u00B7 3", "value R5 = 6 r [ e0 -]"},
      {"Rx = R1 + R2 = (r + 1) kohm", "series R1 R2 -> Rx = 1000 r + 1000 [ e0 ohm]"},
  });
}

TEST(WorkReader, KeepsThePlaceAndTheTextOfAClaim) {
  const SourceText source{.name = "a.work",
                          .text =
                              "\xEF\xBB\xBF# mine\r\n\r\n  \tI_E = 2 A  \t# two\r\n"
                              "case \"S # open\":"};
  const Outcome<Work> work = read_work(source, problem_of_works());
  ASSERT_TRUE(work);
  EXPECT_EQ(work.value->source_name, "a.work");
  ASSERT_EQ(work.value->claims.size(), 2U);
  const Claim& first = work.value->claims[0];
  EXPECT_EQ(first.text, "I_E = 2 A");
  EXPECT_EQ(first.where, (Span{3, 3, 9}));
  const auto& says = std::get<ValueClaim>(first.says);
  EXPECT_EQ(says.first.where, (Span{3, 5, 1}));
  EXPECT_EQ(says.value.where, (Span{3, 9, 3}));
  const Claim& second = work.value->claims[1];
  EXPECT_EQ(second.text, "case \"S # open\":");
  EXPECT_EQ(std::get<CaseClaim>(second.says).label.text, "S # open");
}

TEST(WorkReader, ReadsATextWithoutClaimsAsAnEmptyWork) {
  const Outcome<Work> work = read_work(work_text("\n# nothing yet\n"), problem_of_works());
  ASSERT_TRUE(work);
  EXPECT_TRUE(work.value->claims.empty());
}

TEST(ClaimReader, ReadsOneClaimAfterOthers) {
  const Outcome<Work> before = read_work(work_text("BT = R1 + R2"), problem_of_works());
  ASSERT_TRUE(before);
  const SourceText line{.name = "-", .text = "V_BT = 3 V\n"};
  const Outcome<Claim> after = read_claim(line, problem_of_works(), *before.value);
  ASSERT_TRUE(after);
  EXPECT_EQ(shown(*after.value), "voltage BT = 3 [3 e0 V]");
  const Outcome<Claim> alone = read_claim(line, problem_of_works(), {});
  ASSERT_TRUE(alone);
  EXPECT_EQ(shown(*alone.value), "voltage_between B T = 3 [3 e0 V]");
}

TEST(ClaimReader, FindsNothingOnAnEmptyLine) {
  for (const char* text : {"", "\n", "   # a thought"}) {
    const Outcome<Claim> claim = read_claim({.name = "-", .text = text}, problem_of_works(), {});
    EXPECT_FALSE(claim);
    EXPECT_TRUE(claim.diagnostics.empty()) << text;
  }
}

}  // namespace
}  // namespace ohmfold
