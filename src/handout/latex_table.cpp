// Tables for LaTeX: finding the widths of columns, then writing the rows.
#include "handout/latex_table.h"

#include <algorithm>
#include <numeric>
#include <vector>

#include "handout/latex_width.h"
#include "handout/latex_working.h"

namespace ohmfold::handout {

namespace {

constexpr int kColumnGap = 110;   // between two columns: 2 \tabcolsep
constexpr int kBesideWord = 100;  // what may stand beside a word without a space
constexpr int kMostLines = 30;    // of one tabular, so that it fits on a page

using Cells = std::vector<TextOfWords>;

class Setter {
 public:
  Setter(const views::Table& table, int line_width) : table_(table), line_width_(line_width) {
    for (const views::Column& column : table.columns)
      headings_.push_back(latex_words(column.heading, kLongWordInCell));
    for (const auto& row : table.rows) {
      Cells cells;
      for (const views::Words& words : row) cells.push_back(latex_words(words, kLongWordInCell));
      rows_.push_back(std::move(cells));
    }
    measure();
  }

  [[nodiscard]] std::string tabulars() const {
    std::string code;
    int lines = 0;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      const int needed = lines_of(rows_[i]);
      if (i > 0 && lines + needed > kMostLines) {
        code += end();
        lines = 0;
      }
      if (lines == 0) code += begin();
      lines += needed;
      code += row(rows_[i], false);
    }
    return rows_.empty() ? begin() + end() : code + end();
  }

 private:
  void measure() {
    widths_.assign(table_.columns.size(), 0);
    std::vector<int> least(widths_.size(), 0);
    for (std::size_t i = 0; i < widths_.size(); ++i) {
      widths_[i] = headings_[i].width;
      least[i] = headings_[i].least;
      for (const Cells& cells : rows_) {
        widths_[i] = std::max(widths_[i], cells[i].width);
        least[i] = std::max(least[i], cells[i].least + kBesideWord);
      }
    }
    narrow(least);
  }

  /// The column that can lose most loses some, until all fit or none can.
  void narrow(const std::vector<int>& least) {
    const int room = line_width_ - kColumnGap * static_cast<int>(widths_.size());
    int total = std::accumulate(widths_.begin(), widths_.end(), 0);
    is_fixed_ = total > room || static_cast<int>(rows_.size()) > kMostLines;
    while (total > room) {
      std::size_t widest = 0;
      for (std::size_t i = 0; i < widths_.size(); ++i) {
        if (widths_[i] - least[i] > widths_[widest] - least[widest]) widest = i;
      }
      const int spare = widths_[widest] - least[widest];
      if (spare <= 0) return;
      const int less = std::min({total - room, spare, spare / 10 + 1});
      widths_[widest] -= less;
      total -= less;
    }
  }

  /// About how many lines the row takes.
  [[nodiscard]] int lines_of(const Cells& cells) const {
    int most = 1;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      most = std::max(most, 1 + cells[i].width / std::max(widths_[i], 1) -
                                (cells[i].width % std::max(widths_[i], 1) == 0 ? 1 : 0));
    }
    return most;
  }

  [[nodiscard]] std::string columns() const {
    std::string code = "@{}";
    for (std::size_t i = 0; i < widths_.size(); ++i) {
      const bool right = table_.columns[i].align == views::Align::right;
      if (!is_fixed_) {
        code += right ? "r" : "l";
        continue;
      }
      code += std::string(">{") + (right ? "\\raggedleft" : "\\raggedright") +
              "\\arraybackslash}p{" + std::to_string(widths_[i] / 100) + "." +
              std::to_string(widths_[i] / 10 % 10) + "em}";
    }
    return code + "@{}";
  }

  [[nodiscard]] std::string begin() const {
    return "\\ohmfoldtable{\\begin{tabular}{" + columns() + "}\n" + row(headings_, true) +
           "\\hline\n";
  }
  static std::string end() { return "\\end{tabular}}\n"; }

  static std::string row(const Cells& cells, bool heading) {
    std::string code;
    for (std::size_t i = 0; i < cells.size(); ++i) {
      if (i > 0) code += " & ";
      code += heading ? "\\textbf{" + cells[i].code + "}" : cells[i].code;
    }
    return code + " \\\\\n";
  }

  const views::Table& table_;
  int line_width_;
  Cells headings_;
  std::vector<Cells> rows_;
  std::vector<int> widths_;
  bool is_fixed_ = false;
};

}  // namespace

std::string latex_table(const views::Table& table, int line_width) {
  return table.columns.empty() ? std::string() : Setter(table, line_width).tabulars();
}

}  // namespace ohmfold::handout
