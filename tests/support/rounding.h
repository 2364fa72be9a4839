// What rounding each line of a work does to it: found with exact interval arithmetic, apart from
// the program's own.
#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "support/judged.h"
#include "support/notebook.h"

namespace ohmfold::support {

struct Interval {
  Number low, high;
};

inline Number ten_to(int power) {
  Number value(1);
  for (int i = 0; i < power; ++i) value = value * 10;
  for (int i = 0; i > power; --i) value = value / 10;
  return value;
}

// Half a unit of the last digit; `lenient`: of a whole number, of the last digit other than zero.
inline Number half_unit(const std::string& digits, bool lenient) {
  const std::size_t point = digits.find('.');
  int power = 0;
  if (point != std::string::npos) {
    power = -static_cast<int>(digits.size() - point - 1);
  } else if (lenient) {
    power = static_cast<int>(digits.size() - digits.find_last_not_of('0') - 1);
  }
  return ten_to(power) / 2;
}

inline bool is_within(const Number& exact, const Number& printed, const Number& half) {
  return abs(printed - exact) <= half;
}

// Each operation here grows or falls with each operand, so that the ends give the range.
inline Interval follow_interval(Way way, const std::vector<Interval>& from) {
  std::vector<Number> low, high;
  for (std::size_t i = 0; i < from.size(); ++i) {
    const bool falls = i > 0 && (way == Way::quotient || way == Way::difference);
    low.push_back(falls ? from[i].high : from[i].low);
    high.push_back(falls ? from[i].low : from[i].high);
  }
  return {follow(way, low), follow(way, high)};
}

// The range of each line, from what the printed values before it can stand for.
inline std::vector<Interval> intervals_of(const Notebook& book, const WrittenWork& work) {
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
      // A printed value that is exactly right stands for itself.
      const bool exact = line.printed == line.exact;
      const Number half = exact ? Number(0) : half_unit(line.digits, false);
      range = {line.printed - half, line.printed + half};
    }
    known[book.lines[i].key] = range;
  }
  return ranges;
}

/// Does the value of the line follow from that of a part which stands in no line?
inline bool rests_on_unwritten(const Notebook& book, std::size_t note) {
  const std::vector<std::string>& from = book.lines[note].from;
  return std::any_of(book.lines.begin(), book.lines.end(), [&](const NoteLine& other) {
    const bool of_part = other.key.front() == 'I' || other.key.front() == 'V';
    return of_part && other.claim.empty() &&
           std::find(from.begin(), from.end(), other.key) != from.end();
  });
}

/// What is wrong with what is found about a work rounded to so many figures at every line; empty
/// where nothing is. `before` goes before its first line. The first figure that rounding changes
/// has to be told at its line, and nowhere else. Behind a line that was worked out from values
/// which are not written (of parts without a name), rounding may explain it instead.
inline std::string fault_in_rounding(const Exercise& exercise, const Notebook& book, int figures,
                                     const std::string& before = "") {
  const WrittenWork work = write_work(book, figures);
  const test::JudgedText found = test::judged(exercise, before + work.text);
  const std::size_t skip = before.empty() ? 0 : 1;
  if (found.result.lines.size() != work.lines.size() + skip) return "not all lines are judged";
  const auto fault = [&](std::size_t i, const std::string& what) {
    return std::to_string(figures) + " figures, " + found.told(i + skip) + ": " + what +
           ", exactly " + work.lines[i].exact.to_string() + "\n" + work.text;
  };
  const std::vector<Interval> ranges = intervals_of(book, work);
  for (std::size_t i = 0; i < work.lines.size(); ++i) {
    const WrittenWork::Line& line = work.lines[i];
    const Judgement& judged = found.result.lines[i + skip];
    if (!judged.holds()) return fault(i, "refused");
    const Number half = half_unit(line.digits, true);
    const ValueVerdict expected = line.printed == line.exact ? ValueVerdict::exact
                                  : is_within(line.exact, line.printed, half)
                                      ? ValueVerdict::rounded
                                      : ValueVerdict::rounded_early;
    const bool explained_only = expected == ValueVerdict::rounded_early &&
                                judged.value == ValueVerdict::within_rounding &&
                                rests_on_unwritten(book, line.note);
    if (judged.value != expected && !explained_only) return fault(i, "another verdict");
    if (expected != ValueVerdict::rounded_early) continue;
    const bool explained =
        ranges[i].low <= line.printed + half && line.printed - half <= ranges[i].high;
    if (!explained) return fault(i, "rounding does not explain it");
    if (judged.caused_by.empty()) return fault(i, "no cause");
    for (const std::size_t claim : judged.caused_by) {
      const bool before_it = claim >= skip && claim < i + skip;
      if (!before_it) return fault(i, "a cause that comes later");
      const WrittenWork::Line& cause = work.lines[claim - skip];
      if (cause.printed == cause.exact) return fault(i, "a cause that is exact");
    }
  }
  return found.result.all_right() ? "" : "not all right\n" + work.text;
}

}  // namespace ohmfold::support
