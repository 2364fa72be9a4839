// Small numbers that name points and parts; they count from 0 in the order of the circuit file.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>

namespace ohmfold {

/// A strong index: a PointId cannot be used where a PartId is meant.
template <class Tag>
struct Id {
  std::uint32_t index = kNone;

  static constexpr std::uint32_t kNone = UINT32_MAX;

  [[nodiscard]] constexpr bool exists() const { return index != kNone; }
  friend constexpr auto operator<=>(const Id&, const Id&) = default;
};

/// A point of the circuit as it stands in the file; of several points joined by ideal wires, the
/// first in the file stands for all of them.
using PointId = Id<struct PointTag>;

/// A part. The parts of the file come first, with their place in the file as number; parts that a
/// rule makes follow in the order of making.
using PartId = Id<struct PartTag>;

}  // namespace ohmfold
