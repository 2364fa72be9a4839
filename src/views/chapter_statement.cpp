// The beginning of a worked solution: the problem, what is given, what is asked, what is assumed.
#include <algorithm>

#include "ohmfold/solve.h"
#include "views/amounts.h"
#include "views/chapter.h"
#include "views/conditions.h"
#include "views/letter_code.h"
#include "views/questions.h"
#include "views/redraws.h"

namespace ohmfold::views {

namespace {

bool any(const Problem& problem, PartKind kind) {
  return std::any_of(problem.parts.begin(), problem.parts.end(),
                     [&](const Part& part) { return part.kind == kind; });
}

std::size_t sources_of(const Problem& problem) {
  return static_cast<std::size_t>(
      std::count_if(problem.parts.begin(), problem.parts.end(),
                    [](const Part& part) { return is_source(part.kind); }));
}

Words given_value(const Part& part, int figures, Notation notation) {
  if (part.unknown) {
    if (part.internal.is_zero()) return say("unknown");
    return say("unknown, internal ", Amount{{part.internal, Unit::ohm}, Form::given, figures});
  }
  switch (part.kind) {
    case PartKind::battery: {
      const Words words = say(Amount{{part.value, Unit::volt}, Form::given, figures});
      if (part.internal.is_zero()) return words;
      return say(words, ", internal ", Amount{{part.internal, Unit::ohm}, Form::given, figures});
    }
    case PartKind::resistor:
    case PartKind::lamp:
      return resistance_words(part.value, figures, notation);
    case PartKind::current_source:
      return say(Amount{{part.value, Unit::ampere}, Form::given, figures});
    case PartKind::wire:
    case PartKind::knife_switch:
    case PartKind::ammeter:
    case PartKind::voltmeter:
      return {};
  }
  return {};
}

/// What is known of the circuit at work.
void add_known(const Problem& problem, int figures, Document& document) {
  if (!problem.givens.empty()) document.paragraph(say("Known of the circuit at work:"));
  for (const Given& given : problem.givens) {
    document.entry(
        "", say(question_words(given.question, problem).capitalised(), " is ",
                Amount{{given.value, unit_of(given.question, problem)}, Form::given, figures},
                given.held_in ? " in case \"" + given.held_in->label + "\"" : "", "."));
  }
}

void add_given(const Problem& problem, int figures, Notation notation, Document& document) {
  document.heading(2, say("Given"));
  Table table;
  for (const char* heading : {"Part", "Kind", "Value", "From", "To"}) {
    table.columns.push_back({say(heading), Align::left});
  }
  const Selection selection = select(problem.parts.size());
  for (std::size_t i = 0; i < problem.parts.size(); ++i) {
    if (!selection.shows(i)) continue;
    const Part& part = problem.parts[i];
    const bool battery = part.kind == PartKind::battery;
    table.rows.push_back({say(Run(PartName{part.name})), say(keyword(part.kind)),
                          given_value(part, figures, notation),
                          say(Run(PointName{problem.point(part.from)}), battery ? " (−)" : ""),
                          say(Run(PointName{problem.point(part.to)}), battery ? " (+)" : "")});
    if (i + 1 == selection.first && selection.left_out() > 0) {
      table.rows.push_back({say("…"), {}, {}, {}, {}});
    }
  }
  document.table(std::move(table));
  add_symbols(problem, document);
  add_known(problem, figures, document);
  if (selection.left_out() > 0) {
    document.paragraph(say("Of ", count_text(selection.count), " parts, ",
                           count_text(selection.left_out()), " are not listed here."));
  }
}

Words setting_words(const Problem& problem, const Setting& setting) {
  const Part& part = problem.part(setting.part);
  const Words name =
      say(part.kind == PartKind::knife_switch ? "switch " : "",
          part.kind == PartKind::battery ? "battery " : "",
          part.kind == PartKind::current_source ? "source " : "", Run(PartName{part.name}));
  switch (setting.kind) {
    case SettingKind::open:
      return say(name, " is open");
    case SettingKind::closed:
      return say(name, " is closed");
    case SettingKind::removed:
      return say(name, " is taken out");
    case SettingKind::shorted:
      return say("a wire stands in place of ", name);
    case SettingKind::value:
      return say(name, " has ",
                 Amount{{setting.value, unit_of_value(part.kind)}, Form::given, problem.figures});
  }
  return {};
}

/// With `found`, also the values that solving has put in.
Words settings_words(const Problem& problem, const Case& setting, bool found) {
  std::vector<Words> settings;
  for (const Setting& one : setting.settings) {
    if (found || !one.found) settings.push_back(setting_words(problem, one));
  }
  return settings.empty() ? say("everything as listed") : listed(settings);
}

/// The cases of the file: where an unknown can have several values, each of them is there once.
std::vector<const Case*> stated_cases(const Problem& problem) {
  std::vector<const Case*> cases;
  for (const Case& one : problem.cases) {
    if (one.solution < 2) cases.push_back(&one);
  }
  return cases;
}

void add_case_list(const Problem& problem, Document& document) {
  const std::vector<const Case*> cases = stated_cases(problem);
  if (cases.size() < 2) return;
  document.heading(2, say("Cases"));
  const Selection selection = select(cases.size());
  for (std::size_t i = 0; i < cases.size(); ++i) {
    if (!selection.shows(i)) continue;
    document.entry(std::to_string(i + 1),
                   say(cases[i]->label, ": ", sentence(settings_words(problem, *cases[i], false))));
  }
}

void add_asked(const Scene& scene, Document& document) {
  const Problem& problem = scene.problem;
  document.heading(2, say(stated_cases(problem).size() < 2 ? "Asked" : "Asked, for each case"));
  if (problem.questions.empty()) {
    if (sources_of(problem) > kMostSeenUnasked) {
      document.paragraph(say("The current, the voltage and the power of every part."));
      return;
    }
    document.paragraph(say("The equivalent resistance that each ",
                           any(problem, PartKind::battery) ? "battery" : "source",
                           " sees, and the current, the voltage and the "
                           "power of every part."));
    return;
  }
  const Selection selection = select(problem.questions.size());
  for (std::size_t i = 0; i < problem.questions.size(); ++i) {
    if (!selection.shows(i)) continue;
    const Question& question = problem.questions[i];
    Words words = question_words(question, problem).capitalised();
    if (!std::holds_alternative<ValueOf>(question)) {
      words.add(say(", ", formula_words(question_symbol(question, scene.symbols))));
    }
    if (const auto* between = std::get_if<VoltageBetween>(&question)) {
      const Expression first = scene.symbols.potential(between->from);
      const Expression second = scene.symbols.potential(between->to);
      words.add(say(" = ", formula_words(sum({first, negative(second)}))));
    }
    if (std::holds_alternative<TheveninBetween>(question)) {
      words.add(say(", in V, with its resistance, in Ω, and the short-circuit current, in A."));
      document.entry(std::to_string(i + 1), words);
      continue;
    }
    document.entry(std::to_string(i + 1),
                   say(words, ", in ", symbol(unit_of(question, problem), Letters::unicode), "."));
  }
  if (selection.left_out() > 0) {
    document.paragraph(say(count_text(selection.left_out()), " questions are not listed here."));
  }
}

void add_battery_assumptions(const Problem& problem, Document& document) {
  std::vector<Words> ideal, real;
  for (const Part& part : problem.parts) {
    if (part.kind != PartKind::battery) continue;
    (part.internal.is_zero() ? ideal : real).push_back(say(Run(PartName{part.name})));
  }
  if (!ideal.empty()) {
    document.entry("", say(ideal.size() == 1 ? "Battery " : "Batteries ", listed(ideal),
                           ideal.size() == 1 ? " keeps its" : " keep their",
                           " voltage whatever the current: no internal resistance."));
  }
  if (!real.empty()) {
    document.entry("", say(real.size() == 1 ? "Battery " : "Batteries ", listed(real),
                           real.size() == 1 ? " acts" : " act",
                           " like an ideal battery with the internal resistance in series."));
  }
}

void add_current_source_assumptions(const Problem& problem, Document& document) {
  std::vector<Words> sources;
  for (const Part& part : problem.parts) {
    if (part.kind == PartKind::current_source) sources.push_back(say(Run(PartName{part.name})));
  }
  if (sources.empty()) return;
  const bool one = sources.size() == 1;
  document.entry(
      "", say(one ? "Source " : "Sources ", listed(sources), one ? " keeps its" : " keep their",
              " current whatever the voltage; it runs through the source from the first "
              "point to the second."));
}

void add_sign_convention(const Problem& problem, Document& document) {
  const bool battery = any(problem, PartKind::battery);
  document.entry("", say("Currents and voltages count from a part's first point to its second, as "
                         "listed above",
                         battery ? "; for a battery, the current out of its + terminal, and the "
                                   "voltage of + against −."
                                 : "."));
  if (!battery && !problem.ground) return;
  const auto first = std::find_if(problem.parts.begin(), problem.parts.end(),
                                  [](const Part& part) { return part.kind == PartKind::battery; });
  const PointId ground = problem.ground ? *problem.ground : first->from;
  document.entry("", say("Potentials are counted from point ",
                         Run(PointName{problem.point(ground)}), ", which is at 0\u00A0V."));
}

void add_assumptions(const Problem& problem, Document& document) {
  document.heading(2, say("Assumed"));
  add_battery_assumptions(problem, document);
  add_current_source_assumptions(problem, document);
  const bool switches = any(problem, PartKind::knife_switch);
  const bool voltmeters = any(problem, PartKind::voltmeter);
  std::vector<Words> wires{say("wires")};
  if (switches) wires.push_back(say("closed switches"));
  if (any(problem, PartKind::ammeter)) wires.push_back(say("ammeters"));
  document.entry("", say(listed(wires).capitalised(), " have no resistance."));
  if (switches || voltmeters) {
    document.entry("",
                   say("No current runs through ", switches ? "an open switch" : "",
                       switches && voltmeters ? " or " : "", voltmeters ? "a voltmeter" : "", "."));
  }
  const bool driven = any(problem, PartKind::battery) || any(problem, PartKind::current_source);
  if (driven || problem.ground) add_sign_convention(problem, document);
}

}  // namespace

Words title_of(const Problem& problem) {
  return say(problem.title.empty() ? std::string("A network of resistors") : problem.title);
}

void add_title(const Trace& trace, const OutlineOptions& options, Document& document) {
  const Words title = title_of(*trace.problem);
  document.heading(1, options.number == 0
                          ? title
                          : say("Problem ", std::to_string(options.number), ": ", title));
}

void add_statement(const Trace& trace, int figures, const OutlineOptions& options,
                   Document& document) {
  const Problem& problem = *trace.problem;
  add_title(trace, options, document);
  for (const std::string& text : problem.texts) document.paragraph(say(text));
  add_stated_figure(trace, figures, options, document);
  add_given(problem, figures, options.notation, document);
  const bool solved = options.content == Content::solution;
  if (trace.values_put_in_first && solved) document.paragraph(put_in_first_words());
  add_case_list(problem, document);
  if (trace.cases.empty()) return;
  add_asked(Scene(problem, trace.cases.front().main, figures), document);
  add_assumptions(problem, document);
}

void add_case_heading(const Problem& problem, const CaseTrace& trace, std::size_t number,
                      Document& document, const char* title) {
  if (trace.name.empty() || number >= problem.cases.size()) {
    document.heading(2, say(title));
    return;
  }
  document.heading(2, problem.cases.size() < 2
                          ? say(title, ": ", trace.name)
                          : say("Case ", count_text(number + 1), ": ", trace.name));
  const Case& setting = problem.cases[number];
  const std::size_t from = document.blocks.size();
  document.paragraph(sentence(settings_words(problem, setting, true)));
  const bool tells = std::any_of(setting.settings.begin(), setting.settings.end(),
                                 [](const Setting& one) { return one.found; });
  if (tells) document.cover(from, say("What was found"));
}

}  // namespace ohmfold::views
