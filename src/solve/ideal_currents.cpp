// The spanning forest of ideal parts, and which of them lie on loops.
#include "solve/ideal_currents.h"

#include <unordered_map>

#include "circuit/blocks.h"

namespace ohmfold {

IdealForest ideal_forest(const Network& network, const std::vector<PartId>& ideal) {
  // Parts at each point, by position in `ideal`.
  std::unordered_map<std::uint32_t, std::vector<std::uint32_t>> at;
  for (std::uint32_t i = 0; i < ideal.size(); ++i) {
    at[network.from(ideal[i]).index].push_back(i);
    at[network.to(ideal[i]).index].push_back(i);
  }
  const std::vector<std::uint32_t> block = blocks(network, ideal);
  std::vector<std::uint32_t> block_size(ideal.size(), 0);
  for (const std::uint32_t number : block) ++block_size[number];

  IdealForest forest;
  std::vector<bool> used(ideal.size(), false);
  std::unordered_map<std::uint32_t, bool> reached;
  for (const PartId first : ideal) {
    const PointId root = network.from(first);
    if (reached[root.index]) continue;
    reached[root.index] = true;
    std::vector<PointId> open{root};
    for (std::size_t next = 0; next < open.size(); ++next) {
      const PointId above = open[next];
      for (const std::uint32_t i : at[above.index]) {
        if (used[i]) continue;
        used[i] = true;
        const PointId below = network.across(ideal[i], above);
        if (reached[below.index]) {
          forest.chords.push_back(ideal[i]);
          continue;
        }
        reached[below.index] = true;
        forest.branches.push_back({ideal[i], above, below, block_size[block[i]] > 1});
        open.push_back(below);
      }
    }
  }
  return forest;
}

}  // namespace ohmfold
