// Stands in until the pieces are there.
#include "drawing/core.h"
#include "drawing/figures.h"
#include "drawing/hints.h"
#include "drawing/layout.h"

namespace ohmfold::drawing {
Placement lay_out(const Network&, const LayoutOptions&) {
  return {};
}
std::optional<CorePlan> place_cube(const Core&) {
  return {};
}
std::optional<CorePlan> place_planar(const Core&) {
  return {};
}
CorePlan place_crossing(const Core&) {
  return {};
}
std::optional<Placement> lay_out_by_hints(const Network&, const LayoutOptions&, const Placement&) {
  return {};
}
const Sizes& paper_sizes() {
  static const Sizes sizes;
  return sizes;
}
const Sizes& terminal_sizes() {
  static const Sizes sizes;
  return sizes;
}
struct Figures::State {};
Figures::Figures(const Problem&, const Reduction&, Captions, const Sizes&, FigureOptions) {}
Figures::~Figures() = default;
Schematic Figures::after(std::size_t) const {
  return {};
}
Stability Figures::stability() const {
  return {};
}
}  // namespace ohmfold::drawing
