// What a reduction came to: one resistance, a short circuit, or nothing.
#include "ohmfold/symbolic.h"
#include "views/amounts.h"
#include "views/reduction_chapter.h"
#include "views/step_lines.h"

namespace ohmfold::views {

namespace {

/// The resistors that the combinations took from the file, or nothing where they are many.
std::vector<Quantity> combined_resistors(const Scene& scene) {
  std::vector<Quantity> values;
  const StepLog& steps = scene.reduction.steps;
  for (std::size_t i = 0; i < steps.size(); ++i) {
    if (!steps[i].makes.exists()) continue;
    for (const PartId part : steps[i].takes) {
      if (part.index < scene.problem.parts.size()) values.push_back(scene.resistance(part));
      if (values.size() > kMostTerms) return {};
    }
  }
  return values;
}

bool has_both_rules(const Reduction& reduction) {
  bool series = false;
  bool parallel = false;
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    series = series || reduction.steps[i].rule == RuleName::series;
    parallel = parallel || reduction.steps[i].rule == RuleName::parallel;
  }
  return series && parallel;
}

Words decimal(const Scene& scene, const Number& number) {
  const Quantity quantity(number, Unit::ohm);
  const bool rounded = decimal_beside(quantity, scene.figures) == Beside::rounded;
  return say(rounded ? "≈\u00A0" : "", scene.amount(quantity, Form::decimal));
}

/// Any network of some resistors lies between all of them in parallel and all of them in series.
Words extremes(const Scene& scene) {
  if (!has_both_rules(scene.reduction)) return {};
  const std::vector<Quantity> values = combined_resistors(scene);
  if (values.empty()) return {};
  Number series(0), conductance(0);
  for (const Quantity& value : values) {
    if (is_too_long_to_show(value.number) || symbols_of(value.number).size() > 1) return {};
    series += value.number;
    conductance += Number(1) / value.number;
  }
  return say("As it must, it lies between all of these parts in parallel (",
             decimal(scene, Number(1) / conductance), ") and all of them in series (",
             decimal(scene, series), ").");
}

Equation resistance_line(const Scene& scene, const Expression& symbol, const Quantity& value) {
  Equation line{symbol, {}, {}};
  if (scene.reduction.stop == Stop::reduced) {
    line.links.push_back({Relation::equal, scene.symbols.value(scene.reduction.root)});
    const auto whole = structure(scene);
    const bool single = scene.reduction.root.index < scene.problem.parts.size();
    if (whole && !single && has_both_rules(scene.reduction)) {
      line.links.push_back({Relation::equal, *whole});
    }
  }
  append_value(line, value, scene.figures);
  return line;
}

}  // namespace

void add_resistance(const Scene& scene, const Expression& symbol, const Reading& value,
                    Document& document) {
  const auto [first, second] = terminals(scene.reduction);
  if (!value.value) {
    document.paragraph(say("Between ", scene.words.point(first), " and ", scene.words.point(second),
                           " there is no resistance to give: ", why_undetermined(value.why), "."));
    return;
  }
  if (scene.reduction.stop == Stop::short_circuit) {
    document.paragraph(say("The two terminals have become one point: this is a short circuit."));
  } else {
    document.paragraph(say("Between ", scene.words.point(first), " and ", scene.words.point(second),
                           " the circuit acts like a single resistor:"));
  }
  document.working({resistance_line(scene, symbol, *value.value)});
  if (const Words words = extremes(scene); !words.empty()) document.paragraph(words);
}

void add_what_is_left(const Scene& scene, const CaseTrace& trace, Document& document) {
  const bool is_port = scene.reduction.source.exists() &&
                       scene.reduction.end.kind(scene.reduction.source) == ElementKind::port;
  switch (scene.reduction.stop) {
    case Stop::reduced:
    case Stop::short_circuit:
      break;
    case Stop::bridge:
      if (!is_port) {
        add_node_voltages(scene, trace, document);
        return;
      }
      document.heading(3, say("Equivalent resistance"));
      document.paragraph(bridge_words(scene));
      document.paragraph(port_words());
      break;
    case Stop::several_sources:
      add_node_voltages(scene, trace, document);
      return;
    case Stop::open:
      document.paragraph(
          say("No closed path is left: no current runs, and the resistance has no value."));
      return;
    case Stop::no_source:
      return;
  }
  if (!trace.equivalent) return;
  Expression symbol = Symbols::equivalent();
  if (is_port) {
    const Network& start = scene.reduction.start;
    const PartId port = scene.reduction.source;
    symbol = scene.symbols.between(start.from(port), start.to(port), "R");
  }
  if (scene.reduction.stop != Stop::bridge) document.heading(3, say("Equivalent resistance"));
  add_resistance(scene, symbol, *trace.equivalent, document);
}

}  // namespace ohmfold::views
