// Works rounded at every line are right, and what rounding does to them is said where it happens.
#include <gtest/gtest.h>

#include <algorithm>
#include <string>
#include <vector>

#include "properties/rounds.h"
#include "support/judged.h"
#include "support/rounding.h"
#include "support/way_back.h"

namespace ohmfold {
namespace {

using support::Interval;
using support::RandomCircuits;
using support::RandomWork;
using support::WrittenWork;

// Where a battery loses nearly all of its volts, rounding can leave none.
bool is_positive_throughout(const WrittenWork& work) {
  return std::all_of(work.lines.begin(), work.lines.end(),
                     [](const WrittenWork::Line& line) { return line.printed.is_positive(); });
}

TEST(RoundedWorks, AreRightAndRemarkedUponJustWhereAFigureChanges) {
  RandomCircuits random(402);
  for (std::uint64_t round = 0; round < test::rounds(250); ++round) {
    const bool within = round % 2 == 0;
    const RandomWork work = random_work(random, 2 + random.below(7), within);
    for (const int figures : {2, 3, 4}) {
      // Two figures are too few to tell rounding from mistakes behind several unwritten values.
      if (within && figures == 2) continue;
      if (!is_positive_throughout(write_work(work.book, figures))) continue;
      ASSERT_EQ(fault_in_rounding(work.exercise, work.book, figures), "") << "round " << round;
    }
  }
}

// A value that no longer agrees with the exact one, but that other values within the rounding of
// the lines before would give, is explained by rounding; a value beyond is not.
TEST(RoundedWorks, AreExplainedByRoundingJustWithinTheRange) {
  RandomCircuits random(403);
  std::size_t within = 0;
  std::size_t beyond = 0;
  for (std::uint64_t round = 0; round < test::rounds(150); ++round) {
    const RandomWork work = random_work(random, 3 + random.below(4), false);
    const WrittenWork rounded = write_work(work.book, 3);
    const std::vector<Interval> ranges = intervals_of(work.book, rounded);
    const std::size_t line = random.below(rounded.lines.size());
    const Interval& range = ranges[line];
    const WrittenWork::Line& told = rounded.lines[line];
    const Number width = range.high - range.low;
    const bool narrow = width * 20 <= (range.low + range.high) / 2;
    if (width.is_zero() || !narrow) continue;
    const bool inside = random.below(2) == 0;
    const Number chosen = inside ? range.low + width * Number::quotient(1, 5)
                                 : range.high + width * 40 + told.exact / 100;
    const support::Slip slip{told.note, chosen};
    const WrittenWork changed = write_work(work.book, 4, slip);
    std::string text;
    const auto lines = [](const std::string& all, std::size_t from, std::size_t to) {
      std::size_t begin = 0;
      for (std::size_t i = 0; i < from; ++i) begin = all.find('\n', begin) + 1;
      std::size_t end = begin;
      for (std::size_t i = from; i < to; ++i) end = all.find('\n', end) + 1;
      return all.substr(begin, end - begin);
    };
    text = lines(rounded.text, 0, line) + lines(changed.text, line, line + 1);
    const test::JudgedText found = test::judged(work.exercise, text);
    ASSERT_EQ(found.result.lines.size(), line + 1);
    const ValueVerdict verdict = found.result.lines[line].value;
    if (inside) {
      ASSERT_TRUE(found.result.lines[line].holds()) << text << found.told(line);
      if (verdict == ValueVerdict::within_rounding) ++within;
    } else {
      ASSERT_FALSE(found.result.lines[line].holds()) << text << found.told(line);
      ++beyond;
    }
  }
  EXPECT_GT(within, 10U);
  EXPECT_GT(beyond, 10U);
}

}  // namespace
}  // namespace ohmfold
