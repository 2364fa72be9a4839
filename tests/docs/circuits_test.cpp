// The circuits of the pages are read and solved, and the answers that stand beside a question in a
// comment ("# = 3 A", one for each case) are its answers.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <sstream>
#include <string>
#include <vector>

#include "docs/pages.h"
#include "ohmfold/decimal.h"
#include "ohmfold/read.h"
#include "ohmfold/render.h"
#include "ohmfold/solve.h"

namespace ohmfold::testing {
namespace {

/// Every marked example of this kind, with its place.
std::vector<std::pair<std::string, Example>> examples_of(const std::string& kind) {
  std::vector<std::pair<std::string, Example>> found;
  for (const Page& page : pages()) {
    for (const Example& example : page.examples) {
      if (example.kind == kind) found.emplace_back(page.place(example), example);
    }
  }
  return found;
}

/// The answers that stand beside the questions of a circuit, in their order; "" where none does.
std::vector<std::string> answers_beside(const std::string& text) {
  std::vector<std::string> answers;
  std::istringstream stream(text);
  for (std::string line; std::getline(stream, line);) {
    if (!line.starts_with("find ")) continue;
    const std::size_t at = line.find("# = ");
    answers.push_back(at == std::string::npos ? "" : line.substr(at + 4));
  }
  return answers;
}

std::string text_of(const Reading& reading) {
  return reading.value ? exact_text(*reading.value, Letters::ascii) : "not determined";
}

/// What the answer to question `index` is, one case after the other.
std::string answers_of(const Trace& trace, std::size_t index) {
  std::string all;
  for (const CaseTrace& one : trace.cases) {
    if (!all.empty()) all += "; ";
    all += text_of(one.answers[index].value);
  }
  return all;
}

TEST(Circuits, OfThePagesAreSolvedAndHaveTheAnswersShown) {
  std::size_t compared = 0;
  for (const auto& [place, example] : examples_of("circuit")) {
    SCOPED_TRACE(place);
    const SourceText source{place, example.details + "\n" + example.text};
    const Outcome<Problem> problem = read_circuit(source);
    for (const Diagnostic& finding : problem.diagnostics) ADD_FAILURE() << render(finding, source);
    if (!problem) continue;
    const Trace trace = solve(*problem.value);
    EXPECT_FALSE(trace.has_contradiction());
    EXPECT_FALSE(render_text(trace).empty());
    const std::vector<std::string> wanted = answers_beside(source.text);
    ASSERT_EQ(wanted.size(), problem.value->questions.size());
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      if (wanted[i].empty()) continue;
      EXPECT_EQ(answers_of(trace, i), wanted[i]);
      ++compared;
    }
  }
  EXPECT_GE(compared, 20U);
}

TEST(Circuits, OfTheLanguagePageShowEveryStatement) {
  const std::set<std::string> wanted = {"title",  "text",    "battery", "resistor",  "lamp",
                                        "wire",   "switch",  "ammeter", "voltmeter", "case",
                                        "ground", "figures", "find",    "place"};
  std::set<std::string> seen;
  for (const auto& [place, example] : examples_of("circuit")) {
    if (!place.starts_with("language.md")) continue;
    std::istringstream stream(example.text);
    for (std::string line; std::getline(stream, line);) seen.insert(line.substr(0, line.find(' ')));
  }
  EXPECT_THAT(seen, ::testing::IsSupersetOf(wanted));
}

TEST(Works, OfThePagesAreRead) {
  std::set<std::size_t> kinds;
  for (const auto& [place, example] : examples_of("work")) {
    SCOPED_TRACE(place);
    const Outcome<Problem> problem = read_circuit({place, example.details});
    ASSERT_TRUE(problem);
    const SourceText source{place, example.text};
    const Outcome<Work> work = read_work(source, *problem.value);
    for (const Diagnostic& finding : work.diagnostics) ADD_FAILURE() << render(finding, source);
    if (!work) continue;
    for (const Claim& claim : work.value->claims) kinds.insert(claim.says.index());
  }
  EXPECT_GE(kinds.size(), 3U);
}

/// The claims in code within the rows of a table, as they stand there.
std::vector<std::string> claims_in_row(const std::string& row) {
  std::vector<std::string> claims;
  for (std::size_t open = row.find('`'); open != std::string::npos; open = row.find('`', open)) {
    const std::size_t close = row.find('`', open + 1);
    std::string claim = row.substr(open + 1, close - open - 1);
    for (std::size_t at = 0; (at = claim.find("\\|")) != std::string::npos;) claim.erase(at, 1);
    claims.push_back(std::move(claim));
    open = close + 1;
  }
  return claims;
}

TEST(Works, MeanTheSameInBothFormsOfTheTable) {
  const Outcome<Problem> problem =
      read_circuit({"table",
                    "battery E = 18 V from G to T\nresistor R1 = 4 ohm from T to A\n"
                    "resistor R2 = 2 ohm from A to G\nresistor R3 = 4 ohm from T to B\n"
                    "resistor R4 = 2 ohm from B to G\nresistor R5 = 2 ohm from A to B\n"});
  ASSERT_TRUE(problem);
  std::size_t rows = 0;
  for (const Page& page : pages()) {
    if (page.path.filename() != "language.md") continue;
    std::istringstream stream(page.text.substr(page.text.find("| claim | in words |")));
    for (std::string row; std::getline(stream, row) && row.starts_with("|");) {
      const std::vector<std::string> claims = claims_in_row(row);
      const std::size_t pairs = claims.size() % 2 == 0 ? claims.size() / 2 : 0;
      for (std::size_t i = 0; i < claims.size(); ++i) {
        const SourceText source{"table", claims[i]};
        const Outcome<Claim> claim = read_claim(source, *problem.value, {});
        ASSERT_TRUE(claim) << claims[i];
        if (i >= pairs) continue;
        const SourceText other{"table", claims[i + pairs]};
        const Outcome<Claim> in_short = read_claim(other, *problem.value, {});
        ASSERT_TRUE(in_short) << other.text;
        EXPECT_EQ(claim.value->says.index(), in_short.value->says.index()) << other.text;
        ++rows;
      }
    }
  }
  EXPECT_GE(rows, 11U);
}

TEST(Values, InThePagesAreReadAsTheySay) {
  std::size_t compared = 0;
  for (const auto& [place, example] : examples_of("values")) {
    std::istringstream stream(example.text);
    for (std::string line; std::getline(stream, line); ++compared) {
      SCOPED_TRACE(place + ": " + line);
      const std::size_t gap = line.find("  ");
      ASSERT_NE(gap, std::string::npos);
      const SourceText source{place, "resistor R = " + line.substr(0, gap) + " from A to B\n" +
                                         "find resistance between A and B\n"};
      const Outcome<Problem> problem = read_circuit(source);
      for (const Diagnostic& one : problem.diagnostics) ADD_FAILURE() << render(one, source);
      if (!problem) continue;
      const std::string wanted = line.substr(line.find_first_not_of(' ', gap));
      EXPECT_EQ(exact_text(Resistance{problem.value->parts.front().value}, Letters::ascii), wanted);
    }
  }
  EXPECT_GT(compared, 10U);
}

}  // namespace
}  // namespace ohmfold::testing
