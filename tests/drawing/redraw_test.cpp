// Lines of a redraw that come from those of the redraw before.
#include "drawing/redraw.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "drawing/layout.h"
#include "drawing/reductions.h"
#include "drawing/sound.h"
#include "drawing/stretches.h"

namespace ohmfold::drawing {
namespace {

using ::testing::IsEmpty;

/// Draws every redraw of a reduction and looks whether it is a sound placement of what is left.
/// Whether layouts are sound is tested beside the layout: what comes from one that is not is left
/// out. Gives how many redraws were looked at.
std::size_t expect_sound_redraws(const Problem& problem, const Reduction& reduction) {
  const Captions captions = captions_of(problem, reduction);
  const Look look{problem, reduction, captions, paper_sizes(), true};
  std::size_t drawn = 0;
  for (std::size_t begin = 0; begin <= reduction.steps.size();) {
    const StretchOfRedraws stretch = stretch_from(look, {}, begin);
    Redrawing now = stretch.start;
    const bool sound = faults_of(replay(reduction, begin), now.placement()).empty();
    for (std::size_t steps = begin; steps < stretch.end; ++steps) {
      if (!sound) break;
      EXPECT_TRUE(steps == begin || now.apply(reduction.steps[steps - 1]));
      Redrawing tidy = now;
      tidy.tidy();
      const Network network = replay(reduction, steps);
      EXPECT_THAT(faults_of(network, tidy.placement()), IsEmpty())
          << "after " << steps << " steps\n"
          << network.dump();
      ++drawn;
    }
    begin = stretch.end;
  }
  return drawn;
}

TEST(Redraw, KeepsWhatHoldsOfAPlacementThroughAllProblems) {
  std::size_t drawn = 0;
  for (const NamedTrace& one : solved_problems()) {
    SCOPED_TRACE(one.name);
    for (const Reduction* reduction : reductions_of(one.trace)) {
      drawn += expect_sound_redraws(*one.trace.problem, *reduction);
    }
  }
  EXPECT_GT(drawn, 200U);
}

TEST(Redraw, KeepsWhatHoldsOfAPlacementThroughRandomNetworks) {
  std::size_t drawn = 0;
  for (const NamedTrace& one : random_traces(100)) {
    SCOPED_TRACE(one.name);
    for (const Reduction* reduction : reductions_of(one.trace)) {
      drawn += expect_sound_redraws(*one.trace.problem, *reduction);
    }
  }
  EXPECT_GT(drawn, 1000U);
}

}  // namespace
}  // namespace ohmfold::drawing
