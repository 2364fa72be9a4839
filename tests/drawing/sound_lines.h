// Which lines of a drawing touch where they must not: plain geometry in whole numbers, which knows
// nothing of how they were placed.
#pragma once

#include <algorithm>
#include <cstdint>
#include <map>
#include <set>
#include <string>
#include <utility>
#include <vector>

#include "drawing/placement.h"

namespace ohmfold::drawing::sound {

inline std::string text(Spot s) {
  return "(" + std::to_string(s.x) + ", " + std::to_string(s.y) + ")";
}
inline std::string text(const Segment& s) {
  return text(s.from) + "-" + text(s.to);
}

inline Spot direction(const Segment& s) {
  return s.to - s.from;
}

inline bool lies_on(Spot spot, const Segment& s) {
  const Spot to_spot = spot - s.from;
  return cross(direction(s), to_spot) == 0 && dot(direction(s), to_spot) >= 0 &&
         dot(direction(s), to_spot) <= dot(direction(s), direction(s));
}

inline bool is_end(Spot spot, const Segment& s) {
  return spot == s.from || spot == s.to;
}

/// Do they have more than one spot in common?
inline bool share_stretch(const Segment& a, const Segment& b) {
  if (cross(direction(a), direction(b)) != 0 || cross(direction(a), b.from - a.from) != 0) {
    return false;
  }
  const auto [low, high] = std::minmax(a.from, a.to);
  const auto [other_low, other_high] = std::minmax(b.from, b.to);
  return std::max(low, other_low) < std::min(high, other_high);
}

/// The spots at which an end of one lies on the other.
inline std::vector<Spot> touches(const Segment& a, const Segment& b) {
  std::set<Spot> found;
  for (const Spot end : {a.from, a.to}) {
    if (lies_on(end, b)) found.insert(end);
  }
  for (const Spot end : {b.from, b.to}) {
    if (lies_on(end, a)) found.insert(end);
  }
  return {found.begin(), found.end()};
}

/// Do they cross in the middle of both?
inline bool cross_over(const Segment& a, const Segment& b) {
  const auto side = [](const Segment& s, Spot spot) {
    const std::int64_t c = cross(direction(s), spot - s.from);
    return c > 0 ? 1 : c < 0 ? -1 : 0;
  };
  return side(a, b.from) * side(a, b.to) < 0 && side(b, a.from) * side(b, a.to) < 0;
}

/// Is `middle`, which counts half units, closer to the line than so many units?
inline bool is_closer(Spot middle, const Segment& line, int units) {
  const Segment twice{line.from + line.from, line.to + line.to};
  const Spot along = direction(twice);
  const std::int64_t length = dot(along, along);
  const std::int64_t least = std::int64_t{4} * units * units;  // a square, of half units
  const std::int64_t reach = dot(along, middle - twice.from);
  if (reach <= 0) return dot(middle - twice.from, middle - twice.from) < least;
  if (reach >= length) return dot(middle - twice.to, middle - twice.to) < least;
  const std::int64_t away = cross(along, middle - twice.from);
  return away * away < least * length;
}

/// A part, a box or a point: what lines belong to.
struct Owner {
  std::string name;
  std::vector<Segment> lines;
  bool is_point = false;
  std::uint32_t point = 0;                             ///< of a point: itself
  std::vector<std::pair<Spot, std::uint32_t>> joints;  ///< of a part: its ends and their points
};

/// Does it belong to some point at this spot? Then others of that point may be there, too.
inline std::set<std::uint32_t> points_at(const Owner& owner, Spot spot) {
  std::set<std::uint32_t> points;
  if (owner.is_point) points.insert(owner.point);
  for (const auto& [end, point] : owner.joints) {
    if (end == spot) points.insert(point);
  }
  return points;
}

inline bool are_joined_at(const Owner& a, const Owner& b, Spot spot) {
  const std::set<std::uint32_t> of_b = points_at(b, spot);
  for (const std::uint32_t point : points_at(a, spot)) {
    if (of_b.contains(point)) return true;
  }
  return false;
}

/// A symbol: the middle of a line, in half units.
struct Seat {
  std::size_t owner = 0, line = 0;
  Spot middle;
};

/// Lines by the squares of the plane that they pass, so that only near ones are compared.
class Squares {
 public:
  struct Line {
    std::size_t owner = 0, index = 0;
    friend auto operator<=>(const Line&, const Line&) = default;
  };

  void add(Line line, const Segment& s) {
    for_each(s, 0, [&](Spot square) { lines_[square].push_back(line); });
  }
  std::set<Line> near(const Segment& s, int distance) const {
    std::set<Line> found;
    for_each(s, distance, [&](Spot square) {
      const auto lines = lines_.find(square);
      if (lines != lines_.end()) found.insert(lines->second.begin(), lines->second.end());
    });
    return found;
  }

 private:
  static int square_of(int x) { return x >= 0 ? x / kSide : -((-x + kSide - 1) / kSide); }
  template <class Visit>
  static void for_each(const Segment& s, int distance, Visit visit) {
    const auto [left, right] = std::minmax(s.from.x, s.to.x);
    const auto [top, bottom] = std::minmax(s.from.y, s.to.y);
    for (int x = square_of(left - distance); x <= square_of(right + distance); ++x) {
      for (int y = square_of(top - distance); y <= square_of(bottom + distance); ++y) {
        visit(Spot{x, y});
      }
    }
  }

  static constexpr int kSide = 16;
  std::map<Spot, std::vector<Line>> lines_;
};

/// The faults of lines that meet: shared stretches, ends on foreign lines, slanted crossings, lines
/// and seats too near to a seat.
class Meetings {
 public:
  Meetings(const std::vector<Owner>& owners, const std::vector<Seat>& seats)
      : owners_(owners), seats_(seats) {
    for (std::size_t owner = 0; owner < owners.size(); ++owner) {
      for (std::size_t i = 0; i < owners[owner].lines.size(); ++i) {
        squares_.add({owner, i}, owners[owner].lines[i]);
      }
    }
  }

  std::vector<std::string> faults() {
    for (std::size_t owner = 0; owner < owners_.size(); ++owner) {
      for (const Segment& line : owners_[owner].lines) {
        for (const auto& other : squares_.near(line, 0)) {
          if (other.owner > owner) compare(owner, line, other);
        }
      }
      if (!owners_[owner].is_point) compare_with_itself(owners_[owner]);
    }
    for (const Seat& seat : seats_) look_round(seat);
    compare_seats();
    return faults_;
  }

 private:
  void compare(std::size_t owner, const Segment& line, const Squares::Line& other) {
    const Owner& a = owners_[owner];
    const Owner& b = owners_[other.owner];
    const Segment& foreign = b.lines[other.index];
    const std::string both = a.name + " " + text(line) + " and " + b.name + " " + text(foreign);
    if (share_stretch(line, foreign)) {
      faults_.push_back("a stretch is shared: " + both);
      return;
    }
    for (const Spot spot : touches(line, foreign)) {
      if (!are_joined_at(a, b, spot)) faults_.push_back("an end lies on a line: " + both);
    }
    if (cross_over(line, foreign) && dot(direction(line), direction(foreign)) != 0) {
      faults_.push_back("a crossing is slanted: " + both);
    }
  }

  void compare_with_itself(const Owner& owner) {
    for (std::size_t i = 0; i < owner.lines.size(); ++i) {
      for (std::size_t k = i + 1; k < owner.lines.size(); ++k) {
        const Segment& a = owner.lines[i];
        const Segment& b = owner.lines[k];
        const std::size_t allowed = k == i + 1 ? 1 : 0;
        if (share_stretch(a, b) || cross_over(a, b) || touches(a, b).size() > allowed) {
          faults_.push_back("meets itself: " + owner.name + " at " + text(a) + " and " + text(b));
        }
      }
    }
  }

  void look_round(const Seat& seat) {
    const Segment& own = owners_[seat.owner].lines[seat.line];
    const Spot along = direction(own);
    const std::string name = owners_[seat.owner].name;
    if (dot(along, along) < std::int64_t{kCell} * kCell) {
      faults_.push_back("a corner is near the seat of " + name);
    }
    const Spot spot{seat.middle.x / 2, seat.middle.y / 2};
    for (const auto& other : squares_.near({spot, spot}, kCell)) {
      if (other.owner == seat.owner && other.index == seat.line) continue;
      const Segment& line = owners_[other.owner].lines[other.index];
      if (is_closer(seat.middle, line, kCell / 2)) {
        faults_.push_back("a line is near the seat of " + name + ": " + owners_[other.owner].name +
                          " " + text(line));
      }
    }
  }

  /// Do their lines stand at right angles?
  [[nodiscard]] bool are_square(const Seat& a, const Seat& b) const {
    return dot(direction(owners_[a.owner].lines[a.line]),
               direction(owners_[b.owner].lines[b.line])) == 0;
  }

  void compare_seats() {
    std::vector<Seat> sorted = seats_;
    std::sort(sorted.begin(), sorted.end(),
              [](const Seat& a, const Seat& b) { return a.middle < b.middle; });
    for (std::size_t i = 0; i < sorted.size(); ++i) {
      for (std::size_t k = i + 1; k < sorted.size(); ++k) {
        const Spot apart = sorted[k].middle - sorted[i].middle;
        if (apart.x >= 2 * kCell) break;
        const bool corner = std::abs(apart.x) >= kCell && std::abs(apart.y) >= kCell;
        if (corner && are_square(sorted[i], sorted[k])) continue;
        if (dot(apart, apart) < std::int64_t{4} * kCell * kCell) {
          faults_.push_back("two seats are near each other: " + owners_[sorted[i].owner].name +
                            " and " + owners_[sorted[k].owner].name);
        }
      }
    }
  }

  const std::vector<Owner>& owners_;
  const std::vector<Seat>& seats_;
  Squares squares_;
  std::vector<std::string> faults_;
};

/// Is every wire joined to every other by ends that lie on each other?
inline bool hang_together(const std::vector<Segment>& wires) {
  if (wires.empty()) return true;
  std::vector<bool> reached(wires.size(), false);
  std::vector<std::size_t> open{0};
  reached[0] = true;
  while (!open.empty()) {
    const Segment& wire = wires[open.back()];
    open.pop_back();
    for (std::size_t i = 0; i < wires.size(); ++i) {
      if (reached[i] || touches(wire, wires[i]).empty()) continue;
      reached[i] = true;
      open.push_back(i);
    }
  }
  return std::find(reached.begin(), reached.end(), false) == reached.end();
}

inline bool lies_on_any(Spot spot, const std::vector<Segment>& wires) {
  return std::any_of(wires.begin(), wires.end(),
                     [&](const Segment& wire) { return lies_on(spot, wire); });
}

/// The lines of a path, or a fault where it is none.
inline std::vector<Segment> lines_of(const Path& path, const std::string& name,
                                     std::vector<std::string>& faults) {
  std::vector<Segment> lines;
  for (std::size_t i = 0; i + 1 < path.size(); ++i) {
    if (path[i] == path[i + 1]) faults.push_back("a spot comes twice: " + name);
    lines.push_back({path[i], path[i + 1]});
  }
  if (lines.empty()) faults.push_back("has no path: " + name);
  return lines;
}

}  // namespace ohmfold::drawing::sound
