// Exact solution of the node equations of a conductance network by eliminating point after point.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <vector>

#include "ohmfold/value.h"

namespace ohmfold {

/// Conductances between numbered nodes, and the current brought to each of them.
///
/// Eliminating a node puts a conductance between each two of its neighbours (star to mesh: Rosen,
/// J. IEE 62 (1924) 916, from memory), so the equations stay those of a network throughout. The
/// node with the fewest neighbours goes first (minimum degree: Tinney and Walker, Proc. IEEE 55
/// (1967) 1801, from memory), which keeps a series-parallel network sparse to the end.
class NodeEquations {
 public:
  explicit NodeEquations(std::size_t nodes) : rows_(nodes), brought_(nodes) {}

  /// Joins two nodes; nothing happens where they are the same.
  void join(std::uint32_t a, std::uint32_t b, const Conductance& conductance);
  /// Brings a current to a node from outside.
  void bring(std::uint32_t node, const Current& current) { brought_[node] += current.number; }

  /// The potential of every node; the node of each connected piece that is eliminated last is at
  /// zero. Nothing where the work would exceed `most_work`, in bits written, roughly. Requires that
  /// the currents brought to each connected piece sum to zero (InternalError otherwise). Uses up
  /// the equations.
  [[nodiscard]] std::optional<std::vector<Number>> solve(std::uint64_t most_work);

 private:
  struct Pivot {
    std::uint32_t node;
    Number total;                                       // sum of its conductances
    std::vector<std::pair<std::uint32_t, Number>> row;  // those still to come
  };
  void eliminate(const Pivot& pivot);

  std::vector<std::map<std::uint32_t, Number>> rows_;
  std::vector<Number> brought_;
};

}  // namespace ohmfold
