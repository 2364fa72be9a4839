// Exact potentials of square grids: lifting on the sparse equations, beside exact elimination and
// beside a dense exact solver where one is installed.
#include <benchmark/benchmark.h>

#include <cstdint>
#include <vector>

#include "grids.h"
#include "solve/elimination.h"
#include "solve/lifting.h"
#ifdef OHMFOLD_FLINT
#include "dense_solver.h"
#endif

namespace ohmfold::bench {
namespace {

constexpr std::uint64_t kPlenty = UINT64_MAX / 2;

NodeLifting lifting_of(const Grid& grid) {
  NodeLifting equations(grid.nodes);
  for (const Joint& joint : grid.joints) equations.join(joint.a, joint.b, joint.conductance);
  return equations;
}

void lift(benchmark::State& state) {
  const Grid grid = random_grid(static_cast<std::uint32_t>(state.range(0)));
  for (auto unused : state) {
    auto potentials = lifting_of(grid).solve(grid.brought, kPlenty);
    benchmark::DoNotOptimize(potentials);
  }
}

void lift_to_lowest_terms(benchmark::State& state) {
  const Grid grid = random_grid(static_cast<std::uint32_t>(state.range(0)));
  for (auto unused : state) {
    const auto potentials = lifting_of(grid).solve(grid.brought, kPlenty);
    for (std::size_t node = 0; node < grid.nodes; ++node) {
      benchmark::DoNotOptimize(potentials->lowest_terms(node));
    }
  }
}

void lift_further_currents(benchmark::State& state) {
  const Grid grid = random_grid(static_cast<std::uint32_t>(state.range(0)));
  NodeLifting equations = lifting_of(grid);
  benchmark::DoNotOptimize(equations.solve(grid.brought, kPlenty));
  for (auto unused : state) {
    auto potentials = equations.solve(grid.brought, kPlenty);
    benchmark::DoNotOptimize(potentials);
  }
}

void eliminate(benchmark::State& state) {
  const Grid grid = random_grid(static_cast<std::uint32_t>(state.range(0)));
  for (auto unused : state) {
    NodeEquations equations(grid.nodes);
    for (const Joint& joint : grid.joints) equations.join(joint.a, joint.b, joint.conductance);
    for (std::uint32_t node = 0; node < grid.nodes; ++node) {
      equations.bring(node, Current{grid.brought[node]});
    }
    auto potentials = equations.solve(kPlenty);
    benchmark::DoNotOptimize(potentials);
  }
}

#ifdef OHMFOLD_FLINT
template <DenseMethod Method>
void solve_densely(benchmark::State& state) {
  const Grid grid = random_grid(static_cast<std::uint32_t>(state.range(0)));
  const DenseGrid dense(grid);
  const auto lifted = lifting_of(grid).solve(grid.brought, kPlenty);
  for (auto unused : state) {
    DenseSolution solution(dense.unknowns(), Method);
    dense.solve(solution);
    state.PauseTiming();
    if (!solution.agrees_with(*lifted)) state.SkipWithError("the solvers disagree");
    state.ResumeTiming();
  }
}
BENCHMARK(solve_densely<DenseMethod::dixon>)
    ->Name("dense_dixon")
    ->Arg(5)
    ->Arg(10)
    ->Arg(20)
    ->Arg(30)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(solve_densely<DenseMethod::automatic>)
    ->Name("dense_automatic")
    ->Arg(5)
    ->Arg(10)
    ->Arg(20)
    ->Unit(benchmark::kMillisecond);
#endif

BENCHMARK(lift)->Arg(5)->Arg(10)->Arg(20)->Arg(30)->Arg(50)->Unit(benchmark::kMillisecond);
BENCHMARK(lift_to_lowest_terms)
    ->Arg(5)
    ->Arg(10)
    ->Arg(20)
    ->Arg(30)
    ->Arg(50)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(lift_further_currents)
    ->Arg(5)
    ->Arg(10)
    ->Arg(20)
    ->Arg(30)
    ->Arg(50)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(eliminate)->Arg(5)->Arg(10)->Arg(20)->Arg(30)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ohmfold::bench
