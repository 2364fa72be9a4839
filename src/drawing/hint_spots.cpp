// Finds places for points from hints, and for those without from their neighbours.
#include "drawing/hint_spots.h"

#include <algorithm>
#include <cstdlib>
#include <set>

namespace ohmfold::drawing {
namespace {

constexpr int kStep = kStepOfHints / kLattice;  // of the file, in steps of the lattice
constexpr int kFarthest = 64 * kStep;           // how wide or high a drawing may be
constexpr int kLargest = 1 << 20;               // of a coordinate, in steps of the lattice

/// The nearest whole number of lattice steps, halves upwards; nothing for silly ones.
std::optional<int> rounded(const Number& coordinate) {
  if (coordinate.is_symbolic()) return {};
  const Number wanted = coordinate * Number(kStep) + Number(1) / Number(2);
  int low = -kLargest;
  int high = kLargest;
  if (wanted < Number(low) || wanted >= Number(high)) return {};
  while (high - low > 1) {
    const int middle = low + (high - low) / 2;
    (wanted < Number(middle) ? high : low) = middle;
  }
  return low;
}

class Spots {
 public:
  Spots(std::size_t count, const Joined& joined) : spots_(count), neighbours_(count) {
    for (const auto& [a, b] : joined) {
      if (a == b) continue;
      neighbours_[a].push_back(b);
      neighbours_[b].push_back(a);
    }
  }

  /// False where another point is there.
  bool put(std::uint32_t point, Spot spot) {
    spots_[point] = spot;
    return taken_.insert(spot).second;
  }
  [[nodiscard]] bool is_placed(std::uint32_t point) const { return spots_[point].has_value(); }

  /// The others, those with the most placed neighbours first.
  void fill() {
    while (const std::optional<std::uint32_t> point = next()) put(*point, place_for(*point));
  }

  /// Moved so that the least x and y are 0. Nothing where they lie too far apart.
  [[nodiscard]] std::optional<std::vector<Spot>> all() const {
    Box box{*spots_.front(), *spots_.front()};
    for (const auto& spot : spots_) {
      box.min = {std::min(box.min.x, spot->x), std::min(box.min.y, spot->y)};
      box.max = {std::max(box.max.x, spot->x), std::max(box.max.y, spot->y)};
    }
    const Spot size = box.max - box.min;
    if (size.x > kFarthest || size.y > kFarthest) return {};
    std::vector<Spot> all;
    for (const auto& spot : spots_) all.push_back(*spot - box.min);
    return all;
  }

 private:
  [[nodiscard]] std::size_t placed_neighbours(std::uint32_t point) const {
    return static_cast<std::size_t>(
        std::count_if(neighbours_[point].begin(), neighbours_[point].end(),
                      [&](std::uint32_t other) { return is_placed(other); }));
  }

  [[nodiscard]] std::optional<std::uint32_t> next() const {
    std::optional<std::uint32_t> best;
    std::size_t most = 0;
    for (std::uint32_t point = 0; point < spots_.size(); ++point) {
      if (is_placed(point)) continue;
      const std::size_t placed = placed_neighbours(point);
      if (best && placed <= most) continue;
      best = point;
      most = placed;
    }
    return best;
  }

  /// Near the middle of its placed neighbours; of those next to nobody, near all that is there.
  [[nodiscard]] Spot place_for(std::uint32_t point) const {
    Spot sum;
    int count = 0;
    for (const std::uint32_t other : neighbours_[point]) {
      if (!is_placed(other)) continue;
      sum = sum + *spots_[other];
      ++count;
    }
    const Spot middle = count == 0 ? *taken_.begin() : Spot{sum.x / count, sum.y / count};
    for (int away = 0;; ++away) {
      if (const std::optional<Spot> spot = free_spot(middle, away)) return *spot;
    }
  }

  /// So many steps of the file from there, and not nearer than one to any other point.
  [[nodiscard]] std::optional<Spot> free_spot(Spot middle, int away) const {
    std::optional<Spot> best;
    int nearest = 0;
    for (int x = -away; x <= away; ++x) {
      for (int y = -away; y <= away; ++y) {
        if (std::max(std::abs(x), std::abs(y)) != away) continue;
        const Spot spot = middle + Spot{x * kStep, y * kStep};
        // The nearest; of equally near ones the one to the right, then below.
        const int distance = 4 * (std::abs(x) + std::abs(y)) - (x > 0 ? 2 : 0) - (y > 0 ? 1 : 0);
        if (!is_clear(spot) || (best && distance >= nearest)) continue;
        best = spot;
        nearest = distance;
      }
    }
    return best;
  }
  [[nodiscard]] bool is_clear(Spot spot) const {
    return std::none_of(taken_.begin(), taken_.end(), [&](Spot other) {
      return std::max(std::abs(other.x - spot.x), std::abs(other.y - spot.y)) < kStep;
    });
  }

  std::vector<std::optional<Spot>> spots_;
  std::vector<std::vector<std::uint32_t>> neighbours_;
  std::set<Spot> taken_;
};

}  // namespace

std::optional<std::vector<Spot>> hinted_spots(const std::vector<PointId>& points,
                                              const Joined& joined, const Network& network,
                                              const std::vector<PlaceHint>& hints) {
  Spots spots(points.size(), joined);
  bool any = false;
  // Of several points that have become one, its own hint counts, or else the first.
  for (const bool own : {true, false}) {
    for (const PlaceHint& hint : hints) {
      if (hint.point.index >= network.point_count()) continue;
      const PointId point = network.representative(hint.point);
      const auto at = std::lower_bound(points.begin(), points.end(), point);
      if (at == points.end() || *at != point || (point == hint.point) != own) continue;
      const auto index = static_cast<std::uint32_t>(at - points.begin());
      if (spots.is_placed(index)) continue;
      const std::optional<int> x = rounded(hint.x);
      const std::optional<int> y = rounded(hint.y);
      if (!x || !y || !spots.put(index, {*x, -*y})) return {};
      any = true;
    }
  }
  if (!any) return {};
  spots.fill();
  return spots.all();
}

}  // namespace ohmfold::drawing
