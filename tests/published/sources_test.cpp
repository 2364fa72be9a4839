// Superposition and Thevenin equivalents against published examples.
#include <gtest/gtest.h>

#include "ohmfold/solve.h"
#include "published/networks.h"

namespace ohmfold::published {
namespace {

std::string value_of(const Reading& reading) {
  return reading.value ? reading.value->number.to_string() : "undetermined";
}

std::string current_of(const CaseTrace& solved, const Problem& problem, const std::string& name) {
  for (const BranchResult& branch : solved.branches) {
    if (problem.part(branch.part).name == name) return value_of(branch.current);
  }
  return "no such part";
}

// T. R. Kuphaldt, Lessons In Electric Circuits, vol. I (DC), ch. 10, superposition: 28 V with 4 ohm
// and 7 V with 1 ohm feed 2 ohm. Alone, 28 V drives 6 A, 2 A and 4 A; 7 V drives 1 A, 2 A and 3 A.
TEST(PublishedSuperposition, OfTwoBatteriesHasTheCurrentsThatEachDrivesAlone) {
  const Problem problem = read(circuit_text(network("G1-55c")));
  const Trace trace = solve(problem);
  const CaseTrace& together = trace.cases.front();
  ASSERT_EQ(together.shares.size(), 2U);
  const auto alone = [&](std::size_t share, const char* name) {
    const std::string text = current_of(together.shares[share].alone, problem, name);
    return text.starts_with('-') ? text.substr(1) : text;
  };
  EXPECT_EQ(alone(0, "R1"), "6");
  EXPECT_EQ(alone(0, "R2"), "2");
  EXPECT_EQ(alone(0, "R3"), "4");
  EXPECT_EQ(alone(1, "R1"), "1");
  EXPECT_EQ(alone(1, "R2"), "2");
  EXPECT_EQ(alone(1, "R3"), "3");
  EXPECT_EQ(current_of(together, problem, "R1"), "5");
  EXPECT_EQ(current_of(together, problem, "R2"), "4");
  EXPECT_EQ(current_of(together, problem, "R3"), "1");
}

// The same chapter: powers do not superpose. R2 takes up 8 W and 8 W alone, 32 W together.
TEST(PublishedSuperposition, DoesNotHoldForPowers) {
  const Problem problem = read(circuit_text(network("G1-55c")));
  const Trace trace = solve(problem);
  const auto power = [&](const CaseTrace& solved) {
    for (const BranchResult& branch : solved.branches) {
      if (problem.part(branch.part).name == "R2") return value_of(branch.power);
    }
    return std::string("no such part");
  };
  EXPECT_EQ(power(trace.cases[0].shares[0].alone), "8");
  EXPECT_EQ(power(trace.cases[0].shares[1].alone), "8");
  EXPECT_EQ(power(trace.cases[0]), "32");
}

// Kuphaldt, same volume, ch. 10, Thevenin's and Norton's theorems: the pair of batteries above seen
// from the 2-ohm load is 11.2 V and 0.8 ohm, and its Norton current 14 A.
TEST(PublishedThevenin, OfTwoBatteriesIsElevenPointTwoVoltAndPointEightOhm) {
  const Trace trace =
      solve(read(circuit_text(network("G4-07a")) + "find thevenin between b and zero\n"));
  const Thevenin found = trace.cases.front().answers.front().thevenin.value();
  EXPECT_EQ(value_of(found.voltage), "56/5");
  EXPECT_EQ(value_of(found.resistance), "4/5");
  EXPECT_EQ(value_of(found.short_circuit_current), "14");
}

}  // namespace
}  // namespace ohmfold::published
