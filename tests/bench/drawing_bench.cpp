// Placing networks for drawing, beside a walk over their parts.
#include <benchmark/benchmark.h>

#include "bridge/shapes.h"
#include "drawing/layout.h"
#include "shapes.h"

namespace ohmfold::bench {
namespace {

Network random_tree(const benchmark::State& state) {
  return network_of(make_tree(Shape::random, static_cast<std::uint32_t>(state.range(0))));
}

/// About so many parts: k by k points have 2 k (k - 1).
Network square_grid(const benchmark::State& state) {
  const auto parts = static_cast<std::size_t>(state.range(0));
  std::size_t side = 2;
  while (2 * side * (side + 1) <= parts) ++side;
  return test::grid(side, side);
}

PartId source_of(const Network& network) {
  return network.batteries().front().part;
}

/// What the ratios in docs/performance.md are against: each point asks its parts for their other
/// ends.
void walk(benchmark::State& state, const Network& network) {
  for (auto _ : state) {
    std::size_t sum = 0;
    for (std::uint32_t i = 0; i < network.point_count(); ++i) {
      const PointId point{i};
      network.for_each_at(point, [&](PartId part) { sum += network.across(part, point).index; });
    }
    benchmark::DoNotOptimize(sum);
  }
  state.SetComplexityN(state.range(0));
}

void place(benchmark::State& state, const Network& network) {
  drawing::LayoutOptions options;
  options.root = source_of(network);
  for (auto _ : state) benchmark::DoNotOptimize(drawing::lay_out(network, options));
  state.SetComplexityN(state.range(0));
}

void walk_series_parallel(benchmark::State& state) {
  walk(state, random_tree(state));
}
void place_series_parallel(benchmark::State& state) {
  place(state, random_tree(state));
}
void walk_grid(benchmark::State& state) {
  walk(state, square_grid(state));
}
void place_grid(benchmark::State& state) {
  place(state, square_grid(state));
}

void sizes(benchmark::internal::Benchmark* bench) {
  bench->Arg(100)->Arg(300)->Arg(1'000)->Arg(3'000)->Arg(10'000)->Complexity();
  bench->Unit(benchmark::kMillisecond);
}

BENCHMARK(walk_series_parallel)->Apply(sizes);
BENCHMARK(place_series_parallel)->Apply(sizes);
BENCHMARK(walk_grid)->Apply(sizes);
BENCHMARK(place_grid)->Apply(sizes);

}  // namespace
}  // namespace ohmfold::bench
