// Counts of series-parallel networks and of their resistances against the On-Line Encyclopedia of
// Integer Sequences (https://oeis.org).
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "ohmfold/solve.h"
#include "published/networks.h"
#include "published/shapes.h"

namespace ohmfold::published {
namespace {

using Values = std::set<Number>;

Number in_series(const Number& a, const Number& b) {
  return Ratio::series(Ratio(a), Ratio(b)).lowest_terms();
}
Number in_parallel(const Number& a, const Number& b) {
  return Ratio::parallel(Ratio(a), Ratio(b)).lowest_terms();
}

/// The resistances of exactly n equal resistors of 1 ohm in series and parallel, at index n.
std::vector<Values> values_of_exactly(std::size_t most) {
  std::vector<Values> all(most + 1);
  all[1].insert(Number(1));
  for (std::size_t parts = 2; parts <= most; ++parts) {
    for (std::size_t first = 1; 2 * first <= parts; ++first) {
      for (const Number& a : all[first]) {
        for (const Number& b : all[parts - first]) {
          all[parts].insert(in_series(a, b));
          all[parts].insert(in_parallel(a, b));
        }
      }
    }
  }
  return all;
}

std::vector<std::size_t> sizes(const std::vector<Values>& sets) {
  std::vector<std::size_t> counted;
  for (std::size_t n = 1; n < sets.size(); ++n) counted.push_back(sets[n].size());
  return counted;
}

std::set<std::string> texts(const Values& values) {
  std::set<std::string> all;
  for (const Number& value : values) all.insert(value.to_string());
  return all;
}

/// Those that no smaller number of resistors gives.
Values needing_exactly(const std::vector<Values>& sets, std::size_t parts) {
  Values needed = sets[parts];
  for (std::size_t fewer = 1; fewer < parts; ++fewer) {
    for (const Number& value : sets[fewer]) needed.erase(value);
  }
  return needed;
}

TEST(EqualResistors, GiveAsManyValuesAsA048211Says) {
  const std::vector<std::size_t> published{1, 2, 4, 9, 22, 53, 131, 337, 869, 2213};
  EXPECT_EQ(sizes(values_of_exactly(10)), published);
}

TEST(EqualResistors, GiveWithAtMostSoManyAsManyValuesAsA153588Says) {
  const std::vector<std::size_t> published{1, 3, 7, 15, 35, 77, 179, 429, 1039, 2525};
  std::vector<Values> sets = values_of_exactly(10);
  for (std::size_t n = 2; n < sets.size(); ++n)
    sets[n].insert(sets[n - 1].begin(), sets[n - 1].end());
  EXPECT_EQ(sizes(sets), published);
}

TEST(EqualResistors, NeedExactlySoManyForAsManyValuesAsA051389Says) {
  const std::vector<std::size_t> published{1, 2, 4, 8, 20, 42, 102, 250, 610, 1486};
  const std::vector<Values> sets = values_of_exactly(10);
  std::vector<std::size_t> counted;
  for (std::size_t n = 1; n < sets.size(); ++n) counted.push_back(needing_exactly(sets, n).size());
  EXPECT_EQ(counted, published);
}

// A048211, example for n = 4.
TEST(EqualResistors, GiveTheseNineValuesWhereThereAreFour) {
  const std::set<std::string> published{"1/4", "2/5", "3/5", "3/4", "1", "4/3", "5/3", "5/2", "4"};
  EXPECT_EQ(texts(values_of_exactly(4)[4]), published);
}

// A051389, example for n = 5; the page prints 7/6 twice, where the second should be 6/7, since
// reciprocals come in pairs.
TEST(EqualResistors, NeedFiveForTheseTwentyValues) {
  const std::set<std::string> published{"5",   "1/5", "5/4", "4/5", "7/3", "3/7", "7/4",
                                        "4/7", "7/2", "2/7", "7/5", "5/7", "8/3", "3/8",
                                        "8/5", "5/8", "5/6", "6/5", "7/6", "6/7"};
  EXPECT_EQ(texts(needing_exactly(values_of_exactly(5), 5)), published);
}

// A048211, comment: series and parallel change places when every value is inverted.
TEST(EqualResistors, GiveTheReciprocalOfEveryValue) {
  const std::vector<Values> sets = values_of_exactly(9);
  for (std::size_t n = 1; n < sets.size(); ++n) {
    for (const Number& value : sets[n]) {
      EXPECT_EQ(sets[n].count(Number(1) / value), 1U) << value.to_string();
    }
  }
}

// A048211, comment: neither part of a fraction exceeds the Fibonacci number F(n + 1), which is met.
TEST(EqualResistors, GiveFractionsUpToAFibonacciNumber) {
  const std::vector<Values> sets = values_of_exactly(10);
  cln::cl_I previous = 1;
  cln::cl_I bound = 1;
  for (std::size_t n = 1; n < sets.size(); ++n) {
    cln::cl_I largest = 0;
    for (const Number& value : sets[n]) {
      largest = cln::max(largest, cln::max(value.numerator(), value.denominator()));
    }
    EXPECT_TRUE(cln::equal(largest, bound)) << "with " << n << " resistors";
    const cln::cl_I next = previous + bound;
    previous = bound;
    bound = next;
  }
}

/// What the engine makes of a shape: its steps put together again, and the resistance.
struct Reduced {
  std::string text;
  Number resistance;
};

Reduced reduced(const Shape& shape, bool labelled, const SolveOptions& options = {}) {
  const Problem problem = read(circuit_text(shape));
  const Reduction reduction = reduce_case(problem, problem.cases.front(), options);
  if (reduction.stop != Stop::reduced) return {"not reduced", Number(0)};
  std::vector<std::string> labels;
  for (const Part& part : problem.parts) labels.push_back(labelled ? part.name.substr(1) : "o");
  return {shape_of(reduction, labels).text,
          reduction.end.resistance(reduction.root).lowest_terms()};
}

TEST(EqualResistors, GiveTheSameValuesWhenTheNetworksAreBuiltAndReduced) {
  const std::vector<Shapes> shapes = unlabelled_shapes(7);
  const std::vector<Values> expected = values_of_exactly(7);
  for (std::size_t n = 1; n < shapes.size(); ++n) {
    Values found;
    for (const Shape& shape : shapes[n]) found.insert(reduced(shape, false).resistance);
    EXPECT_EQ(texts(found), texts(expected[n])) << "with " << n << " resistors";
  }
}

TEST(EqualResistors, GiveTheSameValuesWhenTheNetworksAreSolved) {
  const std::vector<Shapes> shapes = unlabelled_shapes(6);
  const std::vector<Values> expected = values_of_exactly(6);
  for (std::size_t n = 1; n < shapes.size(); ++n) {
    Values found;
    for (const Shape& shape : shapes[n]) {
      const Trace trace = solve(read(circuit_text(shape)));
      const CaseTrace& solved = trace.cases.front();
      ASSERT_EQ(solved.kind, Kind::series_parallel) << shape.text;
      ASSERT_TRUE(solved.equivalent && solved.equivalent->value) << shape.text;
      found.insert(solved.equivalent->value->number);
    }
    EXPECT_EQ(texts(found), texts(expected[n])) << "with " << n << " resistors";
  }
}

TEST(Networks, AreAsManyAsA000084Says) {
  const std::vector<std::size_t> published{1, 2, 4, 10, 24, 66, 180, 522, 1532, 4624};
  const std::vector<Shapes> shapes = unlabelled_shapes(10);
  for (std::size_t n = 1; n < shapes.size(); ++n) EXPECT_EQ(shapes[n].size(), published[n - 1]);
}

// A step log tells the structure: as many distinct ones as A000084 says come back from the engine.
TEST(StepLogs, TellAsManyStructuresApartAsA000084Says) {
  const std::vector<std::size_t> published{1, 2, 4, 10, 24, 66, 180, 522};
  const std::vector<Shapes> shapes = unlabelled_shapes(8);
  for (std::size_t n = 1; n < shapes.size(); ++n) {
    std::set<std::string> structures;
    for (const Shape& shape : shapes[n]) {
      const Reduced found = reduced(shape, false);
      EXPECT_EQ(found.text, shape.text);
      structures.insert(found.text);
    }
    EXPECT_EQ(structures.size(), published[n - 1]);
  }
}

TEST(StepLogs, TellTheSameStructuresInPairs) {
  SolveOptions pairs;
  pairs.pairs = true;
  for (const Shapes& shapes : unlabelled_shapes(6)) {
    for (const Shape& shape : shapes) EXPECT_EQ(reduced(shape, false, pairs).text, shape.text);
  }
}

// Parts of 1, 2, …, n ohm: A006351 networks (labelled parts), A232005 different resistances.
TEST(StepLogs, TellAsManyLabelledStructuresApartAsA006351Says) {
  const std::vector<std::size_t> networks{1, 2, 8, 52, 472};
  const std::vector<std::size_t> resistances{1, 2, 8, 48, 386};
  for (std::size_t n = 1; n <= networks.size(); ++n) {
    std::set<std::string> structures;
    Values values;
    for (const Shape& shape : labelled_shapes(n)) {
      const Reduced found = reduced(shape, true);
      EXPECT_EQ(found.text, shape.text);
      structures.insert(found.text);
      values.insert(found.resistance);
    }
    EXPECT_EQ(structures.size(), networks[n - 1]);
    EXPECT_EQ(values.size(), resistances[n - 1]);
  }
}

}  // namespace
}  // namespace ohmfold::published
