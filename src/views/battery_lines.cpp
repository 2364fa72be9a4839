// Voltages with their signs, and internal resistances.
#include "views/battery_lines.h"

#include <algorithm>

#include "circuit/battery_direction.h"

namespace ohmfold::views {

namespace {

/// Terms that are subtracted stand last, so that a line begins with a plus.
std::vector<std::size_t> plus_first(const Scene& scene, const Step& step) {
  std::vector<std::size_t> order;
  for (const bool along : {true, false}) {
    for (std::size_t i = 0; i < step.takes.size(); ++i) {
      if (battery_runs_along(scene.reduction.end, step, i) == along) order.push_back(i);
    }
  }
  return order;
}

Equation emf_line(const Scene& scene, const Step& step) {
  std::vector<Expression> symbols;
  std::vector<Quantity> values;
  std::vector<bool> minus;
  for (const std::size_t i : plus_first(scene, step)) {
    const PartId part = step.takes[i];
    minus.push_back(!battery_runs_along(scene.reduction.end, step, i));
    symbols.push_back(scene.symbols.value(part));
    values.emplace_back(scene.reduction.end.battery(part).emf);
  }
  std::vector<Expression> numbers = scene.put_in(values);
  for (std::size_t i = 0; i < minus.size(); ++i) {
    if (!minus[i]) continue;
    symbols[i] = negative(std::move(symbols[i]));
    numbers[i] = negative(std::move(numbers[i]));
  }
  Equation line{scene.symbols.value(step.makes), {{Relation::equal, sum(std::move(symbols))}}, {}};
  Expression put_in = sum(std::move(numbers));
  if (!has_unwritten_amount(put_in)) line.links.push_back({Relation::equal, std::move(put_in)});
  append_value(line, scene.reduction.end.battery(step.makes).emf, scene.figures);
  return line;
}

Equation internal_line(const Scene& scene, const Step& step) {
  std::vector<Expression> symbols;
  std::vector<Quantity> values;
  for (const PartId part : step.takes) {
    const Resistance& internal = scene.reduction.end.battery(part).internal;
    if (internal.is_zero()) continue;
    symbols.push_back(scene.symbols.internal(part));
    values.emplace_back(internal);
  }
  const bool several = symbols.size() > 1;
  Equation line{
      scene.symbols.internal(step.makes), {{Relation::equal, sum(std::move(symbols))}}, {}};
  Expression put_in = sum(scene.put_in(values));
  if (several && !has_unwritten_amount(put_in)) {
    line.links.push_back({Relation::equal, std::move(put_in)});
  }
  append_value(line, scene.reduction.end.battery(step.makes).internal, scene.figures);
  return line;
}

}  // namespace

std::vector<Equation> battery_lines(const Scene& scene, const Step& step) {
  std::vector<Equation> lines{emf_line(scene, step)};
  if (!scene.reduction.end.battery(step.makes).internal.is_zero()) {
    lines.push_back(internal_line(scene, step));
  }
  return lines;
}

}  // namespace ohmfold::views
