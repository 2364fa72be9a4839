// The words that options take for their values.
#include "cli/option_words.h"

namespace ohmfold {

const WordsFor<Method>& method_words() {
  static const WordsFor<Method> words = {{"series-parallel", Method::series_parallel},
                                         {"equal-potentials", Method::equal_potentials},
                                         {"delta-star", Method::delta_star},
                                         {"node-voltage", Method::node_voltage},
                                         {"superposition", Method::superposition}};
  return words;
}

const WordsFor<HintLevel>& level_words() {
  static const WordsFor<HintLevel> words = {
      {"nudge", HintLevel::nudge}, {"point", HintLevel::point}, {"tell", HintLevel::tell}};
  return words;
}

const WordsFor<Format>& format_words() {
  static const WordsFor<Format> words = {{"text", Format::text},   {"json", Format::json},
                                         {"csv", Format::csv},     {"html", Format::html},
                                         {"latex", Format::latex}, {"markdown", Format::markdown}};
  return words;
}

const WordsFor<DrawingFormat>& drawing_format_words() {
  static const WordsFor<DrawingFormat> words = {
      {"svg", DrawingFormat::svg}, {"tikz", DrawingFormat::tikz}, {"text", DrawingFormat::text}};
  return words;
}

const WordsFor<Content>& content_words() {
  static const WordsFor<Content> words = {{"solution", Content::solution},
                                          {"problem", Content::problem},
                                          {"answers", Content::answers}};
  return words;
}

const WordsFor<Redraws>& redraw_words() {
  static const WordsFor<Redraws> words = {
      {"none", Redraws::none}, {"stages", Redraws::stages}, {"steps", Redraws::steps}};
  return words;
}

const WordsFor<SymbolSet>& symbol_words() {
  static const WordsFor<SymbolSet> words = {{"rectangle", SymbolSet::rectangle},
                                            {"zigzag", SymbolSet::zigzag}};
  return words;
}

const WordsFor<Notation>& notation_words() {
  static const WordsFor<Notation> words = {{"units", Notation::units},
                                           {"letters", Notation::letters}};
  return words;
}

DrawingFormat drawing_format_of(const std::string& file) {
  if (file.ends_with(".tex")) return DrawingFormat::tikz;
  if (file.ends_with(".txt")) return DrawingFormat::text;
  return DrawingFormat::svg;
}

}  // namespace ohmfold
