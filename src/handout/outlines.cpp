// Solved problems as one document.
#include "handout/outlines.h"

#include <iterator>
#include <utility>

#include "views/outline.h"

namespace ohmfold::handout {

views::Document outline_of(std::span<const Trace> traces, const HandoutOptions& options) {
  views::OutlineOptions one;
  one.figures = options.figures;
  one.content = options.content;
  one.redraws = options.redraws;
  one.notation = options.notation;
  one.sizes = &drawing::paper_sizes();
  views::Document document;
  for (const Trace& trace : traces) {
    views::Document problem = views::outline(trace, one);
    document.blocks.insert(document.blocks.end(), std::make_move_iterator(problem.blocks.begin()),
                           std::make_move_iterator(problem.blocks.end()));
  }
  return document;
}

}  // namespace ohmfold::handout
