// Currents, voltages and potentials as stated by a result, over any field, and the laws they obey.
#pragma once

#include <optional>
#include <vector>

#include "check/wiring.h"
#include "ohmfold/network.h"
#include "ohmfold/trace.h"

namespace ohmfold::check {

/// What a result states. Where it states nothing there is no value; lists may be shorter than the
/// network, or empty.
template <class Field>
struct Flow {
  using Stated = std::vector<std::optional<typename Field::Value>>;

  Stated current, voltage, power;  ///< by PartId
  Stated potential;                ///< by PointId
};

/// The results of a case as elements of the field. Cost: linear in their bits modulo a prime.
template <class Field>
[[nodiscard]] Flow<Field> state_flow(const Field& field, const CaseTrace& results,
                                     const Network& start);

/// Currents that satisfy the current law wherever that is possible: the currents given, and for the
/// `unknown` parts what a spanning forest of them must carry (nothing in the others).
template <class Field>
[[nodiscard]] std::vector<typename Field::Value> settle_currents(
    const Field& field, const Network& network, const std::vector<PartId>& unknown,
    std::vector<typename Field::Value> currents);

/// Kirchhoff's laws, Ohm's law, and the power balance, as documented in laws.h. The number and
/// order of the checks depends on the structure alone. Cost: linear in parts and points, but for
/// the lists of up to `most_single` loops.
template <class Field>
[[nodiscard]] std::vector<Check> check_flow(const Field& field, const Network& network,
                                            const Wiring& wiring, const Flow<Field>& flow,
                                            std::size_t most_single);

/// The value stated for a part or point, where there is one.
template <class Stated>
[[nodiscard]] auto stated(const Stated& values, std::uint32_t index) ->
    typename Stated::value_type {
  return index < values.size() ? values[index] : std::nullopt;
}

}  // namespace ohmfold::check
