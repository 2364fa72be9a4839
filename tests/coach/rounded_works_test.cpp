// Works on the problems that reduce, with every value rounded.
#include <gtest/gtest.h>

#include <optional>
#include <string>
#include <vector>

#include "coach/problem_files.h"
#include "support/rounding.h"
#include "support/way_back.h"

namespace ohmfold {
namespace {

using support::Notebook;
using support::RandomCircuits;

// A work on a case that one battery feeds and that reduces to one part; nothing for others.
std::optional<Notebook> work_on(const Exercise& exercise, std::size_t case_index,
                                RandomCircuits& random) {
  const CaseTrace& solved = exercise.trace.cases[case_index];
  const Reduction& main = solved.main;
  const bool fed = main.source.exists() && main.source.index < exercise.problem->parts.size();
  if (solved.contradiction || main.stop != Stop::reduced || !fed || main.choice.made ||
      main.start.kind(main.source) != ElementKind::battery ||
      has_symbolic_values(*exercise.problem)) {
    return std::nullopt;
  }
  Notebook book;
  const Network network = test::cleaned(main);
  std::vector<std::string> names;
  std::string only;
  for (std::uint32_t i = 0; i < exercise.problem->parts.size(); ++i) {
    const PartId part{i};
    names.push_back(exercise.problem->parts[i].name);
    if (!network.is_alive(part) || network.kind(part) != ElementKind::resistor) continue;
    book.given["R " + names.back()] = network.resistance(part).lowest_terms();
    only = names.back();
  }
  const std::vector<support::Made> made = support::Walk(random, network, names).run();
  add_reduction(made, random, 5, book);
  Part battery = exercise.problem->part(main.source);
  battery.value = network.battery(main.source).emf.number;
  battery.internal = network.battery(main.source).internal.number;
  support::WayBack(exercise, case_index, random, book)
      .add(made, made.empty() ? only : made.back().name, battery);
  return book;
}

TEST(RoundedWorks, OnEveryProblemAreRightAndRemarkedUponWhereAFigureChanges) {
  RandomCircuits random(407);
  std::size_t works = 0;
  for (const test::ProblemFile& file : test::problem_files()) {
    for (std::size_t i = 0; i < file.exercise.trace.cases.size(); ++i) {
      const auto book = work_on(file.exercise, i, random);
      if (!book) continue;
      const std::string& label = file.exercise.trace.cases[i].name;
      const std::string before = label.empty() ? "" : "case \"" + label + "\"\n";
      for (const int figures : {2, 3, 4}) {
        EXPECT_EQ(fault_in_rounding(file.exercise, *book, figures, before), "") << file.name;
        ++works;
      }
    }
  }
  EXPECT_GT(works, 90U);
}

}  // namespace
}  // namespace ohmfold
