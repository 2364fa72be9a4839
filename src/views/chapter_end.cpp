// What may end a case: cautions, or a contradiction in place of everything else.
#include "views/chapter.h"
#include "views/conditions.h"
#include "views/unknown_words.h"

namespace ohmfold::views {

void add_cautions(const Scene& scene, const CaseTrace& trace, Document& document) {
  if (trace.cautions.empty()) return;
  document.heading(3, say("Caution"));
  for (const Caution& caution : trace.cautions) {
    document.entry("", scene.words.caution(caution));
  }
  document.paragraph(
      say("This is an exercise on paper. Real parts get hot, burn and shock; for real "
          "wiring the local codes and a qualified person decide."));
}

void add_contradiction(const Scene& scene, const CaseTrace& trace, Document& document) {
  document.paragraph(sentence(contradiction_words(scene.words, scene.problem, trace)));
  if (trace.contradiction->kind == ContradictionKind::unknown_not_found) return;
  if (trace.contradiction->agree) {
    document.paragraph(agreement_words(scene.problem, *trace.contradiction->agree));
  }
  document.paragraph(say(
      "The voltages round a closed loop must sum to zero, so no currents and voltages fit this "
      "case: as ideal parts these contradict one another. In reality a very large current would "
      "run. Give a battery its internal resistance, or change what joins its terminals."));
}

}  // namespace ohmfold::views
