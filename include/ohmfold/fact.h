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
struct CarryOneCurrent {
  PartId first, second;
};  ///< what passes the one passes the other, whatever lies between them

struct FormDelta {
  PointId a, b, c;
};  ///< each part joins two of these three points
struct AllMeetAt {
  PointId point;
};  ///< the parts of the place meet here, and nothing else is joined
struct Balanced {
  PartId part;
  PartId first_near, first_far;    ///< at one end of the part: to one point, to another
  PartId second_near, second_far;  ///< at its other end, to the same two points
};  ///< first_near / first_far = second_near / second_far: no voltage across the part
struct Symmetric {
  PointId first, second;
};  ///< a symmetry that keeps both terminals moves one to the other; the next Moves facts tell it
struct InTheMiddle {
  PointId point;
};  ///< a symmetry that exchanges the terminals keeps this point; the next Moves facts tell it
struct Moves {
  PointId from, to;
};  ///< the symmetry of the fact before moves this point there; points not named stay
struct SamePotential {
  PointId first, second;
};  ///< found by solving the network: no balance and no symmetry says so

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
struct WrongNumber {
  std::uint32_t wanted;
  bool or_more;
};  ///< the rule takes so many parts
struct FormNoDelta {
  PartId part;
};  ///< this part does not close a triangle with the others
struct EndTogether {
  PartId first, second;
  PointId point;
};  ///< two arms of a star end at one point
struct PotentialsDiffer {
  PointId higher, lower;
};  ///< as the source drives them
struct NotOneSource {
};  ///< there is no source, or more than one, or something else than resistors beside it
struct NotFed {
  PointId point;
};                         ///< no resistors join this point to the source
struct TooLargeToTell {};  ///< finding the potentials would take too long
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

using Fact = std::variant<
    IsOpenSwitch, IsVoltmeter, IsTakenOut, IsWire, IsClosedSwitch, IsAmmeter, IsShorted, BothEndsOn,
    HangsFrom, IsOnlyLink, JoinedToNothing, MeetOnlyAt, JoinSameTwoPoints, TooFewParts, AlsoMeets,
    SourceBetween, ShareNoPoint, EndsDiffer, NotAResistor, IsNotAGap, IsNotAWire, EndsApart,
    LiesOnALoop, ChainCloses, FormDelta, AllMeetAt, Balanced, Symmetric, InTheMiddle, Moves,
    SamePotential, WrongNumber, FormNoDelta, EndTogether, PotentialsDiffer, NotOneSource, NotFed,
    TooLargeToTell, NotABattery, IsSwitchedOff, DriveAlike, DriveAgainst, CarryOneCurrent>;

/// The laws by which a value is found. The first group leads back from a step to the parts it took;
/// the second starts the way back or fills in what belongs to no step.
enum class Law : std::uint8_t {
  same_current,      ///< parts in series carry one current
  same_voltage,      ///< parts in parallel have one voltage
  ohm_current,       ///< I = V / R
  ohm_voltage,       ///< V = I R
  current_cut,       ///< current law over a cut (at one point, or round a piece of the circuit)
  voltage_loop,      ///< voltage law round a loop; a difference of potentials
  zero_current,      ///< no closed path through a source
  zero_voltage,      ///< both ends on one point
  not_determined,    ///< the ideal model leaves it open
  source,            ///< I = E / (R + r): the whole network on its battery
  node_voltage,      ///< from the equations of node-voltage analysis
  power,             ///< P = V I
  terminal,          ///< V = E - I r: a battery with internal resistance
  two_arms,          ///< from a star back to its delta: a side's voltage along two arms
  sides_at_end,      ///< from a mesh back to its star: an arm's current out of the sides at its end
  equal_potentials,  ///< no voltage between points at the same potential
  given_current,     ///< the current of an ideal source of current is given
  superposition,     ///< the sum of what each source alone does
};

/// The laws of rewriting, as listed in rules/table.cpp.
enum class RuleName : std::uint8_t {
  gap,         ///< open switch, voltmeter, part taken out: nothing is joined there
  ideal_wire,  ///< points joined by ideal wires are one point
  shorted,     ///< both ends on one point
  dead_end,    ///< no closed path through a source
  series,
  parallel,
  equal_potentials,  ///< points at one potential become one; what lies between carries nothing
  delta_star,        ///< three parts between three points become three arms of a star
  star_delta,        ///< three parts at one point become the sides of a delta
  node_elimination,  ///< four or more parts at one point become a mesh
  batteries,         ///< batteries of one chain act as one
};

}  // namespace ohmfold
