// Currents and voltages of all parts, over the rationals or modulo a prime.
#pragma once

#include <vector>

#include "ohmfold/error.h"
#include "ohmfold/trace.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// Arithmetic with exact rationals, in the form that Flow and its algorithms expect of a field.
struct ExactField {
  using Value = Number;

  [[nodiscard]] Number from(const Number& number) const { return number; }
  [[nodiscard]] Number from(const Ratio& ratio) const { return ratio.lowest_terms(); }
  [[nodiscard]] Number add(const Number& a, const Number& b) const { return a + b; }
  [[nodiscard]] Number subtract(const Number& a, const Number& b) const { return a - b; }
  [[nodiscard]] Number multiply(const Number& a, const Number& b) const { return a * b; }
  /// Requires b other than zero.
  [[nodiscard]] Number divide(const Number& a, const Number& b) const { return a / b; }
};

/// What flows: for each part that ever was in a reduction, its current (from its first point to its
/// second) and its voltage (first less second; for a source second less first).
template <class Field>
struct Flow {
  std::vector<typename Field::Value> current, voltage;
  std::vector<bool> open_share;  ///< its current is not determined (see ideal_currents.h)

  Flow(const Field& field, std::size_t parts)
      : current(parts, field.from(Number(0))),
        voltage(parts, field.from(Number(0))),
        open_share(parts, false) {}
};

/// The resistances of all parts that ever were, as elements of the field; those that were let go
/// are worked out from the steps. Cost: linear in the digits.
template <class Field>
std::vector<typename Field::Value> resistances(const Reduction& reduction, const Field& field) {
  const Network& end = reduction.end;
  std::vector<typename Field::Value> values;
  values.reserve(end.part_count());
  for (std::uint32_t i = 0; i < end.part_count(); ++i) {
    values.push_back(field.from(end.resistance(PartId{i})));
  }
  const auto one = field.from(Number(1));
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    const Step step = reduction.steps[i];
    if (!step.makes.exists()) continue;
    for (std::size_t k = 0; k < step.adds.size(); ++k) {
      values[step.makes.index + k] = field.from(step.adds[k].resistance);
    }
    if (!step.adds.empty() || end.knows_resistance(step.makes)) continue;
    const bool sum = step.formula == Formula::sum;
    auto total = field.from(Number(0));
    for (const PartId part : step.takes) {
      const auto& value = values[part.index];
      total = field.add(total, sum ? value : field.divide(one, value));
    }
    values[step.makes.index] = sum ? total : field.divide(one, total);
  }
  return values;
}

}  // namespace ohmfold
