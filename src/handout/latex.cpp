// Solved problems as LaTeX: outlines one after another.
#include "handout/booklet.h"
#include "handout/latex_document.h"
#include "handout/outlines.h"
#include "ohmfold/handout.h"

namespace ohmfold {

std::string render_latex(std::span<const Trace> traces, const HandoutOptions& options) {
  return handout::latex_document(
      handout::outline_of(traces, options),
      {options.symbols, options.fragment, handout::booklet_title(traces, options.content)});
}

std::string latex_preamble() {
  return handout::latex_commands();
}

}  // namespace ohmfold
