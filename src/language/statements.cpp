// Statements that are neither parts nor questions: title, text, ground, figures, place.

#include <utility>

#include "language/draft.h"

namespace ohmfold {
namespace {

constexpr int kMostFigures = 30;

/// The number as significant figures, nothing where it is none of 1 to kMostFigures.
std::optional<int> as_figures(const Number& number) {
  for (int figures = 1; figures <= kMostFigures; ++figures) {
    if (number == Number(figures)) return figures;
  }
  return std::nullopt;
}

void fail_given_twice(LineReader& line, const Token& again, const std::string& what,
                      const Span& first) {
  line.fail(DiagnosticKind::given_twice, again.where, {what}, {}, first);
}

}  // namespace

void read_title(LineReader& line, Draft& draft) {
  const std::optional<Token> title = line.expect_text();
  if (!title || !line.expect_end()) return;
  if (draft.title) return fail_given_twice(line, *title, "the title", *draft.title);
  draft.title = title->where;
  draft.problem.title = title->text;
}

void read_text(LineReader& line, Draft& draft) {
  const std::optional<Token> text = line.expect_text();
  if (text && line.expect_end()) draft.problem.texts.emplace_back(text->text);
}

void read_ground(LineReader& line, Draft& draft) {
  const std::optional<Token> point = line.expect_name("a point");
  if (!point || !line.expect_end()) return;
  if (draft.ground) return fail_given_twice(line, *point, "the ground", draft.ground->where);
  draft.ground = *point;
}

void read_figures(LineReader& line, Draft& draft) {
  const Token word = line.peek();
  const std::optional<Number> number = line.expect_number();
  if (!number || !line.expect_end()) return;
  const std::optional<int> figures = as_figures(*number);
  if (!figures) {
    line.fail(DiagnosticKind::figures_out_of_range, word.where,
              {std::string(word.text), "1", std::to_string(kMostFigures)});
    return;
  }
  if (draft.figures) {
    return fail_given_twice(line, word, "the number of figures", *draft.figures);
  }
  draft.figures = word.where;
  draft.problem.figures = *figures;
}

void read_place(LineReader& line, Draft& draft) {
  const std::optional<Token> point = line.expect_name("a point");
  if (!point || !line.expect_word("at")) return;
  std::optional<Number> x = line.expect_number();
  if (!x || !line.expect_sign(",")) return;
  std::optional<Number> y = line.expect_number();
  if (!y || !line.expect_end()) return;
  draft.places.push_back({*point, std::move(*x), std::move(*y)});
}

}  // namespace ohmfold
