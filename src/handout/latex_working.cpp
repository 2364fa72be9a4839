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
  explicit Setter(const views::Working& working) {
    for (const views::Equation& equation : working.lines) {
      const MathText left = left_of(equation);
      if (left.width <= kWidestLeft) left_ = std::max(left_, left.width);
    }
    room_ = kLineWidth - left_;
    for (const views::Equation& equation : working.lines) equations_.push_back(set(equation));
    for (const SetEquation& equation : equations_) {
      for (const Row& row : equation.rows) widest_ = std::max(widest_, row.width);
    }
  }

  [[nodiscard]] std::string environment() const {
    const bool columns = std::any_of(
        equations_.begin(), equations_.end(),
        [&](const SetEquation& equation) { return !equation.note.empty() && beside(equation); });
    const std::string name = columns ? "alignat*}{2" : "align*";
    std::string code = "\\begin{" + name + "}\n";
    for (std::size_t i = 0; i < equations_.size(); ++i) {
      code += lines_of(equations_[i]);
      code += i + 1 < equations_.size() ? " \\\\\n" : "\n";
    }
    return code + (columns ? "\\end{alignat*}\n" : "\\end{align*}\n");
  }

 private:
  static MathText left_of(const views::Equation& equation) {
    const auto rows = math_rows(equation.left, kLineWidth);
    return rows.size() == 1 ? rows.front() : MathText{{}, kLineWidth};
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

  [[nodiscard]] bool beside(const SetEquation& equation) const {
    return widest_ + kIndentWidth + equation.note_width <= room_;
  }

  [[nodiscard]] std::string lines_of(const SetEquation& equation) const {
    std::string code;
    for (std::size_t i = 0; i < equation.rows.size(); ++i) {
      const Row& row = equation.rows[i];
      if (i > 0) code += " \\\\\n";
      code += row.left + (row.left.empty() ? "& " : " & ") + row.right;
    }
    if (equation.note.empty()) return code;
    if (beside(equation)) return code + " &\\qquad& \\text{" + equation.note + "}";
    code += " \\\\\n& \\quad ";
    if (equation.note_width + kIndentWidth <= room_) return code + "\\text{" + equation.note + "}";
    const int ems = (room_ - kIndentWidth) / 100;
    return code + "\\parbox[t]{" + std::to_string(ems) + "em}{\\raggedright " + equation.note + "}";
  }

  std::vector<SetEquation> equations_;
  int left_ = 0;    ///< width of the left column
  int room_ = 0;    ///< what it leaves
  int widest_ = 0;  ///< right side of all
};

}  // namespace

std::string latex_working(const views::Working& working) {
  return working.lines.empty() ? std::string() : Setter(working).environment();
}

}  // namespace ohmfold::handout
