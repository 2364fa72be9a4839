// Does a placement, or the plan of a core, hold what placement.h promises? Looked at from scratch:
// shares nothing with the layout.
#pragma once

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <string>
#include <vector>

#include "drawing/core.h"
#include "drawing/placement.h"
#include "drawing/sound_lines.h"
#include "ohmfold/network.h"

namespace ohmfold::drawing {
namespace sound {

using Faults = std::vector<std::string>;

/// Must it be drawn? What a case takes out is left out.
inline bool is_drawn(const Network& network, PartId part) {
  return network.is_alive(part) && network.kind(part) != ElementKind::port &&
         network.kind(part) != ElementKind::taken_out;
}

class PlacementCheck {
 public:
  PlacementCheck(const Network& network, const Placement& placement)
      : network_(network), placement_(placement) {}

  Faults faults() {
    look_at_points();
    look_at_parts();
    look_at_terminals();
    const Faults meetings = Meetings(owners_, seats_).faults();
    faults_.insert(faults_.end(), meetings.begin(), meetings.end());
    return faults_;
  }

 private:
  static std::string name_of(PartId part) { return "part " + std::to_string(part.index); }
  static std::string name_of(PointId point) { return "point " + std::to_string(point.index); }

  void look_at_points() {
    std::map<PointId, bool> expected;
    for (std::uint32_t i = 0; i < network_.part_count(); ++i) {
      const PartId part{i};
      const bool is_port = network_.is_alive(part) && network_.kind(part) == ElementKind::port;
      if (!is_port && !is_drawn(network_, part)) continue;
      expected[network_.from(part)] = expected[network_.to(part)] = false;
    }
    PointId last;
    for (const PlacedPoint& placed : placement_.points) {
      if (last.exists() && !(last < placed.point)) faults_.push_back("points are out of order");
      last = placed.point;
      points_[placed.point] = &placed;
      const auto found = expected.find(placed.point);
      if (found == expected.end()) {
        faults_.push_back("nothing is joined at " + name_of(placed.point));
      } else {
        found->second = true;
      }
      look_at_wires(placed);
    }
    for (const auto& [point, seen] : expected) {
      if (!seen) faults_.push_back("is missing: " + name_of(point));
    }
  }

  void look_at_wires(const PlacedPoint& placed) {
    const std::string name = name_of(placed.point);
    for (const Segment& wire : placed.wires) {
      if (wire.from == wire.to) faults_.push_back("a wire has no length: " + name);
    }
    if (!hang_together(placed.wires)) faults_.push_back("wires fall apart: " + name);
    if (!placed.wires.empty() && !lies_on_any(placed.at, placed.wires)) {
      faults_.push_back("its name is away from its wires: " + name);
    }
    owners_.push_back({name, placed.wires, true, placed.point.index, {}});
  }

  void look_at_parts() {
    std::vector<PartId> expected, seen;
    for (std::uint32_t i = 0; i < network_.part_count(); ++i) {
      if (is_drawn(network_, PartId{i})) expected.push_back(PartId{i});
    }
    for (const PlacedPart& placed : placement_.parts) seen.push_back(placed.part);
    if (seen != expected) faults_.push_back("parts are missing, come twice or out of order");
    for (const PlacedPart& placed : placement_.parts) {
      if (placed.part.index < network_.part_count()) look_at_part(placed);
    }
  }

  void look_at_part(const PlacedPart& placed) {
    const std::string name = name_of(placed.part);
    const std::vector<Segment> lines = lines_of(placed.path, name, faults_);
    if (lines.empty()) return;
    if (placed.seat >= lines.size()) {
      faults_.push_back("has no seat: " + name);
    } else {
      const Segment& line = lines[placed.seat];
      seats_.push_back({owners_.size(), placed.seat, line.from + line.to});
    }
    const PointId from = network_.from(placed.part);
    const PointId to = network_.to(placed.part);
    if (!is_at(placed.path.front(), from))
      faults_.push_back("does not start at its point: " + name);
    if (!is_at(placed.path.back(), to)) faults_.push_back("does not end at its point: " + name);
    owners_.push_back({name,
                       lines,
                       false,
                       0,
                       {{placed.path.front(), from.index}, {placed.path.back(), to.index}}});
  }

  const PlacedPoint* find(PointId point) const {
    const auto found = points_.find(point);
    return found == points_.end() ? nullptr : found->second;
  }
  bool is_at(Spot spot, PointId point) const {
    const PlacedPoint* placed = find(point);
    if (placed == nullptr) return false;
    return placed->wires.empty() ? spot == placed->at : lies_on_any(spot, placed->wires);
  }

  void look_at_terminals() {
    std::multiset<PointId> expected, seen;
    for (std::uint32_t i = 0; i < network_.part_count(); ++i) {
      const PartId part{i};
      if (!network_.is_alive(part) || network_.kind(part) != ElementKind::port) continue;
      expected.insert(network_.from(part));
      expected.insert(network_.to(part));
    }
    std::set<Spot> spots;
    for (const Terminal& terminal : placement_.terminals) {
      seen.insert(terminal.point);
      if (!spots.insert(terminal.at).second) faults_.push_back("two terminals are at one spot");
      look_at_terminal(terminal);
    }
    if (seen != expected) faults_.push_back("terminals are not those of the port");
  }

  void look_at_terminal(const Terminal& terminal) {
    const PlacedPoint* placed = find(terminal.point);
    bool is_end_of_wire = false;
    for (const Segment& wire : placed ? placed->wires : std::vector<Segment>()) {
      is_end_of_wire = is_end_of_wire || is_end(terminal.at, wire);
    }
    if (!is_end_of_wire) faults_.push_back("a terminal is not the end of a wire of its point");
    for (const PlacedPart& part : placement_.parts) {
      if (part.path.empty()) continue;
      if (part.path.front() == terminal.at || part.path.back() == terminal.at) {
        faults_.push_back("a part ends at a terminal: " + name_of(part.part));
      }
    }
  }

  const Network& network_;
  const Placement& placement_;
  std::map<PointId, const PlacedPoint*> points_;
  std::vector<Owner> owners_;
  std::vector<Seat> seats_;
  Faults faults_;
};

class CoreCheck {
 public:
  CoreCheck(const Core& core, const CorePlan& plan) : core_(core), plan_(plan) {}

  Faults faults() {
    if (plan_.wires.size() != core_.corners || plan_.at.size() != core_.corners ||
        plan_.edges.size() != core_.edges.size()) {
      return {"corners or edges are missing"};
    }
    look_at_corners();
    for (std::size_t i = 0; i < core_.edges.size(); ++i) look_at_edge(i);
    for (const Owner& owner : owners_) {
      for (const Segment& line : owner.lines) stay_within(line, owner.name);
    }
    for (std::size_t i = 0; i < core_.edges.size(); ++i) {
      if (plan_.edges[i].line.empty()) look_into_box(i);
    }
    const Faults meetings = Meetings(owners_, seats_).faults();
    faults_.insert(faults_.end(), meetings.begin(), meetings.end());
    return faults_;
  }

 private:
  static std::string name_of_corner(std::uint32_t i) { return "corner " + std::to_string(i); }
  static std::string name_of_edge(std::size_t i) { return "edge " + std::to_string(i); }

  void look_at_corners() {
    for (std::uint32_t i = 0; i < core_.corners; ++i) {
      const std::vector<Segment>& wires = plan_.wires[i];
      const std::string name = name_of_corner(i);
      for (const Segment& wire : wires) {
        if (wire.from == wire.to) faults_.push_back("a wire has no length: " + name);
      }
      if (!hang_together(wires)) faults_.push_back("wires fall apart: " + name);
      if (!wires.empty() && !lies_on_any(plan_.at[i], wires)) {
        faults_.push_back("its name is away from its wires: " + name);
      }
      owners_.push_back({name, wires, true, i, {}});
    }
    if (!is_at({0, 0}, 0)) faults_.push_back("corner 0 does not lead to the top left");
    if (!is_at({0, plan_.height}, 1))
      faults_.push_back("corner 1 does not lead to the bottom left");
  }

  bool is_at(Spot spot, std::uint32_t corner) const {
    const std::vector<Segment>& wires = plan_.wires[corner];
    return wires.empty() ? spot == plan_.at[corner] : lies_on_any(spot, wires);
  }

  void look_at_edge(std::size_t i) {
    const CoreEdge& edge = core_.edges[i];
    const EdgePlace& place = plan_.edges[i];
    const std::string name = name_of_edge(i);
    Path path = place.line;
    std::size_t seat = place.seat;
    if (path.empty()) {
      const int height = edge.single ? kCell : edge.height;
      path = {place.top, place.top + Spot{0, height}};
      if (place.turned) std::swap(path[0], path[1]);
      seat = 0;
    } else if (!edge.single) {
      faults_.push_back("a box lies along a line: " + name);
    }
    const std::vector<Segment> lines = lines_of(path, name, faults_);
    if (lines.empty()) return;
    if (seat >= lines.size()) {
      faults_.push_back("has no seat: " + name);
    } else if (edge.single) {
      seats_.push_back({owners_.size(), seat, lines[seat].from + lines[seat].to});
    }
    if (!is_at(path.front(), edge.from)) faults_.push_back("does not start at its corner: " + name);
    if (!is_at(path.back(), edge.to)) faults_.push_back("does not end at its corner: " + name);
    owners_.push_back({name, lines, false, 0, {{path.front(), edge.from}, {path.back(), edge.to}}});
  }

  void stay_within(const Segment& line, const std::string& name) {
    for (const Spot spot : {line.from, line.to}) {
      if (spot.x < 0 || spot.y < 0 || spot.x > plan_.width || spot.y > plan_.height) {
        faults_.push_back("leaves the plan: " + name + " " + text(line));
      }
    }
  }

  /// Nothing else comes as near as half a cell to a box, but the wires of its corners along its top
  /// and its bottom, and other parts at its corners above and below.
  void look_into_box(std::size_t i) {
    const CoreEdge& edge = core_.edges[i];
    const EdgePlace& place = plan_.edges[i];
    const Spot size{edge.single ? 0 : edge.width, edge.single ? kCell : edge.height};
    const Box box{place.top, place.top + size};
    stay_within({box.min, box.max}, name_of_edge(i));
    for (const Owner& owner : owners_) {
      if (owner.name == name_of_edge(i)) continue;
      Spot margin{kCell / 2, kCell / 2};
      if (owner.is_point && (owner.point == edge.from || owner.point == edge.to)) margin = {0, 0};
      for (const auto& [end, corner] : owner.joints) {
        if (corner == edge.from || corner == edge.to) margin.y = 0;
      }
      for (const Segment& line : owner.lines) {
        const bool is_inside = enters(line, {box.min - margin, box.max + margin});
        if (is_inside) {
          faults_.push_back("comes into the box of " + name_of_edge(i) + ": " + owner.name + " " +
                            text(line));
        }
      }
    }
  }

  /// Does it pass through the inside of the box, or along the line of its ports?
  static bool enters(const Segment& line, const Box& box) {
    const auto [left, right] = std::minmax(line.from.x, line.to.x);
    const auto [top, bottom] = std::minmax(line.from.y, line.to.y);
    if (top >= box.max.y || bottom <= box.min.y) return false;
    if (box.min.x == box.max.x) return left <= box.min.x && right >= box.max.x;
    return left < box.max.x && right > box.min.x;
  }

  const Core& core_;
  const CorePlan& plan_;
  std::vector<Owner> owners_;
  std::vector<Seat> seats_;
  Faults faults_;
};

}  // namespace sound

/// What is wrong with a placement of a network; empty where all holds.
inline sound::Faults faults_of(const Network& network, const Placement& placement) {
  return sound::PlacementCheck(network, placement).faults();
}
inline sound::Faults faults_of(const Core& core, const CorePlan& plan) {
  return sound::CoreCheck(core, plan).faults();
}

inline void expect_sound(const Network& network, const Placement& placement) {
  EXPECT_THAT(faults_of(network, placement), ::testing::IsEmpty());
}
inline void expect_sound(const Core& core, const CorePlan& plan) {
  EXPECT_THAT(faults_of(core, plan), ::testing::IsEmpty());
}

}  // namespace ohmfold::drawing
