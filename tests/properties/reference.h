// A plain reference solution: dense node equations by Gauss's method, for resistors and real
// batteries.
#pragma once

#include <utility>
#include <vector>

#include "ohmfold/problem.h"

namespace ohmfold::test {

/// Solves a x = b by Gauss's method with exact numbers. Requires a regular matrix.
inline std::vector<Number> solve_dense(std::vector<std::vector<Number>> a, std::vector<Number> b) {
  const std::size_t n = b.size();
  for (std::size_t k = 0; k < n; ++k) {
    std::size_t pivot = k;
    while (a[pivot][k].is_zero()) ++pivot;
    std::swap(a[k], a[pivot]);
    std::swap(b[k], b[pivot]);
    for (std::size_t i = 0; i < n; ++i) {
      if (i == k || a[i][k].is_zero()) continue;
      const Number factor = a[i][k] / a[k][k];
      for (std::size_t j = k; j < n; ++j) a[i][j] -= factor * a[k][j];
      b[i] -= factor * b[k];
    }
  }
  for (std::size_t k = 0; k < n; ++k) b[k] = b[k] / a[k][k];
  return b;
}

/// The current through every part, by PartId. Requires a connected circuit of resistors above zero
/// and batteries with internal resistance.
inline std::vector<Number> dense_currents(const Problem& problem) {
  const std::size_t n = problem.points.size();
  std::vector<std::vector<Number>> a(n, std::vector<Number>(n));
  std::vector<Number> b(n);
  const auto emf = [](const Part& p) { return p.kind == PartKind::battery ? p.value : Number(0); };
  const auto conductance = [](const Part& p) {
    return Number(1) / (p.kind == PartKind::battery ? p.internal : p.value);
  };
  for (const Part& part : problem.parts) {
    const Number g = conductance(part);
    const std::size_t i = part.from.index;
    const std::size_t j = part.to.index;
    a[i][i] += g;
    a[j][j] += g;
    a[i][j] -= g;
    a[j][i] -= g;
    b[i] -= g * emf(part);
    b[j] += g * emf(part);
  }
  // Point 0 is the reference: its equation follows from the others.
  for (std::size_t j = 0; j < n; ++j) a[0][j] = Number(j == 0 ? 1 : 0);
  b[0] = Number(0);
  const std::vector<Number> potential = solve_dense(a, b);
  std::vector<Number> currents;
  for (const Part& part : problem.parts) {
    currents.push_back((potential[part.from.index] - potential[part.to.index] + emf(part)) *
                       conductance(part));
  }
  return currents;
}

}  // namespace ohmfold::test
