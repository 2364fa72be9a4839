// For every problem, right works in the engine's order and in others pass whole.
#include <gtest/gtest.h>

#include "coach/right_works.h"
#include "support/judged.h"

namespace ohmfold {
namespace {

using test::Order;

void expect_whole(const test::ProblemFile& file, Order order, std::uint64_t seed) {
  const std::string text = test::right_work(file.exercise, order, seed);
  SCOPED_TRACE(file.name + "\n" + text);
  const test::JudgedText found = test::judged(file.exercise, text);
  const std::vector<Judgement>& lines = found.result.lines;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    EXPECT_TRUE(lines[i].holds()) << found.told(i);
    const bool exact =
        lines[i].value == ValueVerdict::none || lines[i].value == ValueVerdict::exact;
    EXPECT_TRUE(exact || lines[i].value == ValueVerdict::rounded) << found.told(i);
  }
  EXPECT_TRUE(found.result.all_right());
  for (std::size_t i = 0; i < found.result.cases.size(); ++i) {
    EXPECT_TRUE(found.result.cases[i].open.empty()) << "case " << i;
    EXPECT_TRUE(found.result.cases[i].attempted.empty()) << "case " << i;
  }
  EXPECT_EQ(found.result.marks.earned(), found.result.marks.most());
}

TEST(RightWorks, PassInTheOrderOfTheEngine) {
  ASSERT_GT(test::problem_files().size(), 45U);
  for (const test::ProblemFile& file : test::problem_files()) {
    expect_whole(file, Order::of_the_engine, 1);
  }
}

TEST(RightWorks, PassInPairsFromTheEndOfTheFile) {
  for (const test::ProblemFile& file : test::problem_files()) {
    expect_whole(file, Order::from_the_end_in_pairs, 2);
  }
}

TEST(RightWorks, PassInAnyOrder) {
  for (const std::uint64_t seed : {11U, 12U, 13U}) {
    for (const test::ProblemFile& file : test::problem_files()) {
      expect_whole(file, Order::at_random, seed);
    }
  }
}

}  // namespace
}  // namespace ohmfold
