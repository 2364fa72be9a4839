// Cases that contradict themselves, one line each for standard error.
#include "ohmfold/render.h"
#include "views/conditions.h"
#include "views/unknown_words.h"
#include "views/wording.h"

namespace ohmfold {

std::string render_contradictions(const Trace& trace) {
  const Problem& problem = *trace.problem;
  std::string text;
  for (const CaseTrace& one : trace.cases) {
    if (!one.contradiction && !one.beyond_budget) continue;
    const views::PartNames names(problem, one.main);
    const views::Wording words(problem, one.main, names);
    text += problem.source_name + ": ";
    if (!one.name.empty()) text += "case \"" + one.name + "\": ";
    text += "error: ";
    text += one.beyond_budget ? views::plain_text(views::beyond_budget_words(*one.beyond_budget))
                              : views::plain_text(contradiction_words(words, problem, one));
    if (one.contradiction && one.contradiction->agree) {
      text += "; ";
      text += views::plain_text(views::agreement_phrase(problem, *one.contradiction->agree));
    }
    text += '\n';
  }
  return text;
}

}  // namespace ohmfold
