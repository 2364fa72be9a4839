// Proving that a network does not reduce, beside reducing it as far as it goes.
#include <benchmark/benchmark.h>

#include "bridge/certificate.h"
#include "bridge/shapes.h"
#include "check/certificate.h"
#include "solve/reduce.h"

namespace ohmfold::bench {
namespace {

Network sample(const benchmark::State& state) {
  const auto parts = static_cast<std::size_t>(state.range(0));
  return test::random_bridge(parts / 2, 1);
}

// What the ratios in docs/performance.md are against.
void reduce_a_bridge(benchmark::State& state) {
  const Network network = sample(state);
  for (auto _ : state) benchmark::DoNotOptimize(reduce(network));
}

void find_the_certificate(benchmark::State& state) {
  const Network network = sample(state);
  for (auto _ : state) benchmark::DoNotOptimize(find_certificate(network));
}

void verify_the_certificate(benchmark::State& state) {
  const Network network = sample(state);
  const auto certificate = find_certificate(network);
  for (auto _ : state) benchmark::DoNotOptimize(verify(*certificate, network));
}

BENCHMARK(reduce_a_bridge)->Arg(1'000)->Arg(10'000)->Arg(100'000)->Unit(benchmark::kMillisecond);
BENCHMARK(find_the_certificate)
    ->Arg(1'000)
    ->Arg(10'000)
    ->Arg(100'000)
    ->Unit(benchmark::kMillisecond);
BENCHMARK(verify_the_certificate)
    ->Arg(1'000)
    ->Arg(10'000)
    ->Arg(100'000)
    ->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace ohmfold::bench
