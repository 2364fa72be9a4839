// Several problems as one document.
#include "handout/booklet.h"

#include <iterator>
#include <utility>

#include "views/answer_key.h"

namespace ohmfold::handout {

std::string booklet_title(std::span<const Trace> traces, Content content) {
  return views::line_text(views::collection_title(traces, content), Letters::unicode);
}

views::Document booklet(std::span<const Trace> traces, const views::OutlineOptions& options,
                        bool answer_key) {
  views::Document all;
  for (std::size_t i = 0; i < traces.size(); ++i) {
    views::OutlineOptions numbered = options;
    numbered.number = traces.size() < 2 ? 0 : i + 1;
    views::Document one = views::outline(traces[i], numbered);
    all.blocks.insert(all.blocks.end(), std::make_move_iterator(one.blocks.begin()),
                      std::make_move_iterator(one.blocks.end()));
  }
  if (answer_key) views::add_answer_key(traces, options.figures, all);
  return all;
}

}  // namespace ohmfold::handout
