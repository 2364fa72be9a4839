// What is drawn already, to find room for what is not.
#pragma once

#include <cstdint>
#include <unordered_map>
#include <vector>

#include "drawing/geometry.h"

namespace ohmfold::drawing {

/// Do they share a spot? Borders count.
[[nodiscard]] bool meet(const Box& one, const Box& other);
[[nodiscard]] bool meet(const Box& box, const Segment& segment);

/// So much larger on all sides.
[[nodiscard]] constexpr Box grown(const Box& box, int by) {
  return {{box.min.x - by, box.min.y - by}, {box.max.x + by, box.max.y + by}};
}

/// The square of their distance; 0 where they meet.
[[nodiscard]] std::int64_t square_of_distance(const Box& one, const Box& other);

/// Whom a thing belongs to, where that matters.
inline constexpr std::uint32_t kNobody = UINT32_MAX;

class Occupied {
 public:
  /// `cell`: about how large things are; only decides how fast it is.
  explicit Occupied(int cell) : cell_(cell) {}

  void add(const Box& box, std::uint32_t owner = kNobody) { add({box, {}, false, owner}); }
  void add(const Segment& segment, std::uint32_t owner = kNobody);

  /// Nothing of what was added so far comes into the box, but what belongs to `except`? Cost: that
  /// of what is near.
  [[nodiscard]] bool is_free(const Box& box, std::uint32_t except = kNobody) const;
  /// Is everything at least so far from the box, but what belongs to `except`? Of slanted lines a
  /// little more is asked. Cost: as above.
  [[nodiscard]] bool is_clear(const Box& box, int distance, std::uint32_t except) const;

 private:
  struct Thing {
    Box box;
    Segment line;  ///< of a slanted one; its box is not all taken
    bool slanted = false;
    std::uint32_t owner = kNobody;
  };

  void add(const Thing& thing);
  template <class Visit>
  void for_each_bucket(const Box& box, Visit visit) const;
  template <class Disturbs>
  [[nodiscard]] bool none_near(const Box& box, std::uint32_t except, Disturbs disturbs) const;

  int cell_;
  std::vector<Thing> things_;
  std::unordered_map<std::uint64_t, std::vector<std::uint32_t>> buckets_;
};

}  // namespace ohmfold::drawing
