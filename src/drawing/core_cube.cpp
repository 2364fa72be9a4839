// Places the edges of a cube as everybody draws it: a square in front, one behind, slanted edges.
#include <algorithm>
#include <array>

#include "drawing/core.h"
#include "drawing/placement.h"

namespace ohmfold::drawing {
namespace {

constexpr std::uint32_t kCorners = 8;
constexpr int kSide = 4 * kCell;       // of a square
constexpr int kShift = 3 * kCell / 2;  // of the square behind, to the right and up

/// A corner by three bits, one for each direction; neighbours differ in one.
using Bits = std::uint32_t;
constexpr Bits kRight = 1, kDown = 2, kBehind = 4;

using Neighbours = std::array<std::vector<std::uint32_t>, kCorners>;

/// Nothing where the core has another number of edges at some corner.
std::optional<Neighbours> neighbours_of(const Core& core) {
  if (core.corners != kCorners || core.edges.size() != 12) return {};
  Neighbours neighbours;
  for (const CoreEdge& edge : core.edges) {
    if (!edge.single) return {};
    neighbours[edge.from].push_back(edge.to);
    neighbours[edge.to].push_back(edge.from);
  }
  for (auto& around : neighbours) {
    if (around.size() != 3) return {};
    std::sort(around.begin(), around.end());
  }
  return neighbours;
}

int count_bits(Bits bits) {
  return static_cast<int>((bits & 1U) + (bits >> 1U & 1U) + (bits >> 2U & 1U));
}

/// Each corner's bits as seen from corner 0. Nothing where the graph is not that of a cube.
std::optional<std::array<Bits, kCorners>> bits_of(const Core& core) {
  const std::optional<Neighbours> neighbours = neighbours_of(core);
  if (!neighbours) return {};
  std::array<Bits, kCorners> bits{};
  for (Bits i = 0; i < 3; ++i) bits[(*neighbours)[0][i]] = 1U << i;
  // A corner two edges away has two of those next to corner 0 around it; the farthest has none.
  for (std::uint32_t corner = 1; corner < kCorners; ++corner) {
    if (bits[corner] != 0) continue;
    Bits found = 0;
    for (const std::uint32_t other : (*neighbours)[corner]) {
      if (count_bits(bits[other]) == 1) found |= bits[other];
    }
    bits[corner] = found == 0 ? 7U : found;
  }
  std::array<bool, kCorners> seen{};
  for (const Bits corner : bits) seen[corner] = true;
  if (std::find(seen.begin(), seen.end(), false) != seen.end()) return {};
  for (const CoreEdge& edge : core.edges) {
    if (count_bits(bits[edge.from] ^ bits[edge.to]) != 1) return {};
  }
  return bits;
}

/// Where corner 0 goes, and the directions from it to corner 1, then the others.
struct View {
  Bits corner_0 = 0;
  std::array<Bits, 3> directions{};
};

/// Both corners lie on the outline: opposite ones at its far ends, others at the left.
View view_of(int distance) {
  if (distance == 3) return {kRight | kBehind, {kRight, kDown, kBehind}};
  if (distance == 2) return {0, {kDown, kRight, kBehind}};
  return {0, {kDown, kRight, kBehind}};
}

/// The same bits, turned into directions of the view.
std::array<Bits, kCorners> turned(const std::array<Bits, kCorners>& bits, const View& view) {
  std::array<Bits, 3> direction{};
  std::size_t used = 0;
  for (const bool to_corner_1 : {true, false}) {
    for (std::size_t i = 0; i < 3; ++i) {
      if (((bits[1] >> i & 1U) != 0) == to_corner_1) direction[i] = view.directions[used++];
    }
  }
  std::array<Bits, kCorners> result{};
  for (std::size_t corner = 0; corner < kCorners; ++corner) {
    result[corner] = view.corner_0;
    for (std::size_t i = 0; i < 3; ++i) {
      if ((bits[corner] >> i & 1U) != 0) result[corner] ^= direction[i];
    }
  }
  return result;
}

/// The wires to the left end here, so that there is room above and beside the cube.
constexpr Spot kMargin{kCell, kCell + kShift};
constexpr int kHeight = kMargin.y + kSide + kCell;

Spot spot_of(Bits corner) {
  Spot spot = kMargin;
  if ((corner & kRight) != 0) spot.x += kSide;
  if ((corner & kDown) != 0) spot.y += kSide;
  if ((corner & kBehind) != 0) spot = spot + Spot{kShift, -kShift};
  return spot;
}

/// How far from the left or upper end of an edge its symbol stands: away from the places where
/// edges cross, and from the symbol of the slanted edge at the lower left.
int seat_of(Bits low, Bits direction) {
  if (direction == kRight && low == 0) return 11 * kCell / 4;
  if (direction == kRight && low == kDown) return 5 * kCell / 2;
  if (direction == kRight && low == (kDown | kBehind)) return 5 * kCell / 4;
  if (direction == kDown && low == kRight) return 5 * kCell / 4;
  if (direction == kDown && low == kBehind) return 11 * kCell / 4;
  return kSide / 2;
}

EdgePlace place_edge(Bits from, Bits to) {
  const Bits direction = from ^ to;
  const Bits low = from & to;
  EdgePlace place;
  place.line = {spot_of(low), spot_of(low | direction)};
  if (direction != kBehind) {
    const int seat = seat_of(low, direction);
    const Spot step = direction == kRight ? Spot{1, 0} : Spot{0, 1};
    const auto at = [&](int distance) {
      return place.line.front() + Spot{step.x * distance, step.y * distance};
    };
    if (2 * seat != kSide) {
      place.line = {at(0), at(seat - kCell), at(seat + kCell), at(kSide)};
      place.seat = 1;
    }
  }
  if (from != low) std::reverse(place.line.begin(), place.line.end());
  place.top = place.line.front();
  return place;
}

/// From a corner on the outline to the left edge of the plan, above or below of all else.
std::vector<Segment> wires_to(Spot corner, int row, bool is_beside) {
  if (is_beside) return {{{0, corner.y}, corner}, {{0, corner.y}, {0, row}}};
  return {{{0, row}, {corner.x, row}}, {{corner.x, row}, corner}};
}

}  // namespace

std::optional<CorePlan> place_cube(const Core& core) {
  const std::optional<std::array<Bits, kCorners>> bits = bits_of(core);
  if (!bits) return {};
  const std::array<Bits, kCorners> places = turned(*bits, view_of(count_bits((*bits)[1])));
  CorePlan plan;
  plan.width = kMargin.x + kSide + kShift;
  plan.height = kHeight;
  plan.wires.resize(kCorners);
  for (const Bits place : places) plan.at.push_back(spot_of(place));
  plan.wires[0] = wires_to(plan.at[0], 0, (places[0] & kRight) == 0);
  plan.wires[1] = wires_to(plan.at[1], kHeight, (places[1] & kRight) == 0);
  for (const CoreEdge& edge : core.edges) {
    plan.edges.push_back(place_edge(places[edge.from], places[edge.to]));
  }
  return plan;
}

}  // namespace ohmfold::drawing
