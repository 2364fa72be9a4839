// Random right works are never refused, and random wrong ones never accepted.
#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "properties/rounds.h"
#include "support/judged.h"
#include "support/way_back.h"

namespace ohmfold {
namespace {

using support::RandomCircuits;
using support::RandomWork;
using support::WrittenWork;

std::vector<std::string> lines_of(const std::string& text) {
  std::vector<std::string> lines;
  for (std::size_t begin = 0; begin < text.size();) {
    const std::size_t end = text.find('\n', begin);
    lines.push_back(text.substr(begin, end - begin));
    begin = end + 1;
  }
  return lines;
}

std::string shuffled(const std::string& text, RandomCircuits& random) {
  std::vector<std::string> lines = lines_of(text);
  for (std::size_t i = lines.size(); i > 1; --i) std::swap(lines[i - 1], lines[random.below(i)]);
  std::string mixed;
  for (const std::string& line : lines) mixed += line + "\n";
  return mixed;
}

TEST(RandomWorks, RightOnesPassWholeInAnyOrder) {
  RandomCircuits random(401);
  for (std::uint64_t round = 0; round < test::rounds(2000); ++round) {
    const RandomWork work = random_work(random, 1 + random.below(9));
    std::string text = write_work(work.book).text;
    if (round % 3 == 0) text = shuffled(text, random);
    const test::JudgedText found = test::judged(work.exercise, text);
    const std::size_t failed = found.first_that_fails();
    ASSERT_EQ(failed, found.result.lines.size()) << "round " << round << "\n"
                                                 << text << found.told(failed);
    ASSERT_TRUE(found.result.all_right()) << text;
    for (const Judgement& line : found.result.lines) {
      ASSERT_TRUE(line.value == ValueVerdict::none || line.value == ValueVerdict::exact)
          << text << found.told(line.claim);
    }
    const CaseStanding& standing = found.result.cases.front();
    ASSERT_TRUE(standing.open.empty() && standing.attempted.empty()) << text;
    ASSERT_EQ(found.result.marks.earned(), found.result.marks.most()) << text;
  }
}

// --- one line changed --------------------------------------------------------------------------
// A work in order, and which of its lines is changed.
struct Corrupted {
  std::string text;
  std::size_t line = 0;
  std::string kind;
};

std::string joined(const std::vector<std::string>& lines) {
  std::string text;
  for (const std::string& line : lines) text += line + "\n";
  return text;
}

// A value that is far from the right one; all later lines are worked out from it. Nothing where a
// size would come out negative: a battery that loses more volts than it has.
std::optional<Corrupted> with_wrong_value(const RandomWork& work, RandomCircuits& random) {
  const WrittenWork right = write_work(work.book);
  const std::size_t line = random.below(right.lines.size());
  const int numerator = static_cast<int>(2 + random.below(9));
  const Number factor = Number::quotient(numerator * 3 + 1, 13);
  const Number& value = right.lines[line].printed;
  Number wrong = factor == Number(1) ? value * 2 : value * factor;
  if (wrong.is_integer()) wrong += Number::quotient(1, 3);
  const WrittenWork changed =
      write_work(work.book, 0, support::Slip{right.lines[line].note, wrong});
  for (const WrittenWork::Line& one : changed.lines) {
    // A whole number may stand for what is near it.
    const bool vague = one.printed.is_integer() && one.printed != one.exact;
    if (!one.printed.is_positive() || vague) return std::nullopt;
  }
  return Corrupted{changed.text, line, "value"};
}

bool is_of_file(const RandomWork& work, const std::string& key) {
  const std::vector<Part>& parts = work.exercise.problem->parts;
  return std::any_of(parts.begin(), parts.end(),
                     [&](const Part& part) { return part.name == key.substr(2); });
}

// The line by itself is changed, all others are right.
std::optional<Corrupted> with_changed_line(const RandomWork& work, RandomCircuits& random) {
  const WrittenWork right = write_work(work.book);
  std::vector<std::string> lines = lines_of(right.text);
  const std::size_t line = random.below(lines.size());
  std::string& text = lines[line];
  const std::size_t equals = text.rfind('=');
  const Number& value = right.lines[line].printed;
  if (value.is_zero()) return std::nullopt;
  switch (random.below(3)) {
    case 0: {
      const bool minus = text[equals + 2] == '-';
      text = minus ? text.substr(0, equals + 2) + text.substr(equals + 3)
                   : text.substr(0, equals + 2) + "-" + text.substr(equals + 2);
      // Parts that the person made have no direction: there either sign will do.
      const std::string& key = work.book.lines[right.lines[line].note].key;
      if (!is_of_file(work, key) && key.front() != 'R') return std::nullopt;
      return Corrupted{joined(lines), line, "sign"};
    }
    case 1: {
      const std::size_t unit = text.rfind(' ') + 1;
      const std::string now = text.substr(unit);
      text.replace(unit, std::string::npos, now == "V" ? "A" : "V");
      return Corrupted{joined(lines), line, "unit"};
    }
    default:
      text.replace(equals + 2, std::string::npos,
                   (value * 1000).to_string() + text.substr(text.rfind(' ')));
      return Corrupted{joined(lines), line, "prefix"};
  }
}

// One operand exchanged for another part that does not belong there.
bool exchange_operand(const RandomWork& work, std::size_t index, support::Made& made,
                      RandomCircuits& random) {
  const Problem& problem = *work.exercise.problem;
  support::Standing standing{support::network_of(problem), {}};
  for (const Part& part : problem.parts) standing.names.push_back(part.name);
  for (std::size_t i = 0; i < index; ++i) standing.combine(work.made[i]);
  const std::string other = standing.names[1 + random.below(standing.names.size() - 1)];
  if (other.empty() || std::count(made.operands.begin(), made.operands.end(), other) > 0) {
    return false;
  }
  made.operands.back() = other;
  return !standing.may_combine(made.how, made.operands);
}

// Series for parallel or the reverse with its value, another operand, or a part used twice.
std::optional<Corrupted> with_wrong_step(const RandomWork& work, RandomCircuits& random) {
  if (work.made.empty()) return std::nullopt;
  const std::size_t index = random.below(work.made.size());
  RandomWork changed = work;
  support::Made& made = changed.made[index];
  std::string kind = "law";
  const std::size_t way = random.below(3);
  if (way == 0) {
    if (!exchange_operand(work, index, made, random)) return std::nullopt;
    kind = "operand";
  } else if (way == 1) {
    made.how = made.how == Joining::series ? Joining::parallel : Joining::series;
  } else {
    // A part of a combination before this one, used up there.
    if (index == 0) return std::nullopt;
    const support::Made& before = changed.made[random.below(index)];
    const std::string& again = before.operands.front();
    if (std::count(made.operands.begin(), made.operands.end(), before.name) > 0) {
      return std::nullopt;
    }
    made.operands.back() = again;
    kind = "used twice";
  }
  changed.book.lines.clear();
  add_reduction(changed.made, random, 5, changed.book);
  std::map<std::string, Number> exact = exact_values(changed.book);
  if (kind == "law" && exact.at("R " + made.name) == exact_values(work.book).at("R " + made.name)) {
    return std::nullopt;
  }
  return Corrupted{write_work(changed.book).text, index, kind};
}

TEST(RandomWorks, AWrongValueIsBlamedAndWhatFollowsFromItIsNot) {
  RandomCircuits random(404);
  for (std::uint64_t round = 0; round < test::rounds(1500); ++round) {
    const RandomWork work = random_work(random, 2 + random.below(7));
    const auto wrong = with_wrong_value(work, random);
    if (!wrong) continue;
    const test::JudgedText found = test::judged(work.exercise, wrong->text);
    ASSERT_FALSE(found.result.all_right()) << wrong->text;
    ASSERT_EQ(found.first_that_fails(), wrong->line)
        << wrong->text << "\nwrong: " << found.told(wrong->line);
    for (std::size_t i = wrong->line + 1; i < found.result.lines.size(); ++i) {
      const Judgement& line = found.result.lines[i];
      ASSERT_TRUE(line.holds()) << wrong->text << found.told(wrong->line) << "\n" << found.told(i);
      ASSERT_EQ(line.method, Mark::earned) << wrong->text << found.told(i);
      ASSERT_EQ(line.accuracy, Mark::earned) << wrong->text << found.told(i);
      const bool right = line.value == ValueVerdict::exact;
      ASSERT_TRUE(right || line.value == ValueVerdict::on_own) << wrong->text << found.told(i);
    }
    // What nobody asked for, and nothing rests on, costs nothing; nor does what was said before.
    const std::string& key = work.book.lines[write_work(work.book).lines[wrong->line].note].key;
    if ((key.front() == 'R' && key != "R seen") || is_of_file(work, key)) {
      ASSERT_LT(found.result.marks.earned(), found.result.marks.most())
          << wrong->text << found.told(wrong->line);
    }
  }
}

TEST(RandomWorks, AWrongSignUnitOrPrefixIsBlamed) {
  RandomCircuits random(405);
  for (std::uint64_t round = 0; round < test::rounds(1500); ++round) {
    const RandomWork work = random_work(random, 2 + random.below(7));
    const auto wrong = with_changed_line(work, random);
    if (!wrong) continue;
    const test::JudgedText found = test::judged(work.exercise, wrong->text);
    ASSERT_FALSE(found.result.all_right()) << wrong->text;
    ASSERT_EQ(found.first_that_fails(), wrong->line) << wrong->kind << "\n"
                                                     << wrong->text << found.told(wrong->line);
  }
}

TEST(RandomWorks, AWrongStepIsBlamed) {
  RandomCircuits random(406);
  std::map<std::string, int> kinds;
  for (std::uint64_t round = 0; round < test::rounds(2000); ++round) {
    const RandomWork work = random_work(random, 3 + random.below(6), false);
    const auto wrong = with_wrong_step(work, random);
    if (!wrong) continue;
    ++kinds[wrong->kind];
    const test::JudgedText found = test::judged(work.exercise, wrong->text);
    ASSERT_FALSE(found.result.all_right()) << wrong->text;
    ASSERT_EQ(found.first_that_fails(), wrong->line) << wrong->kind << "\n"
                                                     << wrong->text << found.told(wrong->line);
    ASSERT_EQ(found.result.lines[wrong->line].step, StepVerdict::refused) << wrong->text;
  }
  for (const char* kind : {"law", "operand", "used twice"}) EXPECT_GT(kinds[kind], 100) << kind;
}

}  // namespace
}  // namespace ohmfold
