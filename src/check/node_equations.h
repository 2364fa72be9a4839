// The equations of node-voltage analysis, solved by sparse elimination over any field.
#pragma once

#include <optional>
#include <vector>

#include "check/wiring.h"
#include "ohmfold/network.h"

namespace ohmfold::check {

/// A current of 1 A fed into one point and drawn from another.
struct Injection {
  PointId in, out;
};

/// The potentials of all points, where one point of each connected piece is at zero.
///
/// Points joined by wires and ideal batteries form one node with known differences inside (a
/// supernode); between nodes lie conductances, and a battery with internal resistance is one with a
/// current fed in at both ends. Where ideal batteries contradict each other, those that close a
/// loop are left out. Nothing where more than `most_core` nodes are left when the equations have
/// become dense. Cost: near linear for series-parallel networks, else as Elimination.
template <class Field>
[[nodiscard]] std::optional<std::vector<typename Field::Value>> node_potentials(
    const Field& field, const Network& network, const Wiring& wiring,
    const std::optional<Injection>& injection, std::size_t most_core);

/// The currents of all parts at these potentials, by PartId: those of ideal parts that lie on
/// closed paths of ideal parts are one choice of many (see Wiring::is_open). Cost: linear.
template <class Field>
[[nodiscard]] std::vector<typename Field::Value> branch_currents(
    const Field& field, const Network& network, const Wiring& wiring,
    const std::vector<typename Field::Value>& potential);

}  // namespace ohmfold::check
