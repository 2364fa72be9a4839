// Lines of working as displayed formulas of LaTeX: alignat with relations, and notes, in columns.
#include "handout/latex_working.h"

#include <algorithm>
#include <utility>

#include "handout/latex_math.h"
#include "handout/latex_width.h"

namespace ohmfold::handout {

namespace {

constexpr int kRelationWidth = 140;
constexpr int kIndentWidth = 200;  // \qquad
/// A left side that is wider stands in rows of its own.
constexpr int kWidestLeft = 1400;

struct Row {
  std::string left, right;
  int width = 0;  ///< of the right side
};

/// One equation in rows.
struct SetEquation {
  std::vector<Row> rows;
  std::string note;  ///< empty: none
  int note_width = 0;
};

class Setter {
 public:
  Setter(const views::Working& working, int line_width) : line_width_(line_width) {
    for (const views::Equation& equation : working.lines) {
      const MathText left = left_of(equation);
      if (left.width <= kWidestLeft) left_ = std::max(left_, left.width);
    }
    room_ = line_width_ - left_;
    for (const views::Equation& equation : working.lines) equations_.push_back(set(equation));
    int widest = 0;
    int note = 0;
    for (const SetEquation& equation : equations_) {
      for (const Row& row : equation.rows) widest = std::max(widest, row.width);
      note = std::max(note, equation.note_width);
    }
    beside_ = note > 0 && widest + kIndentWidth + note <= room_;
  }

  [[nodiscard]] std::string environment() const {
    const std::string name = beside_ ? "alignat*" : "align*";
    std::string code = "\\begin{" + name + (beside_ ? "}{2}\n" : "}\n");
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      code += lines_of(equations_[i]);
      code += i + 1 < equations_.size() ? " \\\\\n" : "\n";
    }
    return code + "\\end{" + name + "}\n";
  }

 private:
  [[nodiscard]] MathText left_of(const views::Equation& equation) const {
    const auto rows = math_rows(equation.left, line_width_);
    return rows.size() == 1 ? rows.front() : MathText{{}, line_width_};
  }

  [[nodiscard]] SetEquation set(const views::Equation& equation) const {
    SetEquation result;
    const MathText left = left_of(equation);
    if (left.width <= kWidestLeft) {
      result.rows.push_back({left.code, {}, 0});
    } else {
      append(result, {}, math_rows(equation.left, room_ - kIndentWidth));
    }
    for (const views::Link& link : equation.links) append_link(result, link);
    if (!equation.note.empty()) {
      const TextOfWords note = latex_words(equation.note);
      result.note = "(" + note.code + ")";
      result.note_width = note.width + 80;
    }
    return result;
  }

  void append_link(SetEquation& result, const views::Link& link) const {
    const std::string relation = link.relation == views::Relation::about ? "\\approx " : "= ";
    auto rows = math_rows(link.right, room_ - kRelationWidth - kIndentWidth);
    rows.front().width += kRelationWidth;
    append(result, relation, std::move(rows));
  }

  /// On the last row where there is room, otherwise on a new one; rows that go on are indented.
  void append(SetEquation& result, const std::string& relation, std::vector<MathText> rows) const {
    const bool fits = !result.rows.empty() &&
                      (result.rows.back().width == 0 ||
                       (rows.size() == 1 && result.rows.back().width + rows[0].width <= room_));
    if (!fits) result.rows.emplace_back();
    Row& row = result.rows.back();
    if (!row.right.empty()) row.right += ' ';
    row.right += relation + rows.front().code;
    row.width += rows.front().width;
    for (std::size_t i = 1; i < rows.size(); ++i) {
      result.rows.push_back({{}, "\\qquad " + rows[i].code, rows[i].width + kIndentWidth});
    }
  }

  [[nodiscard]] std::string lines_of(const SetEquation& equation) const {
    std::string code;
    for (std::size_t i = 0; i < equation.rows.size(); ++i) {
      const Row& row = equation.rows[i];
      if (i > 0) code += " \\\\\n";
      code += row.left + (row.left.empty() ? "& " : " & ") + row.right;
    }
    if (equation.note.empty()) return code;
    if (beside_) return code + " &\\qquad& \\text{" + equation.note + "}";
    code += " \\\\\n& \\quad ";
    if (equation.note_width + kIndentWidth <= room_) return code + "\\text{" + equation.note + "}";
    const int ems = (room_ - kIndentWidth) / 100;
    return code + "\\parbox[t]{" + std::to_string(ems) + "em}{\\raggedright " + equation.note + "}";
  }

  std::vector<SetEquation> equations_;
  int line_width_;
  int left_ = 0;         ///< width of the left column
  int room_ = 0;         ///< what it leaves
  bool beside_ = false;  ///< do the notes stand beside the formulas?
};

}  // namespace

std::string latex_working(const views::Working& working, int line_width) {
  return working.lines.empty() ? std::string() : Setter(working, line_width).environment();
}

}  // namespace ohmfold::handout
