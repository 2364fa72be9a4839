// Worked solutions as one page.
#include "drawing/schematic.h"
#include "handout/booklet.h"
#include "handout/html_page.h"
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
  views::OutlineOptions outline;
  outline.figures = options.figures;
  outline.content = options.content;
  outline.redraws = options.redraws;
  outline.notation = options.notation;
  outline.sizes = &drawing::paper_sizes();
  return handout::html_page(handout::booklet(traces, outline, options.answer_key), page);
}

}  // namespace ohmfold
