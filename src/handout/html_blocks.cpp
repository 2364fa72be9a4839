// The blocks of one document as HTML.
#include "handout/html_blocks.h"

#include <algorithm>

#include "drawing/svg.h"
#include "drawing/xml.h"
#include "handout/html_words.h"
#include "handout/mathml.h"
#include "handout/workbook.h"
#include "views/page_words.h"

namespace ohmfold::handout {

namespace {

namespace page = views::page;

constexpr int kDeepestHeading = 6;

/// Which headings of level 1 have steps below them.
std::vector<bool> problems_with_steps(const views::Document& document) {
  std::vector<bool> found;
  for (const views::Block& block : document.blocks) {
    const auto* heading = std::get_if<views::Heading>(&block);
    if (heading != nullptr && heading->level == 1) found.push_back(false);
    if (std::holds_alternative<views::StepBegin>(block) && !found.empty()) found.back() = true;
  }
  return found;
}

/// "1", "12": a number that a list can count by itself.
bool is_plain_number(const std::string& text) {
  constexpr std::size_t kMostDigits = 6;
  return !text.empty() && text.size() <= kMostDigits &&
         text.find_first_not_of("0123456789") == std::string::npos;
}

/// Bytes of text between the tags.
std::size_t text_size(const std::string& html) {
  std::size_t size = 0;
  bool in_tag = false;
  for (const char c : html) {
    if (c == '<') in_tag = true;
    if (!in_tag) ++size;
    if (c == '>') in_tag = false;
  }
  return size;
}

/// A line that may be too wide for a narrow window scrolls, and is reached by the keyboard for it.
std::string formula(const views::Equation& line) {
  constexpr std::size_t kMostInNarrow = 32;
  std::string inside;
  bool is_wide = false;
  for (const std::string& piece : mathml_pieces(line)) {
    if (!inside.empty()) inside += ' ';
    inside += piece;
    is_wide = is_wide || text_size(piece) > kMostInNarrow;
  }
  const std::string reached =
      R"( tabindex="0" role="group" aria-label=")" + std::string(page::kFormula) + R"(")";
  return R"(<span class="formula")" + (is_wide ? reached : "") + ">" + inside + "</span>";
}

std::string element(const std::string& name, const std::string& inside) {
  return "<" + name + ">" + inside + "</" + name + ">\n";
}

class BlockWriter {
 public:
  BlockWriter(const views::Document& document, const PageOptions& options)
      : document_(document),
        options_(options),
        with_steps_(problems_with_steps(document)),
        outer_level_(with_steps_.size() > 1 ? 1 : 0) {}

  WrittenDocument write() {
    for (const views::Block& block : document_.blocks) std::visit(*this, block);
    leave_sections(0);
    return {std::move(html_), after_title_, std::move(sections_)};
  }

  void operator()(const views::Heading& heading) {
    leave_sections(heading.level);
    const bool begins_problem = heading.level == 1;
    if (begins_problem) begin_problem();
    const std::string id =
        begins_problem ? prefix_ : prefix_ + "-section-" + std::to_string(++section_count_);
    const std::string name = begins_problem ? "article" : "section";
    html_ += "<" + name + R"( id=")" + id + "\">\n";
    open_.push_back({heading.level, name});
    level_ = std::min(heading.level + outer_level_, kDeepestHeading);
    const std::string words = html_words(heading.words);
    put_heading(level_, words);
    if (sections_.empty()) after_title_ = html_.size();
    sections_.push_back({heading.level, id, words});
    if (begins_problem && waits_as_a_whole()) begin_cover(page::kShowPart, words);
  }

  void operator()(const views::Paragraph& paragraph) {
    if (paragraph.indent == 0) leave_list();
    html_ += element("p", html_words(paragraph.words));
  }

  void operator()(const views::Entry& entry) {
    enter_list(entry.number.empty() ? "ul" : "ol");
    if (entry.number.empty()) {
      html_ += "<li>";
    } else if (is_plain_number(entry.number)) {
      html_ += R"(<li value=")" + entry.number + R"(">)";
    } else {
      html_ += R"(<li class="own-number">)" + drawing::xml_text(entry.number) + ". ";
    }
    html_ += element("p", html_words(entry.words));
  }

  void operator()(const views::Working& working) {
    html_ += "<ul class=\"working\">\n";
    for (const views::Equation& line : working.lines) {
      html_ += "<li>" + formula(line);
      if (!line.note.empty()) {
        html_ += R"( <span class="note">()" + html_words(line.note) + ")</span>";
      }
      html_ += "</li>\n";
    }
    html_ += "</ul>\n";
  }

  void operator()(const views::Table& table) {
    leave_list();
    html_ += R"(<div class="table" role="group" aria-label=")" + std::string(page::kTable) +
             "\" tabindex=\"0\"><table>\n<thead><tr>";
    for (const views::Column& column : table.columns) {
      html_ += R"(<th scope="col")" + side(column) + ">" + html_words(column.heading) + "</th>";
    }
    html_ += "</tr></thead>\n<tbody>\n";
    for (const auto& row : table.rows) put_row(table, row);
    html_ += "</tbody>\n</table></div>\n";
  }

  /// Within a step, figures stand beside the text.
  void operator()(const views::Figure& figure) {
    if (!in_step_) leave_list();
    const std::string id = prefix_ + "figure" + std::to_string(++figure_count_);
    std::string html = "<figure>\n";
    html += drawing::svg(figure.schematic, {figure.title, figure.description, id}, options_.symbols,
                         false);
    if (!figure.caption.empty()) html += element("figcaption", html_words(figure.caption));
    html += "</figure>\n";
    (in_step_ ? beside_ : html_) += html;
  }

  void operator()(const views::StepBegin& step) {
    if (open_step_) leave_cover();
    leave_list();
    const std::string id = prefix_ + "-step-" + std::to_string(++step_count_);
    html_ += R"(<section class="step" id=")" + id + "\">\n";
    open_step_ = true;
    const std::string title = html_words(step.title);
    // A section of one step is called like it: once is enough.
    const bool is_said = !sections_.empty() && sections_.back().words == title;
    if (!title.empty() && !is_said) put_heading(std::min(level_ + 1, kDeepestHeading), title);
    if (options_.workbook) {
      html_ += workbook_fields(step.asked, figures_wanted(), id);
      begin_cover(page::kShowStep, title);
    }
    html_ += "<div class=\"step-body\">\n<div class=\"step-text\">\n";
    in_step_ = true;
  }

  /// What follows in the same section belongs to the step in a workbook: it tells its result.
  void operator()(const views::StepEnd& /*step*/) {
    leave_step_body();
    if (!options_.workbook) leave_cover();
  }

 private:
  void begin_problem() {
    prefix_ = "p" + std::to_string(++problem_count_);
    section_count_ = step_count_ = figure_count_ = 0;
  }

  [[nodiscard]] bool waits_as_a_whole() const {
    const bool any = std::find(with_steps_.begin(), with_steps_.end(), true) != with_steps_.end();
    return options_.workbook && any && !with_steps_[problem_count_ - 1];
  }

  [[nodiscard]] int figures_wanted() const {
    constexpr int kUsual = 3;
    const bool known = problem_count_ > 0 && problem_count_ <= options_.figures.size();
    return known ? options_.figures[problem_count_ - 1] : kUsual;
  }

  void put_heading(int level, const std::string& words) {
    const std::string name = "h" + std::to_string(level);
    html_ += element(name, words);
  }

  static std::string side(const views::Column& column) {
    return column.align == views::Align::right ? R"( class="right")" : "";
  }

  void put_row(const views::Table& table, const std::vector<views::Words>& row) {
    html_ += "<tr>";
    for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
      const std::string cell = html_words(row[i]);
      // An empty heading says nothing to those who hear it.
      const bool heads = i == 0 && !cell.empty();
      html_ += (heads ? R"(<th scope="row")" : "<td") + side(table.columns[i]) + ">" + cell +
               (heads ? "</th>" : "</td>");
    }
    html_ += "</tr>\n";
  }

  void begin_cover(std::string_view words, const std::string& of_what) {
    html_ += "<details class=\"cover\">\n<summary>" + drawing::xml_text(words);
    if (!of_what.empty()) html_ += R"(<span class="unseen">: )" + of_what + "</span>";
    html_ += "</summary>\n<div class=\"covered\">\n";
    open_cover_ = true;
  }

  void enter_list(const std::string& name) {
    if (list_ == name) {
      html_ += "</li>\n";
      return;
    }
    leave_list();
    list_ = name;
    html_ += "<" + name + ">\n";
  }

  void leave_list() {
    if (list_.empty()) return;
    html_ += "</li>\n</" + list_ + ">\n";
    list_.clear();
  }

  void leave_step_body() {
    leave_list();
    if (!in_step_) return;
    in_step_ = false;
    html_ += "</div>\n";
    if (!beside_.empty()) html_ += "<div class=\"step-figures\">\n" + beside_ + "</div>\n";
    beside_.clear();
    html_ += "</div>\n";
  }

  void leave_cover() {
    leave_step_body();
    if (open_cover_) html_ += "</div>\n</details>\n";
    if (open_step_) html_ += "</section>\n";
    open_cover_ = open_step_ = false;
  }

  /// Ends all sections of this level and below it.
  void leave_sections(int level) {
    if (level <= 1 || open_step_) leave_cover();
    leave_list();
    while (!open_.empty() && open_.back().level >= level) {
      html_ += "</" + open_.back().name + ">\n";
      open_.pop_back();
    }
  }

  struct Open {
    int level = 0;
    std::string name;  ///< of the element
  };

  const views::Document& document_;
  const PageOptions& options_;
  const std::vector<bool> with_steps_;
  const int outer_level_;  ///< added to the level of each heading
  std::string html_;
  std::string beside_;  ///< the figures of the open step
  std::vector<Section> sections_;
  std::vector<Open> open_;
  std::string prefix_ = "p0";  ///< of ids
  std::string list_;           ///< "ul" or "ol" while an entry is open
  int level_ = 1;              ///< of the last heading in the page
  std::size_t after_title_ = 0;
  std::size_t problem_count_ = 0, section_count_ = 0, step_count_ = 0, figure_count_ = 0;
  bool in_step_ = false, open_step_ = false, open_cover_ = false;
};

}  // namespace

WrittenDocument write_blocks(const views::Document& document, const PageOptions& options) {
  return BlockWriter(document, options).write();
}

}  // namespace ohmfold::handout
