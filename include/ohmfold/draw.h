// Figures of a solved problem: the circuit of a case, after any number of steps.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>

#include "ohmfold/decimal.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// How a resistor is drawn.
enum class SymbolSet : std::uint8_t {
  rectangle,  ///< IEC 60617
  zigzag      ///< IEEE 315
};

struct DrawOptions {
  SymbolSet symbols = SymbolSet::rectangle;
  bool values = true;       ///< beside each part, its value
  bool currents = false;    ///< arrows the way the currents flow, with their sizes
  bool potentials = false;  ///< at each point, its potential
  bool marks = true;        ///< what is combined next, and what has just come
  int figures = 0;          ///< significant figures; 0: as the problem says
};

/// The circuit of trace.cases[index] after so many steps of its main reduction, as an SVG file.
/// Requires an existing case and at most as many steps as it has.
[[nodiscard]] std::string draw_svg(const Trace& trace, std::size_t index, std::size_t steps,
                                   const DrawOptions& options = {});

/// The same as a LaTeX document of one page that needs nothing but TikZ.
[[nodiscard]] std::string draw_tikz(const Trace& trace, std::size_t index, std::size_t steps,
                                    const DrawOptions& options = {});

/// The same for a terminal.
[[nodiscard]] std::string draw_text(const Trace& trace, std::size_t index, std::size_t steps,
                                    const DrawOptions& options = {},
                                    Letters letters = Letters::unicode, bool colour = false);

}  // namespace ohmfold
