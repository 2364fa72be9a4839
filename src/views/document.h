// What a worked solution consists of before any writer gives it a form: headings, paragraphs,
// lines of working, tables and figures, without escapes or line ends.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "drawing/schematic.h"
#include "ohmfold/value.h"
#include "views/formula.h"
#include "views/words.h"

namespace ohmfold::views {

/// Level 1: the title; 2: a chapter ("Given", a case); 3: a section within one.
struct Heading {
  int level = 1;
  Words words;
};

struct Paragraph {
  Words words;
  int indent = 0;  ///< 0, or 1 below a numbered entry
};

/// An entry of a list, with its number or, where that is empty, a bullet.
struct Entry {
  std::string number;
  Words words;
};

/// Lines of working that belong together: their notes stand below one another.
struct Working {
  std::vector<Equation> lines;
};

enum class Align { left, right };

struct Column {
  Words heading;
  Align align = Align::left;
};

/// Each row has as many cells as there are columns.
struct Table {
  std::vector<Column> columns;
  std::vector<std::vector<Words>> rows;
};

/// A drawing, and what is said of it to those who do not see it.
struct Figure {
  Words caption;
  std::string title;        ///< one line
  std::string description;  ///< each part and its points, in sentences
  drawing::Schematic schematic;
};

/// What a step of a workbook asks for before it is shown.
struct Asked {
  Words question;  ///< "What is R12?"
  Quantity value;
};

/// Begins a step: a few blocks that belong together, up to the next StepEnd. Steps do not contain
/// steps. Pages break between them; a workbook covers them.
struct StepBegin {
  Words title;               ///< what it is about, without telling its result
  std::vector<Asked> asked;  ///< empty: there is nothing to type
};
struct StepEnd {};

using Block = std::variant<Heading, Paragraph, Entry, Working, Table, Figure, StepBegin, StepEnd>;

struct Document {
  std::vector<Block> blocks;

  void heading(int level, Words words) { blocks.emplace_back(Heading{level, std::move(words)}); }
  void paragraph(Words words, int indent = 0) {
    blocks.emplace_back(Paragraph{std::move(words), indent});
  }
  void entry(std::string number, Words words) {
    blocks.emplace_back(Entry{std::move(number), std::move(words)});
  }
  void working(std::vector<Equation> lines) {
    if (!lines.empty()) blocks.emplace_back(Working{std::move(lines)});
  }
  void table(Table table) { blocks.emplace_back(std::move(table)); }
  void figure(Figure figure) { blocks.emplace_back(std::move(figure)); }
  void begin_step(Words title, std::vector<Asked> asked = {}) {
    blocks.emplace_back(StepBegin{std::move(title), std::move(asked)});
  }
  void end_step() { blocks.emplace_back(StepEnd{}); }
  /// Puts all blocks from the index `from` on into steps: those below a heading into one that is
  /// called like it, those before any heading into one with this title. Headings stay outside, and
  /// what is in a step already stays as it is. `asked` belongs to the first new step.
  void cover(std::size_t from, const Words& title, std::vector<Asked> asked = {});
};

}  // namespace ohmfold::views
