// The worked solution, an inspection and the works of a class as plain text.
#include "ohmfold/render.h"
#include "views/class_report_outline.h"
#include "views/document_text.h"
#include "views/inspection_outline.h"
#include "views/outline.h"

namespace ohmfold {

std::string render_text(const Trace& trace, const TextOptions& options) {
  return render_text(trace, options, {.content = Content::solution, .redraws = Redraws::none},
                     false);
}

std::string render_text(const Trace& trace, const TextOptions& options,
                        const HandoutOptions& handout, bool drawn) {
  const views::OutlineOptions outlined{.figures = options.figures,
                                       .content = handout.content,
                                       .redraws = handout.redraws,
                                       .notation = handout.notation,
                                       .sizes = drawn ? &drawing::terminal_sizes() : nullptr};
  return views::document_text(views::outline(trace, outlined), options, handout.symbols);
}

std::string render_inspection_text(const Inspection& inspection, const TextOptions& options) {
  return views::document_text(views::inspection_outline(inspection, options.figures), options);
}

std::string render_class_report_text(const ClassReport& report, const TextOptions& options) {
  return views::document_text(views::class_report_outline(report), options);
}

}  // namespace ohmfold
