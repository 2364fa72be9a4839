// What each form of a claim becomes.

#include <gtest/gtest.h>

#include <stdexcept>
#include <string>
#include <vector>

#include "language/claims_shown.h"
#include "language/findings_of.h"

namespace ohmfold {
namespace {

/// Points A, B, T, G, N, AB, BA; N is a part, too.
const Problem& problem() {
  static const Outcome<Problem> kProblem =
      read_circuit(circuit_text("symbol r\n"
                                "symbol U\n"
                                "battery E = 18 V from G to T\n"
                                "resistor R1 = 4 ohm from T to A\n"
                                "resistor R2 = 2 ohm from A to G\n"
                                "resistor R3 = 6 ohm from T to B\n"
                                "resistor R4 = 6 ohm from B to G\n"
                                "resistor R5 = 2 r from A to B\n"
                                "resistor R6 = 1 ohm from T to N\n"
                                "resistor N = 1 ohm from N to AB\n"
                                "resistor R_8 = 1 ohm from AB to BA\n"
                                "resistor V_T = 1 ohm from BA to G\n"
                                "battery F = 2 U from BA to G\n"));
  if (!kProblem) throw std::runtime_error(message(kProblem.diagnostics.front()));
  return *kProblem.value;
}

struct ClaimRow {
  std::string line;
  std::string expected;
};

std::string claims_of(const std::string& text) {
  const SourceText source{.name = "a.work", .text = text};
  const Outcome<Work> work = read_work(source, problem());
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

}  // namespace
}  // namespace ohmfold
