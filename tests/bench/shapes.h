// Networks to measure on, and the same arithmetic without any network.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold::bench {

enum class Shape { balanced, random, ladder };

/// A series-parallel network as its tree: leaves 0 to leaves - 1, then one join for each inner
/// node, in an order in which both operands come before. Resistances are whole numbers from 1 to
/// 10, drawn from the seed.
struct Tree {
  struct Join {
    bool series;
    std::uint32_t first, second;
  };
  std::vector<int> ohm;     ///< by leaf
  std::vector<Join> joins;  ///< join i makes operand leaves + i
  struct Ends {
    std::uint32_t from, to;
  };
  std::vector<Ends> ends;  ///< by leaf: its two points; the terminals are points 0 and 1
  std::uint32_t points = 0;
};

/// `balanced`: halves joined at random in series or parallel, all the way down. `random`: grown by
/// replacing a random leaf by two. `ladder`: rungs of one series and one shunt resistor.
[[nodiscard]] Tree make_tree(Shape shape, std::uint32_t leaves, std::uint32_t seed = 1);

/// The network of the tree between a battery of 12 V (negative terminal: point 1), its parts in
/// shuffled order.
[[nodiscard]] Network network_of(const Tree& tree, std::uint32_t seed = 1);

/// The same network as a circuit file.
[[nodiscard]] std::string file_of(const Tree& tree, std::uint32_t seed = 1);

}  // namespace ohmfold::bench
