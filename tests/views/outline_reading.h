// Reads a document back: its words, its amounts, and what stands inside and outside of steps.
#pragma once

#include <string>
#include <variant>
#include <vector>

#include "views/document.h"

namespace ohmfold::test {

/// All words of a block but those of a step's title and questions.
inline std::vector<views::Words> words_of(const views::Block& block) {
  std::vector<views::Words> all;
  if (const auto* heading = std::get_if<views::Heading>(&block)) all = {heading->words};
  if (const auto* paragraph = std::get_if<views::Paragraph>(&block)) all = {paragraph->words};
  if (const auto* entry = std::get_if<views::Entry>(&block)) all = {entry->words};
  if (const auto* figure = std::get_if<views::Figure>(&block)) {
    all = {figure->caption, views::say(figure->title), views::say(figure->description)};
  }
  if (const auto* table = std::get_if<views::Table>(&block)) {
    for (const auto& row : table->rows) all.insert(all.end(), row.begin(), row.end());
  }
  return all;
}

inline std::vector<Quantity> amounts_of(const views::Words& words) {
  std::vector<Quantity> found;
  for (const views::Run& run : words.runs()) {
    if (const auto* amount = std::get_if<views::Amount>(&run)) found.push_back(amount->quantity);
  }
  return found;
}

inline std::string text_of(const std::vector<views::Block>& blocks) {
  std::string text;
  for (const views::Block& block : blocks) {
    for (const views::Words& words : words_of(block)) {
      text += views::plain_text(words, Letters::unicode) + '\n';
    }
  }
  return text;
}

template <class Kind>
std::vector<Kind> all_of(const views::Document& document) {
  std::vector<Kind> found;
  for (const views::Block& block : document.blocks) {
    if (const auto* one = std::get_if<Kind>(&block)) found.push_back(*one);
  }
  return found;
}

/// The blocks that stand outside of steps.
inline std::vector<views::Block> outside(const views::Document& document) {
  std::vector<views::Block> blocks;
  bool inside = false;
  for (const views::Block& block : document.blocks) {
    const bool begins = std::holds_alternative<views::StepBegin>(block);
    const bool ends = std::holds_alternative<views::StepEnd>(block);
    if (!inside && !begins) blocks.push_back(block);
    inside = begins || (inside && !ends);
  }
  return blocks;
}

}  // namespace ohmfold::test
