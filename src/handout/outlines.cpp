// Solved problems as one document.
#include "handout/outlines.h"

#include "handout/booklet.h"

namespace ohmfold::handout {

views::Document outline_of(std::span<const Trace> traces, const HandoutOptions& options) {
  views::OutlineOptions one;
  one.figures = options.figures;
  one.content = options.content;
  one.redraws = options.redraws;
  one.notation = options.notation;
  one.sizes = &drawing::paper_sizes();
  return booklet(traces, one, options.answer_key);
}

}  // namespace ohmfold::handout
