// A document as CommonMark: block after block.
#include "handout/markdown_document.h"

#include <algorithm>
#include <utility>

#include "drawing/svg.h"
#include "handout/markdown_text.h"
#include "views/document_text.h"
#include "views/table_text.h"

namespace ohmfold::handout {

namespace {

constexpr int kCodeWidth = 84;

std::string text_of(const views::Words& words) {
  return markdown_text(views::line_text(words, Letters::unicode));
}

/// The text with this many spaces before each of its lines.
std::string indented(const std::string& text, std::size_t columns) {
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size() - 1);
    if (end > at) result.append(columns, ' ');
    result.append(text, at, end + 1 - at);
    at = end + 1;
  }
  return result;
}

/// A blank line would end a block of HTML.
std::string without_blank_lines(const std::string& text) {
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t end = std::min(text.find('\n', at), text.size());
    const std::string line = text.substr(at, end - at);
    if (line.find_first_not_of(" \t\r") != std::string::npos) result += line + "\n";
    at = end + 1;
  }
  return result;
}

class Writer {
 public:
  Writer(std::string stem, SymbolSet symbols) : stem_(std::move(stem)), symbols_(symbols) {}

  Markdown write(const views::Document& document) {
    for (const views::Block& block : document.blocks) std::visit(*this, block);
    return std::move(markdown_);
  }

  void operator()(const views::Heading& heading) {
    end_entries();
    put(std::string(static_cast<std::size_t>(heading.level), '#') + " " + text_of(heading.words) +
        "\n");
  }

  void operator()(const views::Paragraph& paragraph) {
    if (paragraph.indent == 0) end_entries();
    put(text_of(paragraph.words) + "\n");
  }

  void operator()(const views::Entry& entry) {
    column_ = 0;
    const std::string mark = mark_of(entry);
    const std::string text = text_of(entry.words) + "\n";
    if (!tight_) markdown_.text += markdown_.text.empty() ? "" : "\n";
    markdown_.text += mark + " " + text;
    column_ = mark.size() + 1;
    tight_ = true;
  }

  void operator()(const views::Working& working) {
    views::Document document;
    document.working(working.lines);
    TextOptions options;
    options.width = kCodeWidth;
    put(fenced(without_indent(views::document_text(document, options))));
  }

  void operator()(const views::Table& table) {
    end_entries();
    std::string lines;
    for (const std::string& line : views::table_lines(table, kCodeWidth, Letters::unicode)) {
      lines += line + "\n";
    }
    put(fenced(lines));
  }

  void operator()(const views::Figure& figure) {
    end_entries();
    ++figures_;
    const std::string number = std::to_string(figures_);
    const drawing::SvgText text{figure.title, figure.description, "f" + number};
    if (stem_.empty()) {
      put_within(drawing::svg(figure.schematic, text, symbols_, false));
    } else {
      const std::string name = stem_ + "-" + number + ".svg";
      std::string words = figure.title;
      if (!figure.description.empty()) words += ". " + figure.description;
      put("![" + markdown_text(words) + "](" + link_to(name) + ")\n");
      markdown_.figures.push_back({name, drawing::svg(figure.schematic, text, symbols_, true)});
    }
    if (!figure.caption.empty()) put(text_of(figure.caption) + "\n");
  }

  void operator()(const views::StepBegin&) { end_entries(); }
  void operator()(const views::StepEnd&) { end_entries(); }

 private:
  /// A block of its own, below the entry that it belongs to.
  void put(const std::string& block) {
    if (!markdown_.text.empty()) markdown_.text += '\n';
    markdown_.text += indented(block, column_);
    tight_ = false;
  }

  /// A <div> lets any drawing be a block of HTML up to the next blank line; the rules of style
  /// stand once, before the first.
  void put_within(const std::string& svg) {
    std::string block = "<div>\n";
    if (figures_ == 1) block += "<style>\n" + drawing::svg_style() + "\n</style>\n";
    put(without_blank_lines(block + svg + "\n</div>\n"));
  }

  /// A list goes on counting from its first number: where the numbers do not, another sign begins
  /// a new list.
  std::string mark_of(const views::Entry& entry) {
    if (entry.number.empty()) {
      last_ = 0;
      return "-";
    }
    constexpr std::size_t kMostDigits = 9;
    const bool counts = entry.number.size() <= kMostDigits &&
                        entry.number.find_first_not_of("0123456789") == std::string::npos;
    if (!counts) {
      last_ = 0;
      return "- " + markdown_text(entry.number + ".");
    }
    const int number = std::stoi(entry.number);
    if (number != last_ + 1) sign_ = last_ != 0 && sign_ == '.' ? ')' : '.';
    last_ = number;
    return entry.number + sign_;
  }

  void end_entries() {
    column_ = 0;
    last_ = 0;
    tight_ = false;
  }

  /// A plain text has its formulas indented.
  static std::string without_indent(const std::string& text) {
    constexpr std::size_t kIndent = 4;
    std::string result;
    for (std::size_t at = 0; at < text.size();) {
      const std::size_t end = std::min(text.find('\n', at), text.size() - 1);
      const std::string line = text.substr(at, end + 1 - at);
      const bool is_indented = line.starts_with(std::string(kIndent, ' '));
      result += is_indented ? line.substr(kIndent) : line;
      at = end + 1;
    }
    return result;
  }

  std::string stem_;
  SymbolSet symbols_;
  Markdown markdown_;
  std::size_t figures_ = 0;
  std::size_t column_ = 0;  ///< where the text of the open entry begins; 0: none is open
  bool tight_ = false;      ///< has nothing followed the text of the open entry?
  int last_ = 0;            ///< number of the open entry; 0: it has none
  char sign_ = '.';
};

}  // namespace

Markdown markdown_document(const views::Document& document, const std::string& stem,
                           SymbolSet symbols) {
  return Writer(stem, symbols).write(document);
}

}  // namespace ohmfold::handout
