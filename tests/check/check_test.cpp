// All checks of a case together: each law can fail.
#include "check/check.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "check/building.h"
#include "circuit/set_case.h"

namespace ohmfold {
namespace {

// 12 V on 4 ohm and 8 ohm in series; the resistance between the ends of the 4 ohm is asked too.
Problem problem() {
  Problem problem;
  problem.points = {"G", "M", "T"};
  const auto add = [&](const char* name, PartKind kind, int from, int to, int value) {
    problem.parts.push_back({name, kind, point(from), point(to), value, 0, {}});
  };
  add("E", PartKind::battery, 0, 2, 12);
  add("R1", PartKind::resistor, 2, 1, 4);
  add("R2", PartKind::resistor, 1, 0, 8);
  problem.cases = {{"", {}}};
  problem.questions = {ResistanceBetween{point(2), point(1)}};
  problem.ground = point(0);
  return problem;
}

void combine(Reduction& reduction, const WrittenStep& step) {
  Edit edit;
  edit.removes = step.takes;
  if (step.made) edit.adds = {*step.made};
  const PartId made = reduction.end.commit(edit);
  Place place;
  if (step.made) place = {{}, step.made->from, step.made->to};
  reduction.steps.append(RuleName::series, 1, place, edit, made, {});
}

CaseTrace solved(const Problem& stated) {
  CaseTrace results = results_of(set_case(stated, stated.cases.front()));
  results.main.start = results.main.end = set_case(stated, stated.cases.front());
  results.main.source = part(0);
  combine(results.main, making({1, 2}, 2, 0, ohm(12)));
  results.equivalent = Resistance{12};
  Reduction between;
  between.start = between.end = resistors_between(stated, stated.cases.front(), point(2), point(1));
  between.source = part(3);
  combine(between, taking({0}));
  combine(between, taking({2}));
  results.further.push_back(std::move(between));
  results.answers = {{stated.questions[0], Resistance{4}, 0}};
  return results;
}

TEST(CheckCase, CoversStepsLawsNodeVoltagesAndResistances) {
  const std::vector<Check> checks = check_case(problem(), solved(problem()));
  EXPECT_TRUE(all_hold(checks)) << checks.size();
  for (const CheckLaw law : {CheckLaw::step, CheckLaw::current, CheckLaw::voltage, CheckLaw::ohm,
                             CheckLaw::power, CheckLaw::node_voltage, CheckLaw::resistance}) {
    EXPECT_TRUE(std::any_of(checks.begin(), checks.end(),
                            [&](const Check& check) { return check.law == law; }));
  }
}

TEST(CheckCase, FailsByTheLawThatIsBroken) {
  const auto broken = [](auto change) {
    CaseTrace results = solved(problem());
    change(results);
    return failing_law(check_case(problem(), results));
  };
  EXPECT_EQ(broken([](CaseTrace& c) { c.equivalent = Resistance{13}; }), CheckLaw::resistance);
  EXPECT_EQ(broken([](CaseTrace& c) { c.answers[0].value = Resistance{5}; }), CheckLaw::resistance);
  EXPECT_EQ(broken([](CaseTrace& c) { c.branches[1].current = Current{2}; }), CheckLaw::current);
  EXPECT_EQ(broken([](CaseTrace& c) { c.main.end = c.main.start; }), CheckLaw::step);
  EXPECT_EQ(broken([](CaseTrace& c) { c.further[0].end = c.further[0].start; }), CheckLaw::step);
  EXPECT_EQ(broken([](CaseTrace& c) {
              for (NodeResult& node : c.nodes) node.potential.value->number += 1;
            }),
            CheckLaw::voltage)
      << "differences are right, but the ground is not at 0 V";
}

TEST(CheckCase, SaysNothingAboutAContradiction) {
  CaseTrace results;
  results.contradiction = Contradiction{};
  EXPECT_TRUE(check_case(problem(), results).empty());
}

}  // namespace
}  // namespace ohmfold
