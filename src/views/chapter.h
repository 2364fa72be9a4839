// What the chapters of a worked solution share: the case at hand, its words and symbols.
#pragma once

#include <optional>

#include "ohmfold/trace.h"
#include "views/document.h"
#include "views/outline.h"
#include "views/symbols.h"
#include "views/wording.h"

namespace ohmfold::views {

/// One reduction of a case with its names, words and symbols. Refers to problem and reduction,
/// which must outlive it; stays where it was made, since its members refer to one another.
class Scene {
 public:
  Scene(const Problem& the_problem, const Reduction& the_reduction, int the_figures)
      : problem(the_problem),
        reduction(the_reduction),
        figures(the_figures),
        names(problem, reduction),
        words(problem, reduction, names),
        symbols(problem, names) {}
  Scene(const Scene&) = delete;
  Scene& operator=(const Scene&) = delete;

  const Problem& problem;
  const Reduction& reduction;
  const int figures;
  const PartNames names;
  const Wording words;
  const Symbols symbols;

  [[nodiscard]] Amount amount(const Quantity& quantity, Form form) const {
    return {quantity, form, figures};
  }
  /// For a line of working: a decimal where it ends within the figures.
  [[nodiscard]] Expression put_in(const Quantity& quantity) const {
    return {amount(quantity, Form::compact)};
  }
  /// Values that stand in one line of working: all as fractions where one of them must be.
  [[nodiscard]] std::vector<Expression> put_in(const std::vector<Quantity>& values) const;
  /// A value in passing: "5.76 Ω", "20/3 Ω", but "≈ 26.8 Ω" where the exact one is long.
  [[nodiscard]] Words brief(const Quantity& quantity) const;
  /// "9/2 A = 4.5 A", "15/8 A ≈ 1.88 A", "6 Ω"
  [[nodiscard]] Words value(const Quantity& quantity) const {
    return value_words(quantity, figures);
  }
  /// The value, or "not determined".
  [[nodiscard]] Words value(const Reading& reading) const;
  /// The resistance of a resistor, of the file or made.
  [[nodiscard]] Quantity resistance(PartId part) const {
    return {reduction.end.resistance(part).lowest_terms(), Unit::ohm};
  }
};

/// Is the amount short enough for a table or for a remark in passing?
[[nodiscard]] bool is_short(const Amount& amount);

/// Which entries of a long list are shown: the first and the last ones.
struct Selection {
  std::size_t count = 0, first = 0, last = 0;

  [[nodiscard]] bool shows(std::size_t index) const {
    return index < first || index >= count - last;
  }
  [[nodiscard]] std::size_t left_out() const { return count - first - last; }
};

/// Lists of more entries than this are not shown whole.
inline constexpr std::size_t kMostEntries = 200;

/// Everything up to kMostEntries, otherwise the first twenty and the last five.
[[nodiscard]] Selection select(std::size_t count, bool whole = true);

/// The title of a problem, or a common name where it has none.
[[nodiscard]] Words title_of(const Problem& problem);

// The chapters, in their order; each adds its blocks to the document. All that tells a result of
// the solution stands in a step.
void add_title(const Trace& trace, const OutlineOptions& options, Document& document);
void add_statement(const Trace& trace, int figures, const OutlineOptions& options,
                   Document& document);
/// How the unknowns of a case were found.
void add_unknown(const Problem& problem, const CaseTrace& trace, int figures, Document& document);
void add_case_heading(const Problem& problem, const CaseTrace& trace, std::size_t number,
                      Document& document, const char* title = "Solution");
void add_steps(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
               Document& document);
void add_way_back(const Scene& scene, const CaseTrace& trace, Document& document);
void add_results(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                 Document& document);
/// Batteries that are charged, and the like.
void add_remarks(const Scene& scene, const CaseTrace& trace, Document& document);
void add_answers(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                 Document& document);
/// The answers alone, without the reductions that show some of them.
void add_answer_list(const Scene& scene, const CaseTrace& trace, Document& document);
void add_checks(const Scene& scene, const CaseTrace& trace, Document& document);
void add_cautions(const Scene& scene, const CaseTrace& trace, Document& document);
void add_contradiction(const Scene& scene, const CaseTrace& trace, Document& document);
void add_comparison(const Trace& trace, int figures, Document& document);

}  // namespace ohmfold::views
