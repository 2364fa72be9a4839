// Works rounded at every line are right, and what rounding does to them is said where it happens.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "properties/rounds.h"
#include "support/judged.h"
#include "support/way_back.h"

namespace ohmfold {
namespace {

using support::follow;
using support::Notebook;
using support::NoteLine;
using support::RandomCircuits;
using support::RandomWork;
using support::Way;
using support::WrittenWork;

struct Interval {
  Number low, high;
};

Number ten_to(int power) {
  Number value(1);
  for (int i = 0; i < power; ++i) value = value * 10;
  for (int i = 0; i > power; --i) value = value / 10;
  return value;
}

// Half a unit of the last digit; `lenient`: of a whole number, of the last digit other than zero.
Number half_unit(const std::string& digits, bool lenient) {
  const std::size_t point = digits.find('.');
  int power = 0;
  if (point != std::string::npos) {
    power = -static_cast<int>(digits.size() - point - 1);
  } else if (lenient) {
    power = static_cast<int>(digits.size() - digits.find_last_not_of('0') - 1);
  }
  return ten_to(power) / 2;
}

bool is_within(const Number& exact, const Number& printed, const Number& half) {
  return abs(printed - exact) <= half;
}

// Each operation here grows or falls with each operand, so that the ends give the range.
Interval follow_interval(Way way, const std::vector<Interval>& from) {
  std::vector<Number> low, high;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const bool falls = i > 0 && (way == Way::quotient || way == Way::difference);
    low.push_back(falls ? from[i].high : from[i].low);
    high.push_back(falls ? from[i].low : from[i].high);
  }
  return {follow(way, low), follow(way, high)};
}

// The range of each line, from what the printed values before it can stand for.
std::vector<Interval> intervals_of(const Notebook& book, const WrittenWork& work) {
  std::map<std::string, Interval> known;
  for (const auto& [key, value] : book.given) known[key] = {value, value};
  std::vector<Interval> ranges;
  for (std::size_t i = 0; i < book.lines.size(); ++i) {
    std::vector<Interval> from;
    for (const std::string& key : book.lines[i].from) from.push_back(known.at(key));
    Interval range = follow_interval(book.lines[i].way, from);
    if (!book.lines[i].claim.empty()) {
      const WrittenWork::Line& line = work.lines.at(ranges.size());
      ranges.push_back(range);
      const Number half = half_unit(line.digits, false);
      range = {line.printed - half, line.printed + half};
    }
    known[book.lines[i].key] = range;
  }
  return ranges;
}

void expect_remarks_where_rounding_shows(const RandomWork& random, int figures) {
  const WrittenWork work = write_work(random.book, figures);
  const test::JudgedText found = test::judged(random.exercise, work.text);
  ASSERT_EQ(found.result.lines.size(), work.lines.size());
  ASSERT_TRUE(found.result.all_right())
      << work.text << found.told(std::min(found.first_that_fails(), work.lines.size() - 1));
  const std::vector<Interval> ranges = intervals_of(random.book, work);
  for (std::size_t i = 0; i < work.lines.size(); ++i) {
    const WrittenWork::Line& line = work.lines[i];
    const Judgement& judged = found.result.lines[i];
    const ValueVerdict expected =
        line.printed == line.exact ? ValueVerdict::exact
        : is_within(line.exact, line.printed, half_unit(line.digits, true))
            ? ValueVerdict::rounded
            : ValueVerdict::rounded_early;
    ASSERT_EQ(judged.value, expected)
        << work.text << found.told(i) << " exact " << line.exact.to_string();
    if (expected != ValueVerdict::rounded_early) continue;
    ASSERT_FALSE(judged.caused_by.empty()) << work.text << found.told(i);
    for (const std::size_t claim : judged.caused_by) {
      ASSERT_LT(claim, i) << found.told(i);
      ASSERT_NE(work.lines[claim].printed, work.lines[claim].exact) << found.told(i);
    }
    // What the printed values can stand for explains the printed value.
    const Number half = half_unit(line.digits, false);
    ASSERT_TRUE(ranges[i].low <= line.printed + half && line.printed - half <= ranges[i].high)
        << work.text << found.told(i);
  }
  ASSERT_EQ(found.result.marks.earned(), found.result.marks.most()) << work.text;
}

TEST(RoundedWorks, AreRightAndRemarkedUponJustWhereAFigureChanges) {
  RandomCircuits random(402);
  for (std::uint64_t round = 0; round < test::rounds(250); ++round) {
    const RandomWork work = random_work(random, 2 + random.below(7));
    for (const int figures : {2, 3, 4}) {
      expect_remarks_where_rounding_shows(work, figures);
      if (testing::Test::HasFatalFailure()) {
        FAIL() << "round " << round << ", " << figures << " figures";
      }
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
    if (range.low == range.high || told.digits.size() < 4) continue;
    const bool inside = random.below(2) == 0;
    const Number width = range.high - range.low;
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
