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

class Occupied {
 public:
  /// `cell`: about how large things are; only decides how fast it is.
  explicit Occupied(int cell) : cell_(cell) {}

  void add(const Box& box) { add({box, {}, false}); }
  void add(const Segment& segment);

  /// Nothing of what was added so far comes into the box? Cost: that of what is near.
  [[nodiscard]] bool is_free(const Box& box) const;

 private:
  struct Thing {
    Box box;
    Segment line;  ///< of a slanted one; its box is not all taken
    bool slanted = false;
  };

  void add(const Thing& thing);
  template <class Visit>
  void for_each_bucket(const Box& box, Visit visit) const;

  int cell_;
  std::vector<Thing> things_;
  std::unordered_map<std::uint64_t, std::vector<std::uint32_t>> buckets_;
};

}  // namespace ohmfold::drawing
