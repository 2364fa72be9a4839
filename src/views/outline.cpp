// The order of a worked solution: statement, then each case from its steps to its cautions.
#include "views/outline.h"

#include <algorithm>

#include "views/amounts.h"
#include "views/chapter.h"
#include "views/conditions.h"
#include "views/redraws.h"

namespace ohmfold::views {

std::vector<Expression> Scene::put_in(const std::vector<Quantity>& values) const {
  const bool all_end = std::all_of(values.begin(), values.end(), [&](const Quantity& value) {
    return !is_too_long_to_show(value.number) && terminating_decimal(value.number, figures);
  });
  std::vector<Expression> terms;
  terms.reserve(values.size());
  for (const Quantity& value : values) {
    terms.push_back({amount(value, all_end ? Form::compact : Form::exact)});
  }
  return terms;
}

bool is_short(const Amount& amount) {
  constexpr std::size_t kMostBytes = 14;
  return !is_too_long_to_show(amount.quantity.number) &&
         amount_text(amount, Letters::unicode).size() <= kMostBytes;
}

Words Scene::brief(const Quantity& quantity) const {
  const Amount compact = amount(quantity, Form::compact);
  if (quantity.number.is_symbolic() || is_short(compact)) return say(compact);
  const bool equal = decimal_beside(quantity, figures) == Beside::equal;
  return say(equal ? "" : "≈\u00A0", amount(quantity, Form::decimal));
}

Words Scene::value(const Reading& reading) const {
  return reading.value ? value(*reading.value) : say("not determined");
}

Selection select(std::size_t count, bool whole) {
  constexpr std::size_t kFirst = 20;
  constexpr std::size_t kLast = 5;
  if (count <= kFirst + kLast || (whole && count <= kMostEntries)) return {count, count, 0};
  return {count, kFirst, kLast};
}

namespace {

/// What there is to say of a case that could not be solved step by step; false where it was.
bool add_unsolved(const Scene& scene, const CaseTrace& one, Document& document) {
  const std::size_t from = document.blocks.size();
  if (one.beyond_budget) {
    document.paragraph(sentence(beyond_budget_words(*one.beyond_budget)));
    return true;
  }
  if (one.contradiction) {
    add_contradiction(scene, one, document);
    document.cover(from, say("What this case comes to"));
    return true;
  }
  if (!one.only_answers) return false;
  if (one.root) {
    document.paragraph(
        say("With a value that is no fraction the steps are not shown. The "
            "answers are exact all the same."));
  }
  add_answer_list(scene, one, document);
  return true;
}

void add_solution(const Scene& scene, const CaseTrace& one, const OutlineOptions& options,
                  Document& document) {
  add_steps(scene, one, options, document);
  if (!one.complete && one.main.choice.method != Method::series_parallel) {
    document.paragraph(
        say("The exact values of all parts together would be too long to write, so "
            "only what is asked for has been found."));
  }
  add_way_back(scene, one, document);
  std::size_t from = document.blocks.size();
  add_results(scene, one, options, document);
  add_remarks(scene, one, document);
  document.cover(from, say("Remarks"));
  add_answers(scene, one, options, document);
  from = document.blocks.size();
  add_conditions(scene, one, document);
  add_checks(scene, one, document);
  add_cautions(scene, one, document);
  document.cover(from, say("Conditions"));
}

/// The answers of a case; where everything was asked for, they stand in tables.
void add_answers_alone(const Scene& scene, const CaseTrace& one, const OutlineOptions& options,
                       Document& document) {
  if (scene.problem.questions.empty() && one.complete) {
    const std::size_t from = document.blocks.size();
    add_results(scene, one, options, document);
    document.cover(from, say("All parts and points"));
  }
  add_answer_list(scene, one, document);
}

}  // namespace

Document outline(const Trace& trace, const OutlineOptions& options) {
  const Problem& problem = *trace.problem;
  const int figures = options.figures > 0 ? options.figures : problem.figures;
  const bool solved = options.content == Content::solution;
  Document document;
  if (options.content == Content::answers) {
    add_title(trace, options, document);
  } else {
    add_statement(trace, figures, options, document);
  }
  if (options.content == Content::problem) return document;
  for (std::size_t i = 0; i < trace.cases.size(); ++i) {
    const CaseTrace& one = trace.cases[i];
    const Scene scene(problem, one.main, figures);
    const bool is_new = i == 0 || trace.cases[i - 1].unknown != one.unknown;
    if (solved && one.unknown && is_new) {
      const std::size_t from = document.blocks.size();
      add_unknown(problem, one, figures, document);
      document.cover(from, say("The unknown values"));
    }
    // Answers to a single case need no heading but their own.
    if (solved || !one.name.empty()) {
      add_case_heading(problem, one, i, document, solved ? "Solution" : "Case");
    }
    if (solved && trace.cases.size() > 1) add_case_figure(scene, one, options, document);
    if (add_unsolved(scene, one, document)) continue;
    if (solved) {
      add_solution(scene, one, options, document);
    } else {
      add_answers_alone(scene, one, options, document);
    }
  }
  if (solved) add_comparison(trace, figures, document);
  return document;
}

}  // namespace ohmfold::views
