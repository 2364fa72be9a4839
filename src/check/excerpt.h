// The parts that a step takes, seen by themselves: their points, and how they hang together.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "circuit/disjoint_sets.h"
#include "ohmfold/network.h"

namespace ohmfold::check {

/// Some parts of a network with their points, numbered among themselves.
class Excerpt {
 public:
  struct Part {
    PartId id;
    ElementKind kind;
    std::uint32_t from, to;
  };
  /// What hangs together by the parts alone, and where other living parts of the network are joined
  /// to it: its terminals. Points that `merges` makes one are one terminal, the first of them.
  struct Piece {
    std::vector<std::uint32_t> terminals;
    bool has_source = false;
    bool wire_between = false;  ///< ideal wires alone join two of its terminals
  };

  /// Requires living parts, each once.
  Excerpt(const Network& network, std::span<const PartId> parts);

  [[nodiscard]] const std::vector<Part>& parts() const { return parts_; }
  [[nodiscard]] std::size_t point_count() const { return points_.size(); }
  [[nodiscard]] PointId point(std::uint32_t number) const { return points_[number]; }
  /// The number of a point, where a part of the excerpt has an end there.
  [[nodiscard]] std::optional<std::uint32_t> number_of(PointId point) const;
  /// Is a living part outside the excerpt joined here too?
  [[nodiscard]] bool is_boundary(std::uint32_t number) const { return is_boundary_[number]; }

  /// The points as joined by the ideal wires among the parts.
  [[nodiscard]] DisjointSets wired() const;
  /// A battery that lies on a closed path of the excerpt itself, so that it may drive a current
  /// whatever is joined outside; none where there is none.
  [[nodiscard]] PartId driving_battery() const;
  /// All pieces with a terminal. Requires points of the excerpt in `merges`.
  [[nodiscard]] std::vector<Piece> pieces(std::span<const PointId> merges) const;

 private:
  std::vector<PointId> points_;  // in order
  std::vector<Part> parts_;
  std::vector<bool> is_boundary_;
};

/// Why these cannot be the parts of an excerpt (out of range, gone, listed twice), or empty.
[[nodiscard]] std::string fault_in_parts(const Network& network, std::span<const PartId> parts);

}  // namespace ohmfold::check
