// A table in columns of plain text: finding the widths, then laying out the rows.
#include "views/table_text.h"

#include <algorithm>
#include <numeric>

#include "views/lettering.h"

namespace ohmfold::views {

namespace {

constexpr std::size_t kGap = 2;

using Cells = std::vector<std::string>;

std::size_t longest_word(std::string_view text) {
  std::size_t longest = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find(' ', at), text.size());
    longest = std::max(longest, display_width(text.substr(at, end - at)));
    at = end + 1;
  }
  return longest;
}

class Layout {
 public:
  Layout(const Table& table, Letters letters) : table_(table), letters_(letters) {
    Cells headings;
    for (const Column& column : table.columns) headings.push_back(cell(column.heading));
    rows_.push_back(std::move(headings));
    for (const auto& row : table.rows) {
      Cells cells;
      for (const Words& words : row) cells.push_back(cell(words));
      rows_.push_back(std::move(cells));
    }
    measure();
  }

  void narrow(std::size_t width) {
    while (total() > width) {
      std::size_t widest = widths_.size();
      for (std::size_t i = 0; i < widths_.size(); ++i) {
        const bool can = widths_[i] > least_[i];
        if (can && (widest == widths_.size() || widths_[i] > widths_[widest])) widest = i;
      }
      if (widest == widths_.size()) break;
      --widths_[widest];
    }
    tighten();
  }

  [[nodiscard]] std::vector<std::string> lines() const {
    std::vector<std::string> lines;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
      append_row(rows_[i], lines);
      if (i == 0) lines.push_back(rule());
    }
    return lines;
  }

 private:
  std::string cell(const Words& words) const {
    return lettered(line_text(words, letters_), letters_);
  }

  void measure() {
    widths_.assign(table_.columns.size(), 0);
    least_.assign(table_.columns.size(), 0);
    for (const Cells& row : rows_) {
      for (std::size_t i = 0; i < widths_.size(); ++i) {
        widths_[i] = std::max(widths_[i], display_width(row[i]));
        least_[i] = std::max(least_[i], longest_word(row[i]));
      }
    }
  }

  /// No column is wider than what its cells fill once they are wrapped.
  void tighten() {
    for (std::size_t i = 0; i < widths_.size(); ++i) {
      std::size_t filled = 0;
      for (const Cells& row : rows_) {
        for (const std::string& line : wrapped(row[i], widths_[i])) {
          filled = std::max(filled, display_width(line));
        }
      }
      widths_[i] = filled;
    }
  }

  [[nodiscard]] std::size_t total() const {
    const std::size_t gaps = widths_.empty() ? 0 : kGap * (widths_.size() - 1);
    return std::accumulate(widths_.begin(), widths_.end(), gaps);
  }

  [[nodiscard]] std::string rule() const {
    std::string line;
    for (std::size_t i = 0; i < widths_.size(); ++i) {
      if (i > 0) line.append(kGap, ' ');
      for (std::size_t n = 0; n < widths_[i]; ++n) {
        line += letters_ == Letters::unicode ? "─" : "-";
      }
    }
    return line;
  }

  void append_row(const Cells& row, std::vector<std::string>& lines) const {
    std::vector<Cells> columns;
    std::size_t height = 1;
    for (std::size_t i = 0; i < row.size(); ++i) {
      columns.push_back(wrapped(row[i], widths_[i]));
      height = std::max(height, columns.back().size());
    }
    for (std::size_t n = 0; n < height; ++n) {
      std::string line;
      for (std::size_t i = 0; i < columns.size(); ++i) {
        const std::string text = n < columns[i].size() ? columns[i][n] : std::string();
        const std::size_t used = display_width(text);
        const std::string padding(widths_[i] > used ? widths_[i] - used : 0, ' ');
        if (i > 0) line.append(kGap, ' ');
        line += table_.columns[i].align == Align::right ? padding + text : text + padding;
      }
      line.erase(line.find_last_not_of(' ') + 1);
      lines.push_back(std::move(line));
    }
  }

  const Table& table_;
  Letters letters_;
  std::vector<Cells> rows_;
  std::vector<std::size_t> widths_, least_;
};

}  // namespace

std::vector<std::string> table_lines(const Table& table, std::size_t width, Letters letters) {
  Layout layout(table, letters);
  layout.narrow(width);
  return layout.lines();
}

}  // namespace ohmfold::views
