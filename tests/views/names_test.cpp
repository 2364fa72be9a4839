// Names of made parts tell their history, and never clash.
#include "views/names.h"

#include <set>

#include "samples.h"

namespace ohmfold::views {
namespace {

using test::trace_of;

/// Names of the parts that the steps of the first case make, in order.
std::vector<std::string> made(const std::string& text) {
  const Trace trace = trace_of(text);
  const Reduction& reduction = trace.cases.front().main;
  const PartNames names(*trace.problem, reduction);
  std::vector<std::string> result;
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    if (reduction.steps[i].makes.exists()) {
      result.push_back(names.of(reduction.steps[i].makes));
    }
  }
  return result;
}

std::string in_series(const std::vector<std::string>& parts) {
  std::string text = "battery E = 1 V from P0 to P" + std::to_string(parts.size()) + "\n";
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const std::string kind = parts[i].front() == 'L' ? "lamp " : "resistor ";
    text += kind + parts[i] + " = 1 ohm from P" + std::to_string(i) + " to P" +
            std::to_string(i + 1) + "\n";
  }
  return text;
}

TEST(PartNames, TellTheHistory) {
  struct Row {
    std::vector<std::string> parts;
    std::string name;
  };
  const std::vector<Row> rows{
      {{"R1", "R2"}, "R12"},
      {{"R2", "R1"}, "R21"},  // file order, not order of numbers
      {{"R1", "R2", "R3"}, "R123"},
      {{"R10", "R2"}, "R10_2"},
      {{"R2", "R10"}, "R2_10"},
      {{"L1", "R3"}, "R_L1_3"},
      {{"R", "L"}, "R_R_L"},
      {{"R1", "R2", "R3", "R4", "R5", "R6"}, "R123456"},
      {{"R1", "R2", "R3", "R4", "R5", "R6", "R7"}, "Ra"},
      {{"L1", "R1", "R2", "R3"}, "Ra"},
      {{"R1001", "R1002", "R1003"}, "Ra"},
  };
  for (const Row& row : rows) {
    EXPECT_EQ(made(in_series(row.parts)), std::vector{row.name}) << row.parts.front();
  }
}

TEST(PartNames, JoinThePartsOfMadeParts) {
  EXPECT_EQ(made("battery E = 1 V from G to T\nresistor R1 = 1 ohm from T to A\n"
                 "resistor R2 = 1 ohm from A to G\nresistor R3 = 1 ohm from A to B\n"
                 "resistor R4 = 1 ohm from B to G\n"),
            (std::vector<std::string>{"R34", "R234", "R1234"}));
}

TEST(PartNames, GiveWayWhereTaken) {
  EXPECT_EQ(made("battery E = 1 V from G to T\nresistor R1 = 1 ohm from T to A\n"
                 "resistor R2 = 1 ohm from A to G\nresistor R12 = 1 ohm from T to G\n"
                 "resistor Rb = 1 ohm from T to G\n"),
            (std::vector<std::string>{"Ra", "R_12_Rb", "Rc"}));
}

TEST(PartNames, GoOnBehindRz) {
  // A ladder whose names are too long from the start, with more than 26 steps.
  std::string text = "battery E = 1 V from G to P0\n";
  for (int i = 0; i < 20; ++i) {
    const std::string n = std::to_string(i);
    const std::string next = std::to_string(i + 1);
    text += "resistor Xlong" + n + " = 1 ohm from P" + n + " to P" + next + "\n";
    text += "resistor Ylong" + n + " = 1 ohm from P" + next + " to G\n";
  }
  const std::vector<std::string> names = made(text);
  ASSERT_EQ(names.size(), 39U);
  EXPECT_EQ(names.at(25), "Rz");
  EXPECT_EQ(names.at(26), "Raa");
  EXPECT_EQ(std::set<std::string>(names.begin(), names.end()).size(), names.size());
}

TEST(PartNames, CallABatteryByItsInternalResistance) {
  const Trace trace = trace_of(
      "battery E1 = 9 V internal 1 ohm from G to M\nbattery E2 = 3 V internal 2 ohm from M to T\n"
      "resistor R1 = 12 ohm from T to G\nfind resistance seen by E1\n");
  const CaseTrace& one = trace.cases.front();
  ASSERT_EQ(one.further.size(), 1U);
  const PartNames names(*trace.problem, one.further.front());
  EXPECT_EQ(names.of(PartId{1}), "r_E2");
}

TEST(PartNames, AreUniqueInEveryProblem) {
  for (const SourceText& file : test::problem_files()) {
    const Trace trace = trace_of(file);
    for (const CaseTrace& one : trace.cases) {
      const PartNames names(*trace.problem, one.main);
      std::set<std::string> seen;
      for (std::uint32_t i = 0; i < one.main.end.part_count(); ++i) {
        EXPECT_TRUE(seen.insert(names.of(PartId{i})).second) << file.name << " part " << i;
      }
    }
  }
}

}  // namespace
}  // namespace ohmfold::views
