// The worked solution, an inspection and the works of a class as plain text.
#include "ohmfold/render.h"
#include "views/class_report_outline.h"
#include "views/document_text.h"
#include "views/inspection_outline.h"
#include "views/outline.h"

namespace ohmfold {

std::string render_text(const Trace& trace, const TextOptions& options) {
  return views::document_text(views::outline(trace, {.figures = options.figures}), options);
}

std::string render_inspection_text(const Inspection& inspection, const TextOptions& options) {
  return views::document_text(views::inspection_outline(inspection, options.figures), options);
}

std::string render_class_report_text(const ClassReport& report, const TextOptions& options) {
  return views::document_text(views::class_report_outline(report), options);
}

}  // namespace ohmfold
