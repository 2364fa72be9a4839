// Stands in until the pieces are there.
#include "drawing/box_text.h"
#include "drawing/figures.h"
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
Placement lay_out(const Network&, const LayoutOptions&) {
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
