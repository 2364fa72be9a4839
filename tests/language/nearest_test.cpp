// The word that was meant is found where it is near, and nothing is guessed where none is.

#include "language/nearest.h"

#include <gtest/gtest.h>

#include <vector>

namespace ohmfold {
namespace {

const std::vector<std::string_view> kWords{"resistor", "battery", "lamp", "wire", "R1", "R2", "T"};

TEST(Nearest, ForgivesOneSlipForEveryThreeLetters) {
  EXPECT_EQ(nearest("resitor", kWords), "resistor");
  EXPECT_EQ(nearest("resisstor", kWords), "resistor");
  EXPECT_EQ(nearest("rseistor", kWords), "resistor");
  EXPECT_EQ(nearest("lmap", kWords), "lamp");
  EXPECT_EQ(nearest("Battery", kWords), "battery");
  EXPECT_EQ(nearest("r1", kWords), "R1");
  EXPECT_EQ(nearest("wre", kWords), "wire");
}

TEST(Nearest, GuessesNothingWhereAllAreFar) {
  EXPECT_EQ(nearest("R9", kWords), "");
  EXPECT_EQ(nearest("X", kWords), "");
  EXPECT_EQ(nearest("bulb", kWords), "");
  EXPECT_EQ(nearest(std::string(100, 'r'), kWords), "");
  EXPECT_EQ(nearest("R1", {}), "");
}

TEST(Suggestion, ListsTheKnownWordsWhereTheyAreFew) {
  const std::vector<std::string_view> points{"A", "B", "T"};
  EXPECT_EQ(suggestion("X", points, "points"), "the points are A, B and T");
  EXPECT_EQ(suggestion("a", points, "points"), "did you mean 'A'?");
  const std::vector<std::string_view> many(9, "Q");
  EXPECT_EQ(suggestion("X", many, "points"), "");
  EXPECT_EQ(suggestion("X", {}, "points"), "");
}

TEST(Listed, CountsWhatItDoesNotName) {
  const std::vector<std::string_view> words{"A", "B", "C", "D"};
  EXPECT_EQ(listed(words, 9), "A, B, C and D");
  EXPECT_EQ(listed(words, 2), "A, B and 2 more");
  EXPECT_EQ(listed(std::vector<std::string_view>{"A", "B"}, 2), "A and B");
  EXPECT_EQ(listed({}, 2), "");
}

}  // namespace
}  // namespace ohmfold
