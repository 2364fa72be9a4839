// Which figures a worked solution has.
#include "views/redraws.h"

#include "drawing/stages.h"
#include "ohmfold/unknown.h"

namespace ohmfold::views {

namespace {

/// A reduction that starts with more parts than this is not drawn, however few are left later.
constexpr std::size_t kMostPlaced = 200;

bool is_drawn(const Scene& scene, const OutlineOptions& options) {
  const std::size_t parts = scene.reduction.start.alive_count();
  return options.sizes != nullptr && parts > 0 && parts <= kMostDrawn;
}

/// The start of a reduction without marks; nothing where it is too large.
std::optional<Figure> start_figure(const Scene& scene, const CaseTrace& trace,
                                   const OutlineOptions& options, bool annotated) {
  if (!is_drawn(scene, options)) return std::nullopt;
  const PictureOptions shown{.notation = options.notation,
                             .values = true,
                             .currents = annotated,
                             .potentials = annotated,
                             .marks = false};
  return Pictures(scene, trace, *options.sizes, shown).after(0);
}

}  // namespace

std::size_t alive_after(const Reduction& reduction, std::size_t steps) {
  std::size_t count = reduction.start.alive_count();
  for (std::size_t i = 0; i < steps; ++i) {
    const Step step = reduction.steps[i];
    count = count - step.takes.size() + drawing::parts_made(step);
  }
  return count;
}

Redrawn::Redrawn(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options)
    : scene_(scene), redraws_(options.redraws) {
  const bool any = options.sizes != nullptr && redraws_ != Redraws::none;
  if (!any || scene.reduction.start.alive_count() > kMostPlaced) return;
  pictures_.emplace(scene, trace, *options.sizes, PictureOptions{.notation = options.notation});
}

bool Redrawn::is_shown(std::size_t steps, bool ends_stage) const {
  return pictures_ && (redraws_ == Redraws::steps || ends_stage) &&
         alive_after(scene_.reduction, steps) <= kMostDrawn;
}

void Redrawn::add_start(Document& document) const {
  if (scene_.reduction.steps.empty() || !is_shown(0, true)) return;
  Figure figure = pictures_->after(0);
  figure.caption = say("The circuit at the start. What the first steps take is marked.");
  document.figure(std::move(figure));
}

void Redrawn::add_after(std::size_t steps, Document& document) const {
  document.figure(pictures_->after(steps));
}

void add_stated_figure(const Trace& trace, int figures, const OutlineOptions& options,
                       Document& document) {
  if (trace.cases.empty()) return;
  const CaseTrace& first = trace.cases.front();
  // Where a value had to be found, the circuit with letters is the one that was stated.
  const bool letters = first.unknown && !first.unknown->forms.empty();
  const CaseTrace& stated = letters ? first.unknown->forms.front() : first;
  if (first.unknown && !letters) return;
  const Scene scene(*trace.problem, stated.main, figures);
  std::optional<Figure> figure = start_figure(scene, stated, options, false);
  if (!figure) return;
  if (trace.cases.size() > 1 && !first.name.empty() && !first.unknown) {
    figure->caption = say("The circuit in case \"", first.name, "\".");
  }
  document.figure(std::move(*figure));
}

void add_case_figure(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                     Document& document) {
  const bool redrawn = options.redraws != Redraws::none && trace.shares.empty() &&
                       !trace.contradiction && !trace.only_answers &&
                       !scene.reduction.steps.empty();
  if (redrawn) return;
  std::optional<Figure> figure = start_figure(scene, trace, options, false);
  if (!figure) return;
  figure->caption = say("The circuit in case \"", trace.name, "\".");
  document.figure(std::move(*figure));
}

void add_annotated_figure(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                          Document& document) {
  if (has_symbolic_values(scene.problem)) return;
  std::optional<Figure> figure = start_figure(scene, trace, options, true);
  if (!figure) return;
  figure->caption = say("All currents and potentials in one figure.");
  document.figure(std::move(*figure));
}

}  // namespace ohmfold::views
