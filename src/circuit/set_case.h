// From a problem and one of its cases to the network that the rules rewrite.
#pragma once

#include "ohmfold/network.h"
#include "ohmfold/problem.h"

namespace ohmfold {

/// The network of a case: parts keep the ids of the file, points too. A resistor of 0 ohm is a
/// wire.
[[nodiscard]] Network set_case(const Problem& problem, const Case& setting);

/// The resistors of a case between two points, every source lifted out with its internal
/// resistance. A port, the part after those of the file, marks the two points.
[[nodiscard]] Network resistors_between(const Problem& problem, const Case& setting, PointId first,
                                        PointId second);

/// What a battery or a source of current feeds: it is lifted out with its internal resistance and a
/// port put in its place, every other battery is replaced by its internal resistance, and every
/// other source of current by a gap. The port runs from the second point of the source to its
/// first: from the positive terminal of a battery to the negative one.
[[nodiscard]] Network seen_by(const Problem& problem, const Case& setting, PartId source);

/// The circuit as seen from two points: every battery replaced by its internal resistance, every
/// source of current by a gap, and a port from the first point to the second.
[[nodiscard]] Network seen_from(const Problem& problem, const Case& setting, PointId first,
                                PointId second);

/// The case with these sources alone: every other battery is replaced by its internal resistance,
/// every other source of current by a gap. Cost: linear in the parts, for each source that stays.
[[nodiscard]] Network with_sources(const Problem& problem, const Case& setting,
                                   const std::vector<PartId>& sources);

/// The point at 0 V: that of the file, else the negative terminal of the first battery, else the
/// first point.
[[nodiscard]] PointId ground_of(const Problem& problem);

}  // namespace ohmfold
