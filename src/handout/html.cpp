// Worked solutions as one page.
#include <iterator>
#include <utility>

#include "drawing/schematic.h"
#include "handout/html_page.h"
#include "ohmfold/handout.h"
#include "views/outline.h"
#include "views/page_words.h"

namespace ohmfold {

std::string render_html(std::span<const Trace> traces, const HandoutOptions& options) {
  handout::PageOptions page;
  page.title = views::page_title(options.content);
  page.symbols = options.symbols;
  page.workbook = options.workbook;
  if (traces.size() == 1) page.title = traces.front().problem->title;
  views::Document all;
  for (const Trace& trace : traces) {
    const int figures = options.figures > 0 ? options.figures : trace.problem->figures;
    views::Document one = views::outline(trace, {.figures = figures,
                                                 .content = options.content,
                                                 .redraws = options.redraws,
                                                 .notation = options.notation,
                                                 .sizes = &drawing::paper_sizes()});
    all.blocks.insert(all.blocks.end(), std::make_move_iterator(one.blocks.begin()),
                      std::make_move_iterator(one.blocks.end()));
    page.figures.push_back(figures);
  }
  return handout::html_page(all, page);
}

}  // namespace ohmfold
