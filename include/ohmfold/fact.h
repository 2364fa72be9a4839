// Statements about a network: why a rule holds at a place, or why it does not; and the laws that
// lead back from a combined part to its own. Recorded by the rules, put into words by
// views/wording.cpp.
#pragma once

#include <cstdint>
#include <variant>

#include "ohmfold/ids.h"

namespace ohmfold {

// clang-format off: a list reads best with one fact a line.
// --- why a rule holds -------------------------------------------------------------------------
struct IsOpenSwitch {
  PartId part;
};  ///< an open switch joins nothing
struct IsVoltmeter {
  PartId part;
};  ///< an ideal voltmeter lets no current through
struct IsTakenOut {
  PartId part;
};  ///< the case removes this part
struct IsWire {
  PartId part;
};  ///< an ideal wire, or a resistor of zero ohm
struct IsClosedSwitch {
  PartId part;
};  ///< a closed switch is an ideal wire
struct IsAmmeter {
  PartId part;
};  ///< an ideal ammeter is an ideal wire
struct IsShorted {
  PartId part;
};  ///< the case puts a wire in place of this part
struct BothEndsOn {
  PartId part;
  PointId point;
};
struct HangsFrom {
  PointId point;
};  ///< the parts of the place meet the rest at this point alone
struct IsOnlyLink {
  PartId part;
};  ///< the only way between what lies on its two sides
struct JoinedToNothing {
};  ///< the place is a piece by itself, with no closed path through a source
struct MeetOnlyAt {
  PartId first, second;
  PointId point;
};  ///< nothing else is joined at this point
struct JoinSameTwoPoints {
  PointId first, second;
};

// --- why it does not --------------------------------------------------------------------------
struct TooFewParts {};  ///< a combination takes two or more
struct AlsoMeets {
  PartId part;
  PointId point;
};  ///< a third part is joined at this point
struct SourceBetween {
  PartId source;
  PointId point;
};  ///< the battery (or the two points asked about) is joined here
struct ShareNoPoint {
  PartId first, second;
};
struct EndsDiffer {
  PartId first, second;
  PointId first_end, second_end;
};
struct NotAResistor {
  PartId part;
};
struct IsNotAGap {
  PartId part;
};
struct IsNotAWire {
  PartId part;
};
struct EndsApart {
  PartId part;
  PointId first, second;
};  ///< its ends are two points, so it is not short-circuited
struct LiesOnALoop {
  PartId part;
};  ///< a closed path through a source runs through this part
struct ChainCloses {
  PartId part;
  PointId point;
};  ///< the chain comes back to where it began
struct NotABattery {
  PartId part;
};

// --- of sources -------------------------------------------------------------------------------
struct IsSwitchedOff {
  PartId part;
};  ///< an ideal source of current that gives none joins nothing
struct DriveAlike {
  PartId first, second;
};  ///< two batteries of one chain drive the current the same way
struct DriveAgainst {
  PartId first, second;
};  ///< two batteries of one chain drive the current opposite ways
// clang-format on

using Fact = std::variant<IsOpenSwitch, IsVoltmeter, IsTakenOut, IsWire, IsClosedSwitch, IsAmmeter,
                          IsShorted, BothEndsOn, HangsFrom, IsOnlyLink, JoinedToNothing, MeetOnlyAt,
                          JoinSameTwoPoints, TooFewParts, AlsoMeets, SourceBetween, ShareNoPoint,
                          EndsDiffer, NotAResistor, IsNotAGap, IsNotAWire, EndsApart, LiesOnALoop,
                          ChainCloses, NotABattery, IsSwitchedOff, DriveAlike, DriveAgainst>;

/// The laws by which a value is found. The first group leads back from a step to the parts it took;
/// the second starts the way back or fills in what belongs to no step.
enum class Law : std::uint8_t {
  same_current,    ///< parts in series carry one current
  same_voltage,    ///< parts in parallel have one voltage
  ohm_current,     ///< I = V / R
  ohm_voltage,     ///< V = I R
  current_cut,     ///< current law over a cut (at one point, or round a piece of the circuit)
  voltage_loop,    ///< voltage law round a loop; a difference of potentials
  zero_current,    ///< no closed path through a source
  zero_voltage,    ///< both ends on one point
  not_determined,  ///< the ideal model leaves it open
  source,          ///< I = E / (R + r): the whole network on its battery
  node_voltage,    ///< from the equations of node-voltage analysis
  power,           ///< P = V I
  terminal,        ///< V = E - I r: a battery with internal resistance
  given_current,   ///< the current of an ideal source of current is given
  superposition,   ///< the sum of what each source alone does
};

/// The ten laws of rewriting; the ones that this version has are listed in rules/table.cpp.
enum class RuleName : std::uint8_t {
  gap,         ///< open switch, voltmeter, part taken out: nothing is joined there
  ideal_wire,  ///< points joined by ideal wires are one point
  shorted,     ///< both ends on one point
  dead_end,    ///< no closed path through a source
  series,
  parallel,
  batteries,  ///< batteries of one chain act as one
};

}  // namespace ohmfold
