// The results of the way back as lines of working.
#include "views/return_lines.h"

#include <algorithm>

#include "ohmfold/error.h"
#include "views/amounts.h"
#include "views/cut_signs.h"

namespace ohmfold::views {

namespace {

std::uint64_t key(Subject subject, std::uint32_t index) {
  return (static_cast<std::uint64_t>(subject) << 32U) | index;
}

std::uint32_t index_of(const Return& item) {
  return item.subject == Subject::potential ? item.point.index : item.part.index;
}

/// Two expressions of the same form, one with symbols and one with values.
template <class Build, class A, class B>
auto both(Build build, const A& symbol, const B& other_symbol,
          const std::optional<Expression>& value, const std::optional<Expression>& other_value) {
  std::optional<Expression> values;
  if (value && other_value) values = build(*value, *other_value);
  return std::pair(build(symbol, other_symbol), values);
}

Expression difference_of(Expression first, Expression second) {
  return sum({std::move(first), negative(std::move(second))});
}
Expression sum_of(Expression first, Expression second) {
  return sum({std::move(first), std::move(second)});
}

}  // namespace

ReturnLines::ReturnLines(const Scene& scene, const CaseTrace& trace)
    : scene_(scene), trace_(trace) {}

void ReturnLines::pass(const Return& item) {
  if (item.value.value) known_[key(item.subject, index_of(item))] = *item.value.value;
}

bool ReturnLines::is_ready(const Return& item) const {
  return std::all_of(item.from.begin(), item.from.end(), [&](PartId part) {
    return known_.contains(key(Subject::current, part.index));
  });
}

void ReturnLines::know(const NodeResult& node) {
  if (node.potential.value) {
    known_[key(Subject::potential, node.point.index)] = *node.potential.value;
  }
}

Equation ReturnLines::line(const Return& item) {
  Equation equation{left_side(item), {}, margin(item)};
  if (const auto how = derivation(item)) {
    equation.links.push_back({Relation::equal, how->formula});
    const bool single = std::holds_alternative<Symbol>(how->formula.node) ||
                        std::holds_alternative<Negative>(how->formula.node);
    if (how->values && !single && !has_unwritten_amount(*how->values)) {
      equation.links.push_back({Relation::equal, *how->values});
    }
  }
  append_value(equation, *item.value.value, scene_.figures);
  pass(item);
  return equation;
}

Expression ReturnLines::symbol(Subject subject, PartId part) const {
  switch (subject) {
    case Subject::current:
      return scene_.symbols.current(part);
    case Subject::voltage:
      return scene_.symbols.voltage(part);
    case Subject::power:
      return scene_.symbols.power(part);
    case Subject::resistance:
      return scene_.symbols.value(part);
    case Subject::potential:
      break;
  }
  throw InternalError("a potential of a part");
}

Expression ReturnLines::left_side(const Return& item) const {
  if (item.subject == Subject::potential) return scene_.symbols.potential(item.point);
  if (item.subject == Subject::resistance && !item.part.exists()) return Symbols::equivalent();
  return symbol(item.subject, item.part);
}

std::optional<Quantity> ReturnLines::known(Subject subject, std::uint32_t index) const {
  const auto at = known_.find(key(subject, index));
  if (at != known_.end()) return at->second;
  if (subject == Subject::current && index < trace_.branches.size()) {
    return trace_.branches[index].current.value;
  }
  return std::nullopt;
}

std::optional<Expression> ReturnLines::known_value(Subject subject, std::uint32_t index) const {
  const auto value = known(subject, index);
  return value ? std::optional(scene_.put_in(*value)) : std::nullopt;
}

/// Is its part counted in the other direction than the part that it comes from?
bool ReturnLines::is_turned(const Return& item) const {
  if (item.from.empty() || !item.value.value) return false;
  if (item.law != Law::same_current && item.law != Law::same_voltage) return false;
  const auto value = known(item.subject, item.from.front().index);
  return value && value->number != item.value.value->number;
}

Words ReturnLines::margin(const Return& item) const {
  if (is_turned(item)) return say(law_title(item.law), ", counted the other way");
  const bool at_one_point =
      item.step != 0 && scene_.reduction.steps[item.step - 1].rule == RuleName::shorted;
  if (item.law == Law::zero_current && at_one_point) return say("no voltage, no current");
  return say(law_title(item.law));
}

std::optional<ReturnLines::Derivation> ReturnLines::derivation(const Return& item) const {
  switch (item.law) {
    case Law::same_current:
    case Law::same_voltage:
      return from_made(item);
    case Law::ohm_current:
    case Law::ohm_voltage:
      return ohm(item);
    case Law::current_cut:
      return cut(item);
    case Law::voltage_loop:
      return item.subject == Subject::potential ? potential(item) : difference(item);
    case Law::source:
      return source(item);
    case Law::terminal:
      return terminal(item);
    case Law::power:
      return power(item);
    case Law::zero_current:
    case Law::zero_voltage:
    case Law::not_determined:
      return std::nullopt;
    case Law::node_voltage:
      return item.subject == Subject::voltage ? difference(item) : std::nullopt;
  }
  throw InternalError("a return with an unknown law");
}

std::optional<ReturnLines::Derivation> ReturnLines::from_made(const Return& item) const {
  if (item.from.empty()) return std::nullopt;
  const PartId made = item.from.front();
  const Expression formula = symbol(item.subject, made);
  return Derivation{is_turned(item) ? negative(formula) : formula, {}};
}

std::optional<ReturnLines::Derivation> ReturnLines::ohm(const Return& item) const {
  const Network& network = scene_.reduction.end;
  const PartId part = item.part;
  if (network.kind(part) == ElementKind::battery) {
    return Derivation{scene_.symbols.value(part), {}};
  }
  if (network.kind(part) != ElementKind::resistor) return std::nullopt;
  const Expression resistance = scene_.put_in(scene_.resistance(part));
  const bool to_current = item.law == Law::ohm_current;
  const Subject other = to_current ? Subject::voltage : Subject::current;
  auto [formula, values] =
      both(to_current ? quotient : product, symbol(other, part), scene_.symbols.value(part),
           known_value(other, part.index), std::optional(resistance));
  return Derivation{std::move(formula), std::move(values)};
}

std::optional<ReturnLines::Derivation> ReturnLines::source(const Return& item) const {
  const Network& network = scene_.reduction.start;
  if (network.kind(item.part) != ElementKind::battery) return std::nullopt;
  const BatteryData& battery = network.battery(item.part);
  if (!trace_.equivalent || !trace_.equivalent->value) return std::nullopt;
  const bool shorted = scene_.reduction.stop == Stop::short_circuit;
  std::vector<Expression> symbols, values;
  if (!shorted) {
    symbols.push_back(Symbols::equivalent());
    values.push_back(scene_.put_in(*trace_.equivalent->value));
  }
  if (!battery.internal.is_zero()) {
    symbols.push_back(scene_.symbols.internal(item.part));
    values.push_back(scene_.put_in(battery.internal));
  }
  if (symbols.empty()) return std::nullopt;
  return Derivation{quotient(scene_.symbols.value(item.part), sum(std::move(symbols))),
                    quotient(scene_.put_in(battery.emf), sum(std::move(values)))};
}

std::optional<ReturnLines::Derivation> ReturnLines::terminal(const Return& item) const {
  const Network& network = scene_.reduction.start;
  if (network.kind(item.part) != ElementKind::battery) return std::nullopt;
  const BatteryData& battery = network.battery(item.part);
  const Expression emf = scene_.symbols.value(item.part);
  if (item.subject == Subject::current) {
    if (battery.internal.is_zero()) return std::nullopt;
    std::optional<Expression> put_in;
    if (const auto voltage = known_value(Subject::voltage, item.part.index)) {
      put_in = quotient(difference_of(scene_.put_in(battery.emf), *voltage),
                        scene_.put_in(battery.internal));
    }
    return Derivation{quotient(difference_of(emf, scene_.symbols.voltage(item.part)),
                               scene_.symbols.internal(item.part)),
                      std::move(put_in)};
  }
  if (battery.internal.is_zero()) return Derivation{emf, {}};
  const auto current = known_value(Subject::current, item.part.index);
  std::optional<Expression> values;
  if (current) {
    values = difference_of(scene_.put_in(battery.emf),
                           product(*current, scene_.put_in(battery.internal)));
  }
  return Derivation{difference_of(emf, product(scene_.symbols.current(item.part),
                                               scene_.symbols.internal(item.part))),
                    std::move(values)};
}

std::optional<ReturnLines::Derivation> ReturnLines::power(const Return& item) const {
  auto [formula, values] =
      both(product, symbol(Subject::voltage, item.part), symbol(Subject::current, item.part),
           known_value(Subject::voltage, item.part.index),
           known_value(Subject::current, item.part.index));
  return Derivation{std::move(formula), std::move(values)};
}

/// V_A = V_T − V_R1: from the point at the other end of the part in `from`.
std::optional<ReturnLines::Derivation> ReturnLines::potential(const Return& item) const {
  if (item.from.size() != 1) return std::nullopt;
  const Network& network = scene_.reduction.start;
  const PartId by = item.from.front();
  const bool at_second = network.to(by) == item.point;
  const PointId other = at_second ? network.from(by) : network.to(by);
  // A battery's voltage is second less first, that of all other parts first less second.
  const bool adds = at_second == is_source(network.kind(by));
  auto [formula, values] = both(
      adds ? sum_of : difference_of, scene_.symbols.potential(other), symbol(Subject::voltage, by),
      known_value(Subject::potential, other.index), known_value(Subject::voltage, by.index));
  return Derivation{std::move(formula), std::move(values)};
}

/// V_S = V_A − V_B: between the ends of a part.
std::optional<ReturnLines::Derivation> ReturnLines::difference(const Return& item) const {
  const Network& network =
      item.law == Law::node_voltage ? scene_.reduction.end : scene_.reduction.start;
  PointId first = network.from(item.part);
  PointId second = network.to(item.part);
  if (is_source(network.kind(item.part))) std::swap(first, second);
  auto [formula, values] = both(
      difference_of, scene_.symbols.potential(first), scene_.symbols.potential(second),
      known_value(Subject::potential, first.index), known_value(Subject::potential, second.index));
  return Derivation{std::move(formula), std::move(values)};
}

/// The other parts that are left at one end of a part that no rule took; at the end where all their
/// currents have been found, if there is one.
std::vector<PartId> ReturnLines::beside(PartId part) const {
  const Network& end = scene_.reduction.end;
  std::vector<PartId> others;
  if (!end.is_alive(part)) return others;
  for (const PointId point : {end.from(part), end.to(part)}) {
    others.clear();
    bool all_found = true;
    end.for_each_at(point, [&](PartId other) {
      if (other == part) return;
      others.push_back(other);
      all_found = all_found && known_.contains(key(Subject::current, other.index));
    });
    if (all_found) break;
  }
  std::sort(others.begin(), others.end());
  return others;
}

std::optional<ReturnLines::Derivation> ReturnLines::cut(const Return& item) const {
  const Network& network = item.from.empty() ? scene_.reduction.end : scene_.reduction.start;
  const std::vector<PartId> others = item.from.empty() ? beside(item.part) : item.from;
  const auto subtracted = cut_signs(network, item.part, others);
  if (!subtracted || others.empty()) return std::nullopt;
  std::vector<Expression> symbols, values;
  const auto put = [&](std::vector<Expression>& terms, Expression term, bool minus) {
    terms.push_back(minus ? negative(std::move(term)) : std::move(term));
  };
  Number total(0);
  // What is added comes first: "I_R1 − I_R2" rather than "−I_R2 + I_R1".
  for (const bool minus : {false, true}) {
    for (std::size_t i = 0; i < others.size(); ++i) {
      if ((*subtracted)[i] != minus) continue;
      const auto value = known(Subject::current, others[i].index);
      if (!value || (value->number.is_symbolic() && is_too_long_to_show(value->number))) {
        return std::nullopt;
      }
      total = minus ? total - value->number : total + value->number;
      put(symbols, scene_.symbols.current(others[i]), minus);
      put(values, scene_.put_in(*value), minus);
    }
  }
  if (total != item.value.value->number) return std::nullopt;
  return Derivation{sum(std::move(symbols)), sum(std::move(values))};
}

}  // namespace ohmfold::views
