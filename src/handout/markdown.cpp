// Solved problems as CommonMark.
#include "handout/markdown_document.h"
#include "handout/outlines.h"
#include "ohmfold/handout.h"

namespace ohmfold {

Markdown render_markdown(std::span<const Trace> traces, const std::string& stem,
                         const HandoutOptions& options) {
  return handout::markdown_document(handout::outline_of(traces, options), stem, options.symbols);
}

}  // namespace ohmfold
