// Stands in until the pieces are there.
#include "drawing/box_text.h"
#include "drawing/core.h"
#include "drawing/hints.h"
#include "drawing/layout.h"
#include "drawing/svg.h"
#include "drawing/tikz.h"

namespace ohmfold::drawing {
std::string box_text(const Schematic&, SymbolSet, Letters, bool) {
  return {};
}
std::string svg(const Schematic&, const SvgText&, SymbolSet, bool) {
  return {};
}
std::string svg_style() {
  return {};
}
std::string tikz(const Schematic&, SymbolSet, bool) {
  return {};
}
std::string tikz_preamble() {
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
}  // namespace ohmfold::drawing
