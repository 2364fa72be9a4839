// The works of a class as text, CSV and JSON.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <string>
#include <vector>

#include "ohmfold/read.h"
#include "ohmfold/render.h"
#include "views/schema.h"

namespace ohmfold {
namespace {

using ::testing::HasSubstr;

constexpr const char* kCircuit =
    "battery E = 30 V from G to T\nresistor R1 = 4 from T to A\nresistor R2 = 9 from A to G\n"
    "resistor R3 = 18 from A to S1\nswitch S from S1 to G\n"
    "case \"open\": S open\ncase \"closed\": S closed\nfind current through E\n";

class ClassReportTest : public ::testing::Test {
 protected:
  MarkedWork marked(const std::string& name, const std::string& text) const {
    const Work work = read_work({.name = name, .text = text}, *exercise_.problem).value.value();
    return marked_work(name, exercise_, work, judge_work(exercise_, work));
  }
  ClassReport report() const {
    return class_report(
        exercise_,
        {marked("a.work", "case \"closed\"\nR23 = R2 || R3 = 27 ohm\nR = R1 + R23 = 31 ohm\n"),
         marked("b.work", "case \"closed\"\nX = R3 || R2 = 6 ohm\nI_X = 3.0 A\nV_X = 17 V\n"),
         marked("c.work", "case \"closed\"\nR12 = R1 + R2 = 13 ohm\n"),
         marked("f.work", "case \"closed\"\nV_AG = 20.5 V\nV_GA = -20.5 V\n"),
         marked("d.work", "R12 = R1 + R2 = 13 ohm\nI_Q = 2 A\n"),
         unmarked_work("e.work", "line 1: something")});
  }

  const Exercise exercise_ =
      prepare(read_circuit({.name = "class", .text = kCircuit}).value.value());
};

TEST_F(ClassReportTest, KnowsAStepByThePartsOfTheFileAndItsCase) {
  const ClassReport all = report();
  std::vector<std::string> steps;
  for (const ClassStep& step : all.steps) {
    steps.push_back(render_topic(*all.problem, step.topic) + " " +
                    all.cases[step.topic.case_index] + " " + std::to_string(step.wrong) + "/" +
                    std::to_string(step.tried));
  }
  EXPECT_THAT(steps, ::testing::UnorderedElementsAre("R1 and R2 combined closed 1/1",
                                                     "R2 and R3 combined closed 1/2",
                                                     "voltage across R2 and R3 combined closed 1/1",
                                                     "voltage between G and A closed 1/1"));
}

TEST_F(ClassReportTest, CountsLinesByWhatTheyComeTo) {
  const ClassReport all = report();
  EXPECT_EQ(all.works[0].verdicts.not_right, 1U);
  EXPECT_EQ(all.works[0].verdicts.follows, 1U);
  EXPECT_EQ(all.works[0].first_mistake, 2U) << "the line of the file";
  EXPECT_EQ(all.works[1].verdicts.right, 2U);
  EXPECT_EQ(all.works[4].verdicts.right, 1U) << "the switch is open there";
  EXPECT_EQ(all.works[4].verdicts.cannot_tell, 1U) << "nothing is called Q";
  EXPECT_FALSE(all.all_right());
}

TEST_F(ClassReportTest, HasACaseColumnWhereThereAreCases) {
  EXPECT_THAT(render_class_report_text(report()), HasSubstr("Case"));
}

TEST_F(ClassReportTest, KeepsToTheSchemaOfItsJson) {
#ifdef OHMFOLD_HAS_VALIJSON
  EXPECT_EQ(
      test::schema_objection("docs/class-report.schema.json", render_class_report_json(report())),
      "");
#else
  GTEST_SKIP() << "valijson is not installed";
#endif
}

}  // namespace
}  // namespace ohmfold
