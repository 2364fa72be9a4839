// What is shown where series and parallel come to an end: the embedded bridge that proves it, and
// why each pair of parts that looks like one is none.
#pragma once

#include <array>
#include <cstdint>
#include <vector>

#include "ohmfold/fact.h"
#include "ohmfold/ids.h"

namespace ohmfold {

/// Proof that a network is not series-parallel as seen by its sources: four corners, each joined
/// with each other one by a path of its own, six in all, that meet in the corners only (a
/// subdivision of the complete graph K4; Duffin 1965). Every source, or the port between the two
/// points asked about, is a part like others here. Points that ideal wires join are one point,
/// called by the first of them in the file; the wires themselves are in no path.
struct Certificate {
  struct Path {
    PointId from, to;           ///< two of the corners
    std::vector<PartId> parts;  ///< of the file (or the port), in order from `from` to `to`
  };

  std::array<PointId, 4> corners;  ///< in file order
  std::array<Path, 6> paths;       ///< corners 0-1, 0-2, 0-3, 1-2, 1-3, 2-3
};

/// What makes a pair of resistors look like one in series or in parallel.
enum class Likeness : std::uint8_t {
  share_a_point,
  opposite_sides,  ///< opposite sides of a square of four parts
  same_value,      ///< two that are alike in this and share no point
};

/// Two resistors, and why they are neither in series nor in parallel.
struct TemptingPair {
  PartId first, second;
  Likeness likeness{};
  PointId shared;                              ///< with Likeness::share_a_point
  std::vector<Fact> not_series, not_parallel;  ///< what the rules' own judge says
};

/// What is left of a case where neither series nor parallel fits any more.
struct Standstill {
  struct Left {
    PartId part;
    PointId from, to;
  };

  std::size_t steps = 0;            ///< of the main reduction, made before
  std::vector<Left> left;           ///< parts there, sources included, by id
  std::vector<TemptingPair> pairs;  ///< by likeness, then by part; the first ones, where many
  std::size_t more_pairs = 0;       ///< pairs of these kinds that are not listed
};

}  // namespace ohmfold
