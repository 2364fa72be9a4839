// Random right works are never refused, and random wrong ones never accepted.
#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

#include "properties/rounds.h"
#include "support/judged.h"
#include "support/way_back.h"

namespace ohmfold {
namespace {

using support::Notebook;
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

}  // namespace
}  // namespace ohmfold
