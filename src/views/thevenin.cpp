// A circuit as a battery in series with a resistance.
#include "views/thevenin.h"

#include <algorithm>
#include <utility>

#include "views/conditions.h"
#include "views/reduction_chapter.h"

namespace ohmfold::views {

namespace {

/// The two points, the one of higher potential first.
std::pair<PointId, PointId> plus_and_minus(const Answer& answer) {
  const auto& asked = std::get<TheveninBetween>(answer.question);
  const auto& voltage = answer.thevenin->voltage.value;
  if (voltage && voltage->number.is_negative()) return {asked.to, asked.from};
  return {asked.from, asked.to};
}

/// "a battery of 6 V, + at A, in series with 4 Ω"
Words equivalent_words(const Scene& scene, const Answer& answer) {
  const Thevenin& found = *answer.thevenin;
  Quantity size = *found.voltage.value;
  size.number = abs(size.number);
  const bool resists = !found.resistance.value->number.is_zero();
  const Words resistance =
      resists ? say(scene.brief(*found.resistance.value)) : say("no resistance");
  if (size.number.is_zero()) return say(resists ? "a resistor of " : "a wire: ", resistance);
  const Words battery = say("a battery of ", scene.brief(size), ", + at ",
                            scene.words.point(plus_and_minus(answer).first));
  if (!resists) return say(battery, ", without internal resistance");
  return say(battery, ", in series with ", resistance);
}

Words named(const Scene& scene, const char* what, const Expression& symbol,
            const Reading& reading) {
  if (!reading.value) {
    return say(what, " is not determined: ", why_undetermined(reading.why), ".");
  }
  Words words = say(what, " is ", formula_words(symbol), " = ", scene.value(*reading.value), ".");
  if (!reading.value->number.is_symbolic()) return words;
  const auto with = with_values(scene.problem, *reading.value);
  if (with) words.add(say(" With ", given_symbols(scene.problem), ": ", scene.value(*with), "."));
  return words;
}

/// "V_AB = V_A − V_B = 12 V − 4 V = 8 V"
Equation open_circuit_line(const Scene& scene, const CaseTrace& trace, const TheveninBetween& asked,
                           const Quantity& voltage) {
  const auto difference = [](Expression first, Expression second) {
    return sum({std::move(first), negative(std::move(second))});
  };
  Equation line{scene.symbols.between(asked.from, asked.to), {}, {}};
  line.links.push_back({Relation::equal, difference(scene.symbols.potential(asked.from),
                                                    scene.symbols.potential(asked.to))});
  const bool known = std::max(asked.from.index, asked.to.index) < trace.nodes.size() &&
                     trace.nodes[asked.from.index].potential.value &&
                     trace.nodes[asked.to.index].potential.value;
  if (known) {
    std::vector<Expression> values = scene.put_in({*trace.nodes[asked.from.index].potential.value,
                                                   *trace.nodes[asked.to.index].potential.value});
    Expression put_in = difference(std::move(values[0]), std::move(values[1]));
    if (!has_unwritten_amount(put_in)) line.links.push_back({Relation::equal, std::move(put_in)});
  }
  append_value(line, voltage, scene.figures);
  return line;
}

}  // namespace

Words thevenin_sentence(const Scene& scene, const Answer& answer) {
  const auto& asked = std::get<TheveninBetween>(answer.question);
  const Thevenin& found = *answer.thevenin;
  const Words between = say(scene.words.point(asked.from), " and ", scene.words.point(asked.to));
  Words words = say(
      "Thevenin equivalent between ", between, ": ",
      named(scene, "the open-circuit voltage", scene.symbols.between(asked.from, asked.to),
            found.voltage),
      " ",
      named(scene, "The resistance", scene.symbols.between(asked.from, asked.to, "R"),
            found.resistance),
      " ",
      named(scene, "The short-circuit current", {Symbol{"I", "sc"}}, found.short_circuit_current));
  if (found.voltage.value && found.resistance.value) {
    words.add(say(" Seen from ", between, ", the circuit acts like ",
                  equivalent_words(scene, answer), "."));
  }
  return words;
}

void add_thevenin(const Scene& scene, const CaseTrace& trace, const Answer& answer,
                  Document& document) {
  const auto& asked = std::get<TheveninBetween>(answer.question);
  const Thevenin& found = *answer.thevenin;
  const Expression voltage = scene.symbols.between(asked.from, asked.to);
  const Expression resistance = scene.symbols.between(asked.from, asked.to, "R");
  add_resistance(scene, resistance, found.resistance, document);
  if (!found.voltage.value) return;
  document.paragraph(
      say("With nothing joined to them, the two points have the voltage found above:"));
  document.working({open_circuit_line(scene, trace, asked, *found.voltage.value)});
  if (!found.resistance.value || !found.short_circuit_current.value) return;
  document.paragraph(say("A wire from ", scene.words.point(asked.from), " to ",
                         scene.words.point(asked.to), " would carry the short-circuit current:"));
  Equation shorted{{Symbol{"I", "sc"}}, {{Relation::equal, quotient(voltage, resistance)}}, {}};
  Expression values =
      quotient(scene.put_in(*found.voltage.value), scene.put_in(*found.resistance.value));
  if (!has_unwritten_amount(values)) {
    shorted.links.push_back({Relation::equal, std::move(values)});
  }
  append_value(shorted, *found.short_circuit_current.value, scene.figures);
  document.working({shorted});
}

Words short_answer(const Scene& scene, const Answer& answer) {
  if (!answer.thevenin) return scene.value(answer.value);
  return say(scene.value(answer.thevenin->voltage), "; ", scene.value(answer.thevenin->resistance));
}

}  // namespace ohmfold::views
