// Worked solutions as one page.
#include "handout/booklet.h"
#include "handout/html_page.h"
#include "handout/outlines.h"
#include "ohmfold/handout.h"

namespace ohmfold {

std::string render_html(std::span<const Trace> traces, const HandoutOptions& options) {
  handout::PageOptions page;
  page.title = handout::booklet_title(traces, options.content);
  page.symbols = options.symbols;
  page.workbook = options.workbook;
  for (const Trace& trace : traces) {
    page.figures.push_back(options.figures > 0 ? options.figures : trace.problem->figures);
  }
  return handout::html_page(handout::outline_of(traces, options), page);
}

}  // namespace ohmfold
