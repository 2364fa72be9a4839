// Series-parallel networks as trees: enumerated, built as circuits, and read back from a step log.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "ohmfold/trace.h"

namespace ohmfold::published {

enum class Join { none, series, parallel };

/// A part, or shapes joined in series or in parallel. The order in which they are joined does not
/// count: inner shapes stand in the order of their texts, and a shape in series is never inside
/// another one in series (nor parallel inside parallel). Two networks are alike exactly where
/// `text` is the same.
struct Shape {
  Join join = Join::none;
  std::string text;          ///< the part's label, or "(a + b)", "(a | b)"
  std::vector<Shape> inner;  ///< two or more, or none for a part

  friend bool operator<(const Shape& a, const Shape& b) { return a.text < b.text; }
};

[[nodiscard]] Shape single(const std::string& label);
/// Requires two or more shapes.
[[nodiscard]] Shape joined(Join join, const std::vector<Shape>& shapes);

using Shapes = std::set<Shape>;

/// All shapes of 1, 2, …, `most` parts that are not told apart; shapes of n parts at index n.
[[nodiscard]] std::vector<Shapes> unlabelled_shapes(std::size_t most);
/// All shapes of `parts` parts labelled "1", "2", …
[[nodiscard]] Shapes labelled_shapes(std::size_t parts);

/// A circuit file with 1 V across the shape. A part labelled with a number has that many ohm and
/// that number in its name ("R3"); all others have 1 ohm.
[[nodiscard]] std::string circuit_text(const Shape& shape);

/// The shape that the steps of a log put together. `labels` are those of the parts of the file, by
/// PartId. Requires steps of series and parallel only, and Stop::reduced.
[[nodiscard]] Shape shape_of(const Reduction& reduction, const std::vector<std::string>& labels);

}  // namespace ohmfold::published
