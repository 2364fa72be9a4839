// The circuit of a case as a person's own reduction has left it.
#include "ohmfold/error.h"
#include "ohmfold/render.h"
#include "views/document_text.h"
#include "views/judged_work.h"

namespace ohmfold {

namespace views {
namespace {

Words value_of(const CaseWords& words, PartId part) {
  const Network& network = words.standing.network;
  switch (network.kind(part)) {
    case ElementKind::resistor: {
      const auto resistance = words.resistance(part);
      return resistance ? words.value(*resistance) : say("not given yet");
    }
    case ElementKind::battery: {
      const BatteryData& battery = network.battery(part);
      const Words voltage = say(Amount{Quantity(battery.emf), Form::given, words.figures});
      if (battery.internal.is_zero()) return voltage;
      return say(voltage, ", internal ",
                 Amount{Quantity(battery.internal), Form::given, words.figures});
    }
    case ElementKind::current_source:
      return say(Amount{Quantity(network.driven_current(part)), Form::given, words.figures});
    case ElementKind::port:
      return say("asked for");
    case ElementKind::wire:
      return say("wire");
    case ElementKind::closed_switch:
      return say("switch, closed");
    case ElementKind::ammeter:
      return say("ammeter");
    case ElementKind::shorted:
      return say("wire in its place");
    case ElementKind::open_switch:
      return say("switch, open");
    case ElementKind::voltmeter:
      return say("voltmeter");
    case ElementKind::taken_out:
      return say("taken out");
    case ElementKind::switched_off:
      return say("gap in its place");
  }
  throw InternalError("a part of an unknown kind");
}

Document standing_document(const CaseWords& words) {
  const Network& network = words.standing.network;
  Table table;
  table.columns = {{say("Part"), Align::left},
                   {say("from"), Align::left},
                   {say("to"), Align::left},
                   {say("value"), Align::left}};
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part)) continue;
    table.rows.push_back({say(words.words.part(part)), say(words.words.point(network.from(part))),
                          say(words.words.point(network.to(part))), value_of(words, part)});
  }
  Document document;
  if (table.rows.empty()) {
    document.paragraph(say("No part is left."));
  } else {
    document.table(std::move(table));
  }
  if (words.standing.is_own) {
    document.paragraph(
        say("This is the circuit as the lines so far have left it. One of them is "
            "not right, so it is not the one of the problem."));
  }
  return document;
}

}  // namespace
}  // namespace views

std::string render_standing(const Exercise& exercise, const CaseStanding& standing,
                            const TextOptions& options) {
  const Problem& problem = *exercise.problem;
  const views::CaseWords words(problem, standing,
                               options.figures > 0 ? options.figures : problem.figures);
  return views::document_text(views::standing_document(words), options);
}

}  // namespace ohmfold
