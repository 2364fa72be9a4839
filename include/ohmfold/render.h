// Views: functions from a trace to text. None of them knows how an answer was found.
#pragma once

#include <string>

#include "ohmfold/decimal.h"
#include "ohmfold/trace.h"

namespace ohmfold {

struct TextOptions {
  Letters letters = Letters::unicode;
  bool colour = false;
  int width = 80;   ///< columns; lines longer than that occur only where a name is
  int figures = 0;  ///< significant figures; 0: as the problem says
};

/// The worked solution as a person would write it on paper.
[[nodiscard]] std::string render_text(const Trace& trace, const TextOptions& options = {});

/// The trace as JSON, version 1 of "ohmfold-trace" (docs/trace.md). `figures` as in TextOptions.
[[nodiscard]] std::string render_json(const Trace& trace, int figures = 0);

/// Which case contradicts itself and where, or is beyond the budget for symbols, as one line each,
/// for standard error.
[[nodiscard]] std::string render_contradictions(const Trace& trace);

}  // namespace ohmfold
