// The bridge of four corners: a diamond, or two columns with a crosspiece.
#include "drawing/bridge.h"

#include <algorithm>
#include <array>

#include "drawing/placement.h"

namespace ohmfold::drawing {

namespace {

constexpr std::uint32_t kTop = 0;
constexpr std::uint32_t kBottom = 1;

/// The edges of a bridge by what they join.
struct Arms {
  std::uint32_t left = 0, right = 0;  ///< corners
  std::size_t top_left = 0, top_right = 0, bottom_left = 0, bottom_right = 0, across = 0;
};

/// The edge between two corners, or the count of edges.
std::size_t edge_between(const Core& core, std::uint32_t a, std::uint32_t b) {
  const auto found = std::find_if(core.edges.begin(), core.edges.end(), [&](const CoreEdge& edge) {
    return (edge.from == a && edge.to == b) || (edge.from == b && edge.to == a);
  });
  return static_cast<std::size_t>(found - core.edges.begin());
}

std::optional<Arms> arms_of(const Core& core) {
  if (core.corners != 4 || core.edges.size() != 5) return std::nullopt;
  if (edge_between(core, kTop, kBottom) < core.edges.size()) return std::nullopt;
  Arms arms{2, 3};
  // What comes first in the file stands at the left.
  if (edge_between(core, kTop, 3) < edge_between(core, kTop, 2)) std::swap(arms.left, arms.right);
  arms.top_left = edge_between(core, kTop, arms.left);
  arms.top_right = edge_between(core, kTop, arms.right);
  arms.bottom_left = edge_between(core, arms.left, kBottom);
  arms.bottom_right = edge_between(core, arms.right, kBottom);
  arms.across = edge_between(core, arms.left, arms.right);
  return arms;
}

CorePlan empty_plan(const Core& core) {
  CorePlan plan;
  plan.wires.resize(core.corners);
  plan.at.resize(core.corners);
  plan.edges.resize(core.edges.size());
  return plan;
}

CorePlan diamond(const Core& core, const Arms& arms) {
  CorePlan plan = empty_plan(core);
  constexpr int kHalf = kCell + kCell / 2;  // from the middle to each corner
  constexpr int kLeft = kCell;              // room for labels beside the left arms
  plan.width = kLeft + 2 * kHalf;
  plan.height = 2 * kHalf;
  plan.at[kTop] = {kLeft + kHalf, 0};
  plan.at[kBottom] = {kLeft + kHalf, plan.height};
  plan.at[arms.left] = {kLeft, kHalf};
  plan.at[arms.right] = {plan.width, kHalf};
  plan.wires[kTop] = {{{0, 0}, plan.at[kTop]}};
  plan.wires[kBottom] = {{{0, plan.height}, plan.at[kBottom]}};
  for (std::size_t i = 0; i < core.edges.size(); ++i) {
    plan.edges[i].line = {plan.at[core.edges[i].from], plan.at[core.edges[i].to]};
  }
  return plan;
}

/// Adds a wire that is more than a spot.
void add_wire(CorePlan& plan, std::uint32_t corner, Spot from, Spot to) {
  if (from != to) plan.wires[corner].push_back({from, to});
}

/// Puts the box of an edge into the stretch of a column from y0 to y1, in its middle.
void stand(const Core& core, CorePlan& plan, std::size_t edge, std::uint32_t above, int x, int y0,
           int y1) {
  const CoreEdge& one = core.edges[edge];
  const std::uint32_t below = one.from == above ? one.to : one.from;
  const int top = y0 + (y1 - y0 - one.height) / 2;
  plan.edges[edge].top = {x, top};
  plan.edges[edge].turned = one.from != above;
  add_wire(plan, above, {x, y0}, {x, top});
  add_wire(plan, below, {x, top + one.height}, {x, y1});
}

CorePlan two_columns(const Core& core, const Arms& arms) {
  CorePlan plan = empty_plan(core);
  const auto& edges = core.edges;
  const int middle = std::max(edges[arms.top_left].height, edges[arms.top_right].height);
  plan.height = middle + std::max(edges[arms.bottom_left].height, edges[arms.bottom_right].height);
  const int inner = std::max(edges[arms.top_left].width, edges[arms.bottom_left].width);
  const int right = inner + 2 * kCell;
  plan.width = right + std::max(edges[arms.top_right].width, edges[arms.bottom_right].width);
  stand(core, plan, arms.top_left, kTop, 0, 0, middle);
  stand(core, plan, arms.bottom_left, arms.left, 0, middle, plan.height);
  stand(core, plan, arms.top_right, kTop, right, 0, middle);
  stand(core, plan, arms.bottom_right, arms.right, right, middle, plan.height);
  add_wire(plan, kTop, {0, 0}, {right, 0});
  add_wire(plan, kBottom, {0, plan.height}, {right, plan.height});
  add_wire(plan, arms.left, {0, middle}, {inner, middle});
  plan.at[kTop] = {0, 0};
  plan.at[kBottom] = {0, plan.height};
  plan.at[arms.left] = {0, middle};
  plan.at[arms.right] = {right, middle};
  plan.edges[arms.across].line = {{inner, middle}, {right, middle}};
  if (edges[arms.across].from != arms.left) {
    std::reverse(plan.edges[arms.across].line.begin(), plan.edges[arms.across].line.end());
  }
  return plan;
}

}  // namespace

std::optional<CorePlan> place_bridge(const Core& core, bool slanted) {
  const std::optional<Arms> arms = arms_of(core);
  if (!arms || !core.edges[arms->across].single) return std::nullopt;
  const bool all_single = std::all_of(core.edges.begin(), core.edges.end(),
                                      [](const CoreEdge& edge) { return edge.single; });
  return all_single && slanted ? diamond(core, *arms) : two_columns(core, *arms);
}

CorePlan plan_core(const Core& core, bool slanted) {
  if (std::optional<CorePlan> bridge = place_bridge(core, slanted)) return *std::move(bridge);
  if (slanted) {
    if (std::optional<CorePlan> cube = place_cube(core)) return *std::move(cube);
  }
  if (std::optional<CorePlan> planar = place_planar(core)) return *std::move(planar);
  return place_crossing(core);
}

}  // namespace ohmfold::drawing
