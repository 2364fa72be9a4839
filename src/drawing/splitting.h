// Taking a graph apart that series and parallel leave: at single vertices, then at pairs.
#pragma once

#include <optional>
#include <vector>

#include "drawing/reduction.h"

namespace ohmfold::drawing {

/// Some links and the two vertices by which they are joined to the rest.
struct Piece {
  std::vector<Link> links;
  std::uint32_t top = 0, bottom = 0;
};

/// The pieces in series from the top to the bottom of a piece; one where there is no vertex at
/// which it falls apart. Requires that every link lies on a path from top to bottom. Cost: linear.
[[nodiscard]] std::vector<Piece> in_series(const Piece& piece);

/// The pieces between the same two vertices that hang together only there. Cost: near-linear.
[[nodiscard]] std::vector<Piece> in_parallel(const Piece& piece);

/// A piece within, of two links or more, that is joined to the rest by two vertices only. Nothing
/// where there is none, or the piece has more than 60 vertices. Cost: cubic.
[[nodiscard]] std::optional<Piece> inner_piece(const Piece& piece);

}  // namespace ohmfold::drawing
