// Parts, points and facts of one network in words.
#pragma once

#include <span>

#include "ohmfold/fact.h"
#include "ohmfold/network.h"
#include "ohmfold/problem.h"
#include "views/names.h"
#include "views/words.h"

namespace ohmfold::views {

/// Words about one network of a problem: as its case sets it, or as steps have left it. Keeps
/// references to all three: they must outlive it.
class NetworkWords {
 public:
  NetworkWords(const Problem& problem, const Network& network, const PartNames& names)
      : problem_(problem), network_(network), names_(names) {}

  [[nodiscard]] Run part(PartId id) const { return PartName{names_.of(id)}; }
  [[nodiscard]] Run point(PointId id) const { return PointName{names_.of(id)}; }
  /// "R1, R2 and R3"
  [[nodiscard]] Words parts(std::span<const PartId> ids, std::size_t most = 12) const;
  [[nodiscard]] Words points(std::span<const PointId> ids, std::size_t most = 12) const;
  /// "battery E", "switch S", "R1", "the two points asked about"
  [[nodiscard]] Words described(PartId id) const;

  /// Is it the mark of the two points asked about?
  [[nodiscard]] bool is_port(PartId id) const;
  /// False for a part that the network has not.
  [[nodiscard]] bool is_kind(PartId part, ElementKind kind) const {
    return part.index < network_.part_count() && network_.kind(part) == kind;
  }

  /// One fact as a clause: "only R1 and R2 meet at point A". No capital, no full stop.
  [[nodiscard]] Words fact(const Fact& fact) const;
  /// Several facts as one clause; of many the first ones.
  [[nodiscard]] Words facts(std::span<const Fact> why) const;
  /// Why these parts can be left out, as one clause that names them: "R5 meets the rest of the
  /// circuit at point A alone".
  [[nodiscard]] Words left_out_facts(std::span<const PartId> taken,
                                     std::span<const Fact> why) const;

 private:
  const Problem& problem_;
  const Network& network_;
  const PartNames& names_;
};

}  // namespace ohmfold::views
