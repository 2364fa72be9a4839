// Single figures of a solved problem, in each form.
#include "ohmfold/draw.h"

#include "drawing/box_text.h"
#include "drawing/svg.h"
#include "drawing/tikz.h"
#include "ohmfold/error.h"
#include "views/pictures.h"

namespace ohmfold {

namespace {

views::Figure figure_of(const Trace& trace, std::size_t index, std::size_t steps,
                        const DrawOptions& options, const drawing::Sizes& sizes) {
  ensure(index < trace.cases.size(), "a figure of a case that is not there");
  const CaseTrace& one = trace.cases[index];
  const int figures = options.figures > 0 ? options.figures : trace.problem->figures;
  const views::Scene scene(*trace.problem, one.main, figures);
  return views::Pictures(scene, one, sizes,
                         {.values = options.values,
                          .currents = options.currents,
                          .potentials = options.potentials,
                          .marks = options.marks})
      .after(steps);
}

}  // namespace

std::string draw_svg(const Trace& trace, std::size_t index, std::size_t steps,
                     const DrawOptions& options) {
  const views::Figure figure = figure_of(trace, index, steps, options, drawing::paper_sizes());
  return drawing::svg(figure.schematic, {figure.title, figure.description, "figure"},
                      options.symbols, true);
}

std::string draw_tikz(const Trace& trace, std::size_t index, std::size_t steps,
                      const DrawOptions& options) {
  const views::Figure figure = figure_of(trace, index, steps, options, drawing::paper_sizes());
  return drawing::tikz(figure.schematic, options.symbols, true);
}

std::string draw_text(const Trace& trace, std::size_t index, std::size_t steps,
                      const DrawOptions& options, Letters letters, bool colour) {
  const views::Figure figure = figure_of(trace, index, steps, options, drawing::terminal_sizes());
  return drawing::box_text(figure.schematic, options.symbols, letters, colour);
}

}  // namespace ohmfold
