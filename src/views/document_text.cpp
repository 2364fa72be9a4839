// A document as plain text: headings, paragraphs, entries, lines of working, tables.
#include "views/document_text.h"

#include <algorithm>

#include "drawing/box_text.h"
#include "views/lettering.h"
#include "views/table_text.h"

namespace ohmfold::views {

namespace {

constexpr std::string_view kBold = "\033[1m";
constexpr std::string_view kPlain = "\033[0m";
constexpr std::size_t kStep = 4;        ///< columns that a numbered entry or a formula stands in
constexpr std::size_t kNarrowest = 20;  ///< no text is wrapped narrower than this

/// The sum with spaces that break only before its terms: "(V_A − V_P) / R1" stays together.
std::string terms_kept(std::string_view sum) {
  std::string text;
  int brackets = 0;
  for (std::size_t at = 0; at < sum.size(); ++at) {
    const char c = sum[at];
    if (c == '(') ++brackets;
    if (c == ')') --brackets;
    if (c != ' ') {
      text += c;
      continue;
    }
    const std::string_view rest = sum.substr(at + 1);
    const bool is_sign = rest.starts_with("+ ") || rest.starts_with("- ") || rest.starts_with("− ");
    text += is_sign && brackets == 0 ? " " : "\u00A0";
  }
  return text;
}

class TextWriter {
 public:
  TextWriter(const TextOptions& options, SymbolSet symbols)
      : options_(options),
        symbols_(symbols),
        width_(std::max(kNarrowest, static_cast<std::size_t>(std::max(options.width, 0)))) {}

  std::string write(const Document& document) {
    for (const Block& block : document.blocks) std::visit(*this, block);
    return std::move(text_);
  }

  void operator()(const Heading& heading) {
    const auto lines = wrapped(shown(heading.words), width_);
    if (!text_.empty()) text_ += heading.level == 2 ? "\n\n" : "\n";
    std::size_t longest = 0;
    for (const std::string& line : lines) longest = std::max(longest, display_width(line));
    if (heading.level == 1) put_line(rule(heading.level, longest), false);
    for (const std::string& line : lines) put_line(line, true);
    put_line(rule(heading.level, longest), false);
    after_ = After::heading;
  }

  void operator()(const Paragraph& paragraph) {
    const std::size_t indent = kStep * static_cast<std::size_t>(paragraph.indent);
    if (paragraph.indent == 0 && after_ != After::heading) text_ += '\n';
    for (const std::string& line : wrapped(shown(paragraph.words), width_, indent, indent)) {
      put_line(line, false);
    }
    after_ = After::paragraph;
  }

  void operator()(const Entry& entry) {
    if (!entry.number.empty() && after_ != After::heading && after_ != After::entry) text_ += '\n';
    if (entry.number.empty() && after_ == After::paragraph) text_ += '\n';
    const std::string bullet = options_.letters == Letters::unicode ? "•" : "*";
    const std::string mark = entry.number.empty() ? bullet : entry.number + ".";
    const std::size_t used = display_width(mark);
    const std::size_t column = std::max(kStep, used + 1);
    auto lines = wrapped(shown(entry.words), width_, column, column);
    lines.front().replace(0, used, styled(mark));
    for (const std::string& line : lines) put_line(line, false);
    after_ = After::entry;
  }

  void operator()(const Working& working) {
    std::vector<std::vector<std::string>> formulas;
    std::size_t widest = 0;
    std::size_t left = 0;
    for (const Equation& line : working.lines) {
      const std::size_t columns = display_width(shown(line.left));
      if (fits_beside(columns)) left = std::max(left, columns);
    }
    for (const Equation& line : working.lines) {
      formulas.push_back(formula_lines(line, left));
      const std::size_t used = display_width(formulas.back().back());
      const bool fits = !line.note.empty() && used + note_width(line.note) <= width_;
      if (fits) widest = std::max(widest, used);
    }
    for (std::size_t i = 0; i < formulas.size(); ++i) {
      append_note(working.lines[i].note, widest, formulas[i]);
      for (const std::string& line : formulas[i]) put_line(line, false);
    }
    after_ = After::working;
  }

  void operator()(const Table& table) {
    if (after_ != After::heading) text_ += '\n';
    std::size_t row = 0;
    for (const std::string& line : table_lines(table, width_, options_.letters)) {
      put_line(line, row++ == 0);
    }
    after_ = After::table;
  }

  void operator()(const Figure& figure) {
    if (figure.schematic.width > static_cast<int>(width_)) {
      (*this)(Paragraph{too_wide(figure)});
      return;
    }
    if (after_ != After::heading) text_ += '\n';
    text_ += drawing::box_text(figure.schematic, symbols_, options_.letters, options_.colour);
    after_ = After::table;
    (*this)(Paragraph{figure.caption, 0});
  }

  void operator()(const StepBegin& /*step*/) {}
  void operator()(const StepEnd& /*step*/) {}

 private:
  enum class After { heading, paragraph, entry, working, table };

  [[nodiscard]] std::string shown(const Words& words) const {
    return lettered(line_text(words, options_.letters), options_.letters);
  }
  [[nodiscard]] std::string shown(const Expression& expression) const {
    return lettered(formula_text(expression, options_.letters), options_.letters);
  }

  [[nodiscard]] std::string styled(std::string_view text) const {
    if (!options_.colour) return std::string(text);
    return std::string(kBold).append(text).append(kPlain);
  }

  void put_line(const std::string& line, bool bold) {
    text_ += bold ? styled(line) : line;
    text_ += '\n';
  }

  [[nodiscard]] std::string rule(int level, std::size_t length) const {
    const bool unicode = options_.letters == Letters::unicode;
    const std::string_view stroke = level < 3 ? (unicode ? "═" : "=") : (unicode ? "─" : "-");
    std::string line;
    for (std::size_t i = 0; i < length; ++i) line += stroke;
    return line;
  }

  /// Is there room for a short right side beside a left side of so many columns?
  [[nodiscard]] bool fits_beside(std::size_t columns) const {
    constexpr std::size_t kShort = 8;
    return kStep + columns + kShort <= width_;
  }

  /// A long left side is broken before its terms, so that each term stays on one line.
  [[nodiscard]] std::vector<std::string> left_lines(const Expression& expression,
                                                    std::size_t left) const {
    const std::string name = shown(expression);
    const std::size_t columns = display_width(name);
    if (!fits_beside(columns)) {
      constexpr std::size_t kRight = 4;  // " = 0"
      auto lines = wrapped(terms_kept(name), width_ - kRight, kStep, 2 * kStep);
      lines.back() += ' ';
      return lines;
    }
    const std::size_t room = std::max(left, columns) - columns + 1;
    return {std::string(kStep, ' ') + spaced(name) + std::string(room, ' ')};
  }

  /// Left sides end in one column; what does not fit goes on below the first relation.
  [[nodiscard]] std::vector<std::string> formula_lines(const Equation& line,
                                                       std::size_t left) const {
    std::vector<std::string> lines = left_lines(line.left, left);
    std::size_t used = display_width(lines.back());
    const std::size_t column = std::min(used, kStep + left + 1);
    for (std::size_t i = 0; i < line.links.size(); ++i) {
      const bool about = line.links[i].relation == Relation::about;
      const std::string text =
          lettered(about ? "≈ " : "= ", options_.letters) + shown(line.links[i].right);
      const std::size_t columns = display_width(text);
      if (i > 0 && used + 1 + columns > width_) {
        lines.emplace_back(column, ' ');
        used = column;
      } else if (i > 0) {
        lines.back() += ' ';
        ++used;
      }
      const auto pieces = wrapped(text, width_, used, column + 2);
      lines.back() += pieces.front().substr(used);
      lines.insert(lines.end(), pieces.begin() + 1, pieces.end());
      used = display_width(lines.back());
    }
    return lines;
  }

  /// Columns of a note with its brackets and the gap before it.
  [[nodiscard]] std::size_t note_width(const Words& note) const {
    return note.empty() ? 0 : display_width(shown(note)) + 5;
  }

  /// The note stands behind the formula where there is room, otherwise below it.
  void append_note(const Words& note, std::size_t widest, std::vector<std::string>& lines) const {
    if (note.empty()) return;
    const std::string text = "(" + shown(note) + ")";
    const std::size_t used = display_width(lines.back());
    if (used + note_width(note) <= width_) {
      const std::size_t column =
          widest + note_width(note) <= width_ ? std::max(widest, used) : used;
      lines.back() += std::string(column - used + 3, ' ') + wrapped(text, width_).front();
      return;
    }
    const auto below = wrapped(text, width_, 2 * kStep, 2 * kStep + 1);
    lines.insert(lines.end(), below.begin(), below.end());
  }

  static Words too_wide(const Figure& figure) {
    return say("[A figure of ", std::to_string(figure.schematic.width),
               " columns has no room here: ", figure.title,
               ". Write wider text, or draw the figure on its own.]");
  }

  TextOptions options_;
  SymbolSet symbols_;
  std::size_t width_;
  std::string text_;
  After after_ = After::heading;
};

}  // namespace

std::string document_text(const Document& document, const TextOptions& options, SymbolSet symbols) {
  return TextWriter(options, symbols).write(document);
}

}  // namespace ohmfold::views
