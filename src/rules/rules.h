// The rules by name, for the table; each is defined in a file of its own.
#pragma once

#include "ohmfold/rule.h"

namespace ohmfold {

/// Open switch, voltmeter, part taken out: joins nothing, so it can be left out.
[[nodiscard]] Rule gap_rule();
/// Points joined by ideal wires, closed switches and ammeters are one point.
[[nodiscard]] Rule ideal_wire_rule();
/// A resistor with both ends on one point has no voltage and carries nothing.
[[nodiscard]] Rule shorted_rule();
/// Parts that lie on no closed path through a source carry nothing.
[[nodiscard]] Rule dead_end_rule();
/// Resistors of one chain, with nothing else joined between them, carry one current: R = Ra + Rb +
/// …
[[nodiscard]] Rule series_rule();
/// Resistors that join the same two points have one voltage: 1/R = 1/Ra + 1/Rb + …
[[nodiscard]] Rule parallel_rule();
/// Points at the same potential, as the one source drives them, may be joined; a part between them
/// carries nothing.
[[nodiscard]] Rule equal_potentials_rule();
/// A delta of three resistors becomes a star: Ra = Rab Rca / (Rab + Rbc + Rca).
[[nodiscard]] Rule delta_star_rule();
/// A star of three resistors becomes a delta: Rab = (Ra Rb + Rb Rc + Rc Ra) / Rc.
[[nodiscard]] Rule star_delta_rule();
/// A star of four resistors or more becomes a mesh: Rab = Ra Rb (1/Ra + 1/Rb + …).
[[nodiscard]] Rule node_elimination_rule();
/// Batteries of one chain, resistors between them or not, carry one current: E = Ea + Eb − …, r =
/// ra + rb + …
[[nodiscard]] Rule battery_chain_rule();

}  // namespace ohmfold
