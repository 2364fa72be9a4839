// A schematic as SVG 1.1: one element, valid XML, text as text.
#pragma once

#include <string>
#include <string_view>

#include "drawing/schematic.h"
#include "ohmfold/draw.h"

namespace ohmfold::drawing {

struct SvgText {
  std::string title;        ///< one line
  std::string description;  ///< sentences; may be empty
  std::string id;  ///< prefix of ids, unique in the page: a letter, then letters and digits
};

/// `alone`: a file of its own, with an XML declaration and its own style; otherwise for the inside
/// of an HTML page, which holds svg_style() once.
[[nodiscard]] std::string svg(const Schematic& schematic, const SvgText& text, SymbolSet symbols,
                              bool alone);

/// The rules of style for all drawings of a page; light and dark, print and grey. Lines and letters
/// take the page's colour; a page whose ground is neither white nor #12181f in the dark says so in
/// the variable --circuit-paper. All classes stand below "circuit".
[[nodiscard]] std::string svg_style();

}  // namespace ohmfold::drawing
