// The style of drawings in SVG: everything takes the colour of its surroundings but what is marked.
#include "drawing/svg.h"

namespace ohmfold::drawing {

// Colours of marks: the palette of Okabe and Ito (Color Universal Design, 2008), which people with
// any kind of colour vision tell apart; the blue and vermilion have at least 3:1 against white, the
// sky blue and orange against the dark ground. Letters never wear them but in the tag, white on
// blue with 5.2:1 and black on sky blue with 9:1. Signs of form (frame, double line) do not need
// them, so print may drop them.
//
// The ground is stated twice: a page may set --circuit-paper, and readers of SVG that know no
// variables take the first.
std::string svg_style() {
  return R"(svg.circuit { fill: none; stroke-linecap: round; stroke-linejoin: round; }
svg.alone { color: #14181d; }
.circuit .paper { fill: #ffffff; }
.circuit .lead, .circuit .wire, .circuit .stroke, .circuit .ring, .circuit .frame {
  fill: none; stroke: currentColor; stroke-width: 1.6; }
.circuit .thick { stroke: currentColor; stroke-width: 4.4; stroke-linecap: butt; }
.circuit .doubled { stroke: currentColor; stroke-width: 4.6; stroke-linecap: butt; }
.circuit .inside { stroke: #ffffff; stroke: var(--circuit-paper, #ffffff); stroke-width: 1.6; }
.circuit .filled, .circuit .arrow, .circuit .dot { fill: currentColor; }
.circuit .ring { fill: #ffffff; fill: var(--circuit-paper, #ffffff); }
.circuit .frame { stroke-dasharray: 4 3; stroke-width: 1.4; }
.circuit .next .body, .circuit .next.plain .lead { color: #0072b2; }
.circuit .came .body, .circuit .came.plain .lead { color: #d55e00; }
.circuit .came.plain .lead { stroke-width: 4.6; }
.circuit .tag { fill: #0072b2; }
.circuit text { fill: currentColor; stroke: none; font-size: 13px;
  font-family: Helvetica, Arial, "Liberation Sans", sans-serif; }
.circuit .sub { font-size: 9.5px; }
.circuit .sign { font-size: 12px; }
.circuit .point-name { font-style: italic; }
.circuit text.step { fill: #ffffff; font-size: 10.5px; font-weight: bold; }
@media (prefers-color-scheme: dark) {
  svg.alone { color: #e8edf2; }
  .circuit .paper { fill: #12181f; }
  .circuit .ring { fill: #12181f; fill: var(--circuit-paper, #12181f); }
  .circuit .inside { stroke: #12181f; stroke: var(--circuit-paper, #12181f); }
  .circuit .next .body, .circuit .next.plain .lead { color: #56b4e9; }
  .circuit .came .body, .circuit .came.plain .lead { color: #e69f00; }
  .circuit .tag { fill: #56b4e9; }
  .circuit text.step { fill: #000000; }
}
@media print {
  svg.circuit { color: #000000; }
  .circuit .paper { fill: none; }
  .circuit .ring { fill: #ffffff; }
  .circuit .inside { stroke: #ffffff; }
  .circuit .next .body, .circuit .next.plain .lead,
  .circuit .came .body, .circuit .came.plain .lead { color: #000000; }
  .circuit .tag { fill: #000000; }
  .circuit text.step { fill: #ffffff; }
}
)";
}

}  // namespace ohmfold::drawing
