// What a worked solution consists of before any writer gives it a form: headings, paragraphs,
// lines of working and tables, without escapes or line ends.
#pragma once

#include <string>
#include <variant>
#include <vector>

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

using Block = std::variant<Heading, Paragraph, Entry, Working, Table>;

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
};

}  // namespace ohmfold::views
