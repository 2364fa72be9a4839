// Puts blocks that are there already into steps.
#include "views/document.h"

#include <iterator>
#include <utility>

namespace ohmfold::views {

void Document::cover(std::size_t from, const Words& title, std::vector<Asked> asked) {
  const auto first = std::next(blocks.begin(), static_cast<std::ptrdiff_t>(from));
  std::vector<Block> added(std::make_move_iterator(first), std::make_move_iterator(blocks.end()));
  blocks.erase(first, blocks.end());
  Words name = title;
  bool ours = false;    // a step of this function is open
  bool theirs = false;  // a step that was there already is open
  const auto close = [&] {
    if (std::exchange(ours, false)) end_step();
  };
  for (Block& block : added) {
    const auto* heading = std::get_if<Heading>(&block);
    const bool begins = std::holds_alternative<StepBegin>(block);
    if (begins || (heading != nullptr && !theirs)) {
      close();
      if (heading != nullptr) name = heading->words;
      theirs = begins;
    } else if (std::holds_alternative<StepEnd>(block)) {
      theirs = false;
    } else if (!ours && !theirs) {
      begin_step(name, std::exchange(asked, {}));
      ours = true;
    }
    blocks.push_back(std::move(block));
  }
  close();
}

}  // namespace ohmfold::views
