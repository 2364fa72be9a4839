// A dense exact solver of others (FLINT), for the benchmarks alone.
#pragma once

#include <flint/fmpq_mat.h>
#include <flint/fmpz_mat.h>

#include <numeric>

#include "grids.h"
#include "solve/whole_rows.h"

namespace ohmfold::bench {

enum class DenseMethod { dixon, automatic };

/// Potentials by node but the last, which is at zero.
class DenseSolution {
 public:
  DenseSolution(slong unknowns, DenseMethod method) : method_(method) {
    fmpq_mat_init(fractions_, unknowns, 1);
    fmpz_mat_init(numerators_, unknowns, 1);
    fmpz_init_set_ui(denominator_, 1);
  }
  ~DenseSolution() {
    fmpq_mat_clear(fractions_);
    fmpz_mat_clear(numerators_);
    fmpz_clear(denominator_);
  }
  DenseSolution(const DenseSolution&) = delete;
  DenseSolution& operator=(const DenseSolution&) = delete;

  /// Compares the potentials of the two nodes that are farthest apart.
  [[nodiscard]] bool agrees_with(const SharedFractions& lifted) const {
    const Number expected =
        lifted.lowest_terms(0) - lifted.lowest_terms(lifted.numerators.size() - 1);
    fmpq_t first;
    fmpq_init(first);
    if (method_ == DenseMethod::dixon) {
      fmpq_set(first, fmpq_mat_entry(fractions_, 0, 0));
    } else {
      fmpq_set_fmpz_frac(first, fmpz_mat_entry(numerators_, 0, 0), denominator_);
    }
    char* text = fmpq_get_str(nullptr, 10, first);
    const bool agrees = expected.to_string() == text;
    flint_free(text);
    fmpq_clear(first);
    return agrees;
  }

 private:
  friend class DenseGrid;
  DenseMethod method_;
  fmpq_mat_t fractions_;
  fmpz_mat_t numerators_;
  fmpz_t denominator_;
};

/// The same equations as a dense matrix, each row multiplied by what makes it whole.
class DenseGrid {
 public:
  explicit DenseGrid(const Grid& grid) : unknowns_(static_cast<slong>(grid.nodes) - 1) {
    std::vector<int> scale(grid.nodes, 1);
    for (std::size_t i = 0; i < grid.joints.size(); ++i) {
      for (const std::uint32_t node : {grid.joints[i].a, grid.joints[i].b}) {
        scale[node] = std::lcm(scale[node], grid.ohms[i]);
      }
    }
    fmpz_mat_init(matrix_, unknowns_, unknowns_);
    fmpz_mat_init(right_, unknowns_, 1);
    for (std::size_t i = 0; i < grid.joints.size(); ++i) {
      const auto a = static_cast<slong>(grid.joints[i].a);
      const auto b = static_cast<slong>(grid.joints[i].b);
      add(a, b, scale[grid.joints[i].a] / grid.ohms[i]);
      add(b, a, scale[grid.joints[i].b] / grid.ohms[i]);
    }
    fmpz_set_si(fmpz_mat_entry(right_, 0, 0), scale[0]);
  }
  ~DenseGrid() {
    fmpz_mat_clear(matrix_);
    fmpz_mat_clear(right_);
  }
  DenseGrid(const DenseGrid&) = delete;
  DenseGrid& operator=(const DenseGrid&) = delete;

  void solve(DenseSolution& solution) const {
    if (solution.method_ == DenseMethod::dixon) {
      fmpq_mat_solve_fmpz_mat_dixon(solution.fractions_, matrix_, right_);
    } else {
      fmpz_mat_solve(solution.numerators_, solution.denominator_, matrix_, right_);
    }
  }
  [[nodiscard]] slong unknowns() const { return unknowns_; }

 private:
  void add(slong row, slong column, int conductance) {
    if (row >= unknowns_) return;
    fmpz* own = fmpz_mat_entry(matrix_, row, row);
    fmpz_add_ui(own, own, static_cast<ulong>(conductance));
    if (column >= unknowns_) return;
    fmpz* between = fmpz_mat_entry(matrix_, row, column);
    fmpz_sub_ui(between, between, static_cast<ulong>(conductance));
  }

  slong unknowns_;
  fmpz_mat_t matrix_;
  fmpz_mat_t right_;
};

}  // namespace ohmfold::bench
