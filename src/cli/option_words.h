// The words that options take for their values.
#pragma once

#include <map>
#include <string>

#include "cli/command.h"

namespace ohmfold {

template <class Value>
using WordsFor = std::map<std::string, Value>;

[[nodiscard]] const WordsFor<Method>& method_words();
[[nodiscard]] const WordsFor<HintLevel>& level_words();
[[nodiscard]] const WordsFor<Format>& format_words();
[[nodiscard]] const WordsFor<DrawingFormat>& drawing_format_words();
[[nodiscard]] const WordsFor<Content>& content_words();
[[nodiscard]] const WordsFor<Redraws>& redraw_words();
[[nodiscard]] const WordsFor<SymbolSet>& symbol_words();
[[nodiscard]] const WordsFor<Notation>& notation_words();

/// The format of a drawing by the ending of its file: .svg, .tex, .txt; any other means SVG.
[[nodiscard]] DrawingFormat drawing_format_of(const std::string& file);

}  // namespace ohmfold
