// The drawings of a reduction, one from another.
#include "drawing/figures.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>
#include <utility>

#include "drawing/measures.h"
#include "drawing/stages.h"
#include "drawing/stretches.h"
#include "ohmfold/error.h"

namespace ohmfold::drawing {

struct Figures::State {
  State(const Problem& problem, const Reduction& reduction, Captions the_captions,
        const Sizes& sizes, FigureOptions the_options)
      : captions(std::move(the_captions)),
        options(std::move(the_options)),
        look{problem, reduction, captions, sizes, options.marks} {}

  /// Found only as far as asked for, since each costs a layout.
  const StretchOfRedraws& stretch_at(std::size_t steps) {
    while (stretches.empty() || stretches.back().end <= steps) {
      const std::size_t begin = stretches.empty() ? 0 : stretches.back().end;
      stretches.push_back(stretch_from(look, options.heights, begin));
    }
    const auto after =
        std::upper_bound(stretches.begin(), stretches.end(), steps,
                         [](std::size_t s, const StretchOfRedraws& one) { return s < one.begin; });
    return *(after - 1);
  }

  /// The lines after so many steps: from those of the last time it was asked, where that was before
  /// in the same stretch.
  Redrawing lines_at(std::size_t steps) {
    const StretchOfRedraws& stretch = stretch_at(steps);
    if (reached < stretch.begin || reached > steps || !has_reached) {
      latest = stretch.start;
      reached = stretch.begin;
      has_reached = true;
    }
    for (; reached < steps; ++reached) {
      if (is_between_stages(look.reduction.steps, reached)) latest.tidy();
      ensure(latest.apply(look.reduction.steps[reached]), "a step rewrites the lines only once");
    }
    Redrawing lines = latest;
    lines.tidy();
    return lines;
  }

  Captions captions;
  FigureOptions options;
  Look look;
  std::vector<StretchOfRedraws> stretches;
  Redrawing latest;
  std::size_t reached = 0;
  bool has_reached = false;
};

namespace {

void mark(Schematic& schematic, const StepLog& steps, std::size_t now) {
  const Neighbours near = neighbours_of(steps, now);
  std::unordered_map<std::uint32_t, std::uint32_t> takes;  // part to the number of its step
  std::unordered_set<std::uint32_t> came;
  for (std::size_t i = now; i < near.next_end; ++i) {
    const Step step = steps[i];
    for (const PartId part : step.takes) {
      takes.emplace(part.index, static_cast<std::uint32_t>(step.number));
    }
  }
  for (std::size_t i = near.came_begin; i < now; ++i) {
    const Step step = steps[i];
    for (std::uint32_t n = 0; n < parts_made(step); ++n) came.insert(step.makes.index + n);
  }
  for (DrawnPart& part : schematic.parts) {
    const auto next = takes.find(part.part.index);
    if (next != takes.end()) {
      part.mark = Mark::next;
      part.step = next->second;
    } else if (came.contains(part.part.index)) {
      part.mark = Mark::came;
    }
  }
}

/// Where each point of a drawing lies.
std::unordered_map<std::uint32_t, Spot> spots_of(const Redrawing& lines, const Scale& scale) {
  std::unordered_map<std::uint32_t, Spot> spots;
  for (const PlacedPoint& placed : lines.placement().points) {
    spots.emplace(placed.point.index, scale(placed.at));
  }
  return spots;
}

}  // namespace

Figures::Figures(const Problem& problem, const Reduction& reduction, Captions captions,
                 const Sizes& sizes, FigureOptions options)
    : state_(std::make_unique<State>(problem, reduction, std::move(captions), sizes,
                                     std::move(options))) {}

Figures::~Figures() = default;

Schematic Figures::after(std::size_t steps) const {
  const StepLog& log = state_->look.reduction.steps;
  ensure(steps <= log.size(), "a figure after more steps than there are");
  const Sizes& sizes = state_->look.sizes;
  const Scale scale = state_->stretch_at(steps).scale;
  Schematic schematic;
  labelled(state_->look, state_->lines_at(steps), scale, true, schematic);
  if (state_->options.marks) mark(schematic, log, steps);
  const Box extent = extent_of(schematic, sizes, state_->options.marks);
  schematic.width = extent.max.x + sizes.margin;
  schematic.height = extent.max.y + sizes.margin;
  return schematic;
}

Stability Figures::stability() const {
  const StepLog& log = state_->look.reduction.steps;
  Stability found;
  std::unordered_map<std::uint32_t, Spot> before;
  std::size_t layout = 0;
  for (std::size_t steps = 0; steps <= log.size(); ++steps) {
    if (!is_between_stages(log, steps)) continue;
    const StretchOfRedraws& stretch = state_->stretch_at(steps);
    std::unordered_map<std::uint32_t, Spot> now = spots_of(state_->lines_at(steps), stretch.scale);
    if (stretch.begin != layout) ++found.redrawn;
    layout = stretch.begin;
    for (const auto& [point, spot] : now) {
      const auto last = before.find(point);
      if (last != before.end()) ++(last->second == spot ? found.kept : found.moved);
    }
    before = std::move(now);
  }
  return found;
}

}  // namespace ohmfold::drawing
