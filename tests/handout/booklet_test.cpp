// Several problems as one document: their order, their numbers, the key.
#include "handout/booklet.h"

#include <gmock/gmock.h>

#include "ohmfold/read.h"
#include "ohmfold/solve.h"
#include "views/words.h"

namespace ohmfold::handout {
namespace {

using ::testing::ElementsAre;
using ::testing::IsEmpty;

Trace solved(const std::string& text) {
  const Outcome<Problem> problem = read_circuit({"sample.circuit", text});
  EXPECT_TRUE(problem) << text;
  return solve(*problem.value);
}

std::vector<Trace> two_problems() {
  std::vector<Trace> traces;
  traces.push_back(
      solved("title \"Lamp\"\nbattery E = 6 V from G to T\nresistor R = 4 ohm from T to G\n"
             "find current through R\n"));
  traces.push_back(
      solved("title \"Switch\"\nbattery E = 6 V from G to T\nresistor R = 3 ohm from T to A\n"
             "switch S from A to G\ncase \"on\": S closed\ncase \"off\": S open\n"
             "find current through R\n"));
  return traces;
}

std::vector<std::string> first_headings(const views::Document& document) {
  std::vector<std::string> all;
  for (const views::Block& block : document.blocks) {
    const auto* heading = std::get_if<views::Heading>(&block);
    if (heading != nullptr && heading->level == 1) all.push_back(plain_text(heading->words));
  }
  return all;
}

std::vector<std::vector<std::string>> rows_of_last_table(const views::Document& document) {
  std::vector<std::vector<std::string>> rows;
  for (const views::Block& block : document.blocks) {
    const auto* table = std::get_if<views::Table>(&block);
    if (table == nullptr) continue;
    rows.clear();
    for (const auto& row : table->rows) {
      rows.emplace_back();
      for (const views::Words& cell : row) rows.back().push_back(plain_text(cell));
    }
  }
  return rows;
}

TEST(Booklet, NumbersItsProblemsInTheOrderGiven) {
  EXPECT_THAT(first_headings(booklet(two_problems(), {}, false)),
              ElementsAre("Problem 1: Lamp", "Problem 2: Switch"));
}

TEST(Booklet, OfOneProblemHasItsTitleAlone) {
  const std::vector<Trace> traces = two_problems();
  const std::span<const Trace> one(traces.data(), 1);
  EXPECT_THAT(first_headings(booklet(one, {}, false)), ElementsAre("Lamp"));
  EXPECT_EQ(booklet_title(one, Content::problem), "Lamp");
}

TEST(Booklet, OfSeveralIsCalledAfterItsContent) {
  const std::vector<Trace> traces = two_problems();
  EXPECT_EQ(booklet_title(traces, Content::solution), "Worked solutions");
  EXPECT_EQ(booklet_title(traces, Content::problem), "Problems");
  EXPECT_EQ(booklet_title(traces, Content::answers), "Answers");
}

TEST(Booklet, EndsWithTheKeyWhereAsked) {
  const views::Document document = booklet(two_problems(), {.content = Content::problem}, true);
  EXPECT_THAT(first_headings(document),
              ElementsAre("Problem 1: Lamp", "Problem 2: Switch", "Answers"));
  EXPECT_THAT(rows_of_last_table(document),
              ElementsAre(ElementsAre("1. Lamp", "", "The current through R", "3/2 A = 1.5 A"),
                          ElementsAre("2. Switch", "on", "The current through R", "2 A"),
                          ElementsAre("", "off", "The current through R", "0 A")));
}

TEST(Booklet, SaysOfAContradictionInTheKeyThatItIsOne) {
  std::vector<Trace> traces;
  traces.push_back(solved("battery E = 6 V from G to T\nwire W from T to G\n"));
  EXPECT_THAT(rows_of_last_table(booklet(traces, {.content = Content::problem}, true)),
              ElementsAre(ElementsAre("everything", "contradiction")));
}

TEST(Booklet, OfNoProblemIsEmpty) {
  EXPECT_THAT(booklet({}, {}, false).blocks, IsEmpty());
}

}  // namespace
}  // namespace ohmfold::handout
