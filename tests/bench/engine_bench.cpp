// Reading, reducing, going back and checking, each beside the same arithmetic without a network.
#include <benchmark/benchmark.h>
#include <malloc.h>

#include "check/step.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"
#include "replay.h"
#include "shapes.h"
#include "solve/reduce.h"

namespace ohmfold::bench {
namespace {

std::size_t bytes_in_use() {
  const struct mallinfo2 info = mallinfo2();
  return info.uordblks + info.hblkhd;
}

Shape shape_of(const benchmark::State& state) {
  return static_cast<Shape>(state.range(0));
}
std::uint32_t size_of(const benchmark::State& state) {
  return static_cast<std::uint32_t>(state.range(1));
}

void count(benchmark::State& state) {
  state.SetItemsProcessed(state.iterations() * state.range(1));
  static constexpr const char* kNames[] = {"balanced", "random", "ladder"};
  state.SetLabel(kNames[state.range(0)]);
}

// The bare arithmetic in rationals of CLN: what every ratio in docs/performance.md is against.
void bare_rationals(benchmark::State& state) {
  const Tree tree = make_tree(shape_of(state), size_of(state));
  for (auto _ : state) benchmark::DoNotOptimize(replay_rationals(tree));
  count(state);
}

// The same in pairs that are not put in lowest terms.
void bare_ratios(benchmark::State& state) {
  const Tree tree = make_tree(shape_of(state), size_of(state));
  for (auto _ : state) benchmark::DoNotOptimize(replay_ratios(tree));
  count(state);
}

void read(benchmark::State& state) {
  const SourceText source{"bench.circuit", file_of(make_tree(shape_of(state), size_of(state)))};
  for (auto _ : state) benchmark::DoNotOptimize(read_circuit(source));
  count(state);
  state.SetBytesProcessed(state.iterations() * static_cast<std::int64_t>(source.text.size()));
}

void reduce_with_steps(benchmark::State& state) {
  const Tree tree = make_tree(shape_of(state), size_of(state));
  for (auto _ : state) {
    state.PauseTiming();
    {
      const std::size_t before = bytes_in_use();
      Network network = network_of(tree);
      state.ResumeTiming();
      const Reduction reduction = reduce(std::move(network));
      state.PauseTiming();
      benchmark::DoNotOptimize(reduction.stop);
      state.counters["bytes/resistor"] =
          static_cast<double>(bytes_in_use() - before) / static_cast<double>(size_of(state));
    }
    state.ResumeTiming();
  }
  count(state);
}

// One asked current, exact, as a pair that is not in lowest terms …
void one_current(benchmark::State& state) {
  const Reduction reduction = reduce(network_of(make_tree(shape_of(state), size_of(state))));
  std::uint32_t part = 1;
  for (auto _ : state) {
    benchmark::DoNotOptimize(current_through(reduction, PartId{part}));
    part = 1 + (part + 7919) % size_of(state);
  }
  count(state);
}

// … and put in lowest terms, as it is when shown.
void one_current_shown(benchmark::State& state) {
  const Reduction reduction = reduce(network_of(make_tree(shape_of(state), size_of(state))));
  std::uint32_t part = 1;
  for (auto _ : state) {
    benchmark::DoNotOptimize(current_through(reduction, PartId{part}).lowest_terms());
    part = 1 + (part + 7919) % size_of(state);
  }
  count(state);
}

// Everything: reducing, all that is asked or fits, and all checks.
void solve_and_check(benchmark::State& state) {
  const SourceText source{"bench.circuit", file_of(make_tree(shape_of(state), size_of(state)))};
  const Outcome<Problem> problem = read_circuit(source);
  for (auto _ : state) benchmark::DoNotOptimize(solve(*problem.value));
  count(state);
}

void check_all_steps(benchmark::State& state) {
  const Reduction reduction = reduce(network_of(make_tree(shape_of(state), size_of(state))));
  for (auto _ : state) benchmark::DoNotOptimize(check_steps(reduction));
  count(state);
}

void up_to_a_hundred_thousand(benchmark::internal::Benchmark* bench) {
  bench->ArgNames({"shape", "n"})->Unit(benchmark::kMillisecond);
  for (const int shape : {0, 1, 2}) {
    for (const int n : {1'000, 10'000, 100'000}) bench->Args({shape, n});
  }
}

// A ladder's resistance has about 1.4 bits a resistor in each of its n steps: quadratic by nature,
// and left out.
void up_to_a_million(benchmark::internal::Benchmark* bench) {
  up_to_a_hundred_thousand(bench);
  for (const int shape : {0, 1}) bench->Args({shape, 1'000'000});
}

BENCHMARK(bare_rationals)->Apply(up_to_a_million);
BENCHMARK(bare_ratios)->Apply(up_to_a_million);
BENCHMARK(reduce_with_steps)->Apply(up_to_a_million);
BENCHMARK(one_current)->Apply(up_to_a_hundred_thousand);
BENCHMARK(one_current_shown)->Apply(up_to_a_hundred_thousand);
BENCHMARK(check_all_steps)->Apply(up_to_a_hundred_thousand);
BENCHMARK(solve_and_check)->Apply(up_to_a_hundred_thousand);
BENCHMARK(read)->Apply(up_to_a_million);

}  // namespace
}  // namespace ohmfold::bench
