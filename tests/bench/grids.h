// Square grids of random resistors, as node equations.
#pragma once

#include <cstdint>
#include <random>
#include <vector>

#include "solve/neighbours.h"

namespace ohmfold::bench {

struct Grid {
  std::size_t nodes = 0;
  std::vector<int> ohms;  ///< by joint
  std::vector<Joint> joints;
  std::vector<Number> brought;  ///< 1 A in at one corner, out at the opposite one
};

/// k by k points; resistors of 1 to 10 ohm between neighbours. Equal k give equal grids.
inline Grid random_grid(std::uint32_t k) {
  std::mt19937_64 random(k);
  Grid grid{std::size_t{k} * k, {}, {}, std::vector<Number>(std::size_t{k} * k)};
  const auto join = [&](std::uint32_t a, std::uint32_t b) {
    grid.ohms.push_back(1 + static_cast<int>(random() % 10));
    grid.joints.push_back({a, b, Conductance{Number::quotient(1, grid.ohms.back())}});
  };
  for (std::uint32_t i = 0; i < k * k; ++i) {
    if (i % k + 1 < k) join(i, i + 1);
    if (i + k < k * k) join(i, i + k);
  }
  grid.brought.front() = 1;
  grid.brought.back() = -1;
  return grid;
}

}  // namespace ohmfold::bench
