// Cases that contradict themselves, one line each for standard error.
#include "ohmfold/render.h"
#include "views/unknown_words.h"

namespace ohmfold {

std::string render_contradictions(const Trace& trace) {
  const Problem& problem = *trace.problem;
  std::string text;
  for (const CaseTrace& one : trace.cases) {
    if (!one.contradiction) continue;
    const views::PartNames names(problem, one.main);
    const views::Wording words(problem, one.main, names);
    text += problem.source_name + ": ";
    if (!one.name.empty()) text += "case \"" + one.name + "\": ";
    text += "error: " + views::plain_text(contradiction_words(words, problem, one)) + "\n";
  }
  return text;
}

}  // namespace ohmfold
