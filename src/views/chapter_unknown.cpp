// How unknown values were found, in the steps that a textbook writes: the circuit with letters, the
// equations, their solution.
#include <algorithm>

#include "exact/terms.h"
#include "ohmfold/symbolic.h"
#include "views/amounts.h"
#include "views/chapter.h"
#include "views/polynomials.h"
#include "views/questions.h"
#include "views/step_lines.h"
#include "views/unknown_words.h"

namespace ohmfold::views {

namespace {

/// With more combinations than this the circuit with letters is not written out.
constexpr std::size_t kMostCombinations = 8;
/// A denominator of more terms than this is not written once more, multiplied.
constexpr std::size_t kMostClearedTerms = 4;

class UnknownChapter {
 public:
  UnknownChapter(const Problem& problem, const UnknownSolution& solution, int figures,
                 Document& document)
      : problem_(problem), solution_(solution), figures_(figures), document_(document) {
    for (const PartId part : solution.unknowns) symbols_.push_back(problem.part(part).name);
  }

  void run(const CaseTrace& trace) {
    const Words names = unknown_names(problem_, solution_.unknowns);
    const std::string label =
        solution_.forms.empty() || names_cases() ? std::string() : solution_.forms.front().name;
    document_.heading(2, say("Finding ", names, label.empty() ? "" : ": ", label));
    add_letters(names);
    for (const CaseTrace& form : solution_.forms) add_combinations(form);
    add_equations();
    add_eliminations();
    add_last();
    add_outcome(trace);
  }

 private:
  /// Do the givens name the cases in which they hold?
  [[nodiscard]] bool names_cases() const { return problem_.givens.front().held_in.has_value(); }

  void add_letters(const Words& names) {
    const bool one = symbols_.size() == 1;
    document_.paragraph(say("Let the ", one ? "letter " : "letters ", names, " stand for the ",
                            one ? "unknown value" : "unknown values",
                            ", and solve the circuit with ", one ? "it" : "them",
                            ". In these lines all values are in Ω, V, A and W."));
  }

  /// The steps of the reduction that combine parts, with letters.
  void add_combinations(const CaseTrace& form) {
    if (form.contradiction || form.main.stop != Stop::reduced) return;
    const Scene scene(problem_, form.main, figures_);
    const StepLog& steps = form.main.steps;
    std::vector<Equation> lines;
    for (std::size_t i = 0; i < steps.size(); ++i) {
      const auto combined = combination(scene, steps[i]);
      if (!combined) continue;
      if (lines.size() == kMostCombinations) return;
      const Number value = scene.resistance(steps[i].makes).number;
      Equation line{scene.symbols.value(steps[i].makes), {{Relation::equal, *combined}}, {}};
      line.links.push_back({Relation::equal, quotient_expression(value, symbols_)});
      line.note = say(steps[i].rule == RuleName::series ? "in series" : "in parallel");
      lines.push_back(std::move(line));
    }
    if (lines.empty()) return;
    if (names_cases()) {
      document_.paragraph(say("Combine as far as it goes, in case \"", form.name, "\":"));
    } else {
      document_.paragraph(say("Combine as far as it goes:"));
    }
    add_lines(std::move(lines));
  }

  void add_equations() {
    for (std::size_t i = 0; i < solution_.equations.size(); ++i) {
      const UnknownEquation& equation = solution_.equations[i];
      if (!equation.form.value) continue;
      const Given& given = problem_.givens[equation.given];
      const Scene scene(problem_, solution_.forms[equation.form_in].main, figures_);
      const Words value =
          say(Amount{{given.value, unit_of(given.question, problem_)}, Form::given, figures_});
      document_.paragraph(
          say(given_words(problem_, equation).capitalised(), " is given as ", value, ":"));
      Equation line{question_symbol(given.question, scene.symbols), {}, number(i)};
      line.links.push_back(
          {Relation::equal, quotient_expression(equation.form.value->number, symbols_)});
      const bool depends = equation.form.value->number.is_symbolic();
      if (depends) {
        line.links.push_back({Relation::equal, count(given.value)});
      } else {
        line.note = say("whatever ", unknown_names(problem_, solution_.unknowns), " may be");
      }
      std::vector<Equation> lines{std::move(line)};
      if (depends) add_cleared(equation, given, lines);
      add_lines(std::move(lines));
    }
  }

  /// "(1)" beside an equation, where there are several.
  [[nodiscard]] Words number(std::size_t equation) const {
    if (solution_.equations.size() < 2) return {};
    return say("equation ", std::to_string(equation + 1));
  }

  /// numerator = value · denominator
  void add_cleared(const UnknownEquation& equation, const Given& given,
                   std::vector<Equation>& lines) const {
    const Number& form = equation.form.value->number;
    const Number below = denominator_of(form);
    if (below == Number(1) || given.value.is_zero()) return;
    if (terms_of(below, symbols_).size() > kMostClearedTerms) return;
    const Expression denominator = polynomial_expression(below, symbols_);
    Expression right =
        given.value == Number(1) ? denominator : product(count(given.value), denominator);
    lines.push_back({polynomial_expression(numerator_of(form), symbols_),
                     {{Relation::equal, std::move(right)}},
                     say("times the denominator")});
  }

  void add_eliminations() {
    for (const Elimination& step : solution_.eliminations) {
      document_.paragraph(say(
          "From equation ", std::to_string(step.equation + 1),
          is_as_stated(step.equation, step.collected) ? "" : ", with what has been found put in",
          ":"));
      add_lines({zero_line(step.collected),
                 {{Symbol{problem_.part(step.unknown).name, ""}},
                  {{Relation::equal, quotient_expression(step.value, symbols_)}},
                  say("solved for ", Run(PartName{problem_.part(step.unknown).name}))}});
    }
  }

  [[nodiscard]] bool is_as_stated(std::size_t equation, const Number& collected) const {
    return solution_.equations[equation].collected == collected;
  }

  [[nodiscard]] Equation zero_line(const Number& polynomial) const {
    return {polynomial_expression(polynomial, symbols_),
            {{Relation::equal, count(Number(0))}},
            say("collected")};
  }

  void add_last() {
    if (!solution_.last) return;
    const LastEquation& last = *solution_.last;
    if (!solution_.eliminations.empty()) {
      document_.paragraph(say("Put into equation ", std::to_string(last.equation + 1), ":"));
    }
    const std::string& name = problem_.part(last.unknown).name;
    const std::vector<Number> parts = coefficients(last.collected, name);
    if (parts.size() == 2) return add_lines({linear_line(parts, name)});
    Equation line = zero_line(last.collected);
    const bool quadratic = parts.size() == 3;
    if (quadratic && solution_.roots.empty()) line.note = say("collected: no number solves this");
    add_lines({std::move(line)});
    const bool is_short = std::none_of(parts.begin(), parts.end(), is_too_long_to_show);
    if (quadratic && is_short && !solution_.roots.empty()) {
      add_lines({quadratic_line(parts, name)});
    }
  }

  /// "3 · R3 = 5"
  [[nodiscard]] Equation linear_line(const std::vector<Number>& parts,
                                     const std::string& name) const {
    const Number left = parts[1] * Number::symbol(name);
    return {polynomial_expression(left, symbols_),
            {{Relation::equal, count(-parts[0])}},
            say("collected")};
  }

  /// "R3 = (10 ± √36) / 2"
  static Equation quadratic_line(const std::vector<Number>& parts, const std::string& name) {
    const Number discriminant = parts[1] * parts[1] - Number(4) * parts[0] * parts[2];
    const std::string under = discriminant.to_string();
    const bool whole = discriminant.is_integer() && !discriminant.is_negative();
    const Number middle = -parts[1];
    const Expression root{
        Symbol{(middle.is_zero() ? "±√" : "√") + (whole ? under : "(" + under + ")"), ""}};
    const Expression above =
        middle.is_zero()
            ? root
            : Expression{Symbol{"(" + formula_text(count(middle), Letters::unicode) + " ± " +
                                    symbol_text(std::get<Symbol>(root.node)) + ")",
                                ""}};
    return {{Symbol{name, ""}},
            {{Relation::equal, quotient(above, count(Number(2) * parts[2]))}},
            say("quadratic formula")};
  }

  /// Each solution, and whether it fits.
  void add_outcome(const CaseTrace& trace) {
    // A single value that falls away is told with the case.
    const bool told = solution_.outcome == UnknownOutcome::no_value && symbols_.size() == 1 &&
                      solution_.roots.size() == 1;
    for (const UnknownRoot& root : solution_.roots) {
      if (!told) add_root(root);
    }
    if (solution_.outcome != UnknownOutcome::found) {
      if (!trace.contradiction) {
        document_.paragraph(sentence(why_not_found(problem_, solution_, figures_)));
      }
      return;
    }
    const auto fitting =
        std::count_if(solution_.roots.begin(), solution_.roots.end(),
                      [](const UnknownRoot& root) { return root.fate == RootFate::fits; });
    if (fitting == 1) {
      document_.paragraph(
          say("Put in, this gives back what is given: the circuit is now solved with it."));
    } else {
      document_.paragraph(
          say("Each of these fits what is given. Both are solutions, and the "
              "circuit is solved with each of them."));
    }
  }

  void add_root(const UnknownRoot& root) {
    std::vector<Words> values;
    for (std::size_t k = 0; k < root.values.size(); ++k) {
      const PartId part = solution_.unknowns[k];
      values.push_back(say(Run(PartName{problem_.part(part).name}), " =\u00A0",
                           surd_words(root.values[k], unit_of(ValueOf{part}, problem_), figures_)));
    }
    const Words why = why_rejected(problem_, solution_, root);
    if (values.empty()) return document_.entry("", sentence(why));
    document_.entry("", why.empty() ? sentence(listed(values))
                                    : say(listed(values), " falls away: ", why, "."));
  }

  /// Leaves out what is too long to write.
  void add_lines(std::vector<Equation> lines) {
    std::erase_if(lines, [](const Equation& line) {
      return has_unwritten_amount(line.left) ||
             std::any_of(line.links.begin(), line.links.end(),
                         [](const Link& link) { return has_unwritten_amount(link.right); });
    });
    document_.working(std::move(lines));
  }

  const Problem& problem_;
  const UnknownSolution& solution_;
  const int figures_;
  Document& document_;
  std::vector<std::string> symbols_;
};

}  // namespace

void add_unknown(const Problem& problem, const CaseTrace& trace, int figures, Document& document) {
  if (trace.unknown->outcome == UnknownOutcome::too_long) return;  // told with the case
  UnknownChapter(problem, *trace.unknown, figures, document).run(trace);
}

}  // namespace ohmfold::views
