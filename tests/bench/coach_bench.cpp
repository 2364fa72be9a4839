// Judging a person's work, beside the same exact arithmetic without names, networks or verdicts.
#include <benchmark/benchmark.h>

#include <string>
#include <vector>

#include "ohmfold/coach.h"
#include "ohmfold/decimal.h"
#include "ohmfold/read.h"
#include "replay.h"
#include "shapes.h"

namespace ohmfold::bench {
namespace {

// How the values of a work are written.
enum class Values { none, exact, rounded };

Tree tree_of(const benchmark::State& state) {
  return make_tree(static_cast<Shape>(state.range(0)), static_cast<std::uint32_t>(state.range(1)));
}

Exercise exercise_on(const Tree& tree) {
  const Outcome<Problem> problem = read_circuit({"bench.circuit", file_of(tree)});
  Problem asked = *problem.value;
  asked.questions = {ResistanceSeenBy{PartId{0}}};
  return prepare(asked);
}

// A line for each join of the tree. Rounded, each line uses what the lines before it print.
std::string work_on(const Tree& tree, Values values) {
  std::vector<Number> value(tree.ohm.begin(), tree.ohm.end());
  std::vector<std::string> names;
  for (std::size_t i = 0; i < tree.ohm.size(); ++i) names.push_back("R" + std::to_string(i + 1));
  std::string text;
  for (const Tree::Join& join : tree.joins) {
    const Number& a = value[join.first];
    const Number& b = value[join.second];
    Number made = join.series ? a + b : 1 / (1 / a + 1 / b);
    names.push_back("N" + std::to_string(names.size()));
    text += names.back() + " = " + names[join.first] + (join.series ? " + " : " || ") +
            names[join.second];
    if (values == Values::exact) text += " = " + made.to_string() + " ohm";
    if (values == Values::rounded) {
      const std::string digits = round_to_figures(made, 3);
      text += " = " + digits + " ohm";
      made = parse_number(digits).number;
    }
    text += "\n";
    value.push_back(std::move(made));
  }
  return text;
}

void count(benchmark::State& state, const Tree& tree) {
  state.SetItemsProcessed(state.iterations() * static_cast<std::int64_t>(tree.joins.size()));
  static constexpr const char* kNames[] = {"balanced", "random", "ladder"};
  state.SetLabel(kNames[state.range(0)]);
}

// What every ratio in docs/performance.md is against.
void bare_rationals(benchmark::State& state) {
  const Tree tree = tree_of(state);
  for (auto _ : state) benchmark::DoNotOptimize(replay_rationals(tree));
  count(state, tree);
}

void read_exact_values(benchmark::State& state) {
  const Tree tree = tree_of(state);
  const Exercise exercise = exercise_on(tree);
  const SourceText source{"bench.work", work_on(tree, Values::exact)};
  for (auto _ : state) benchmark::DoNotOptimize(read_work(source, *exercise.problem));
  count(state, tree);
}

void judge(benchmark::State& state, Values values) {
  const Tree tree = tree_of(state);
  const Exercise exercise = exercise_on(tree);
  const Outcome<Work> work = read_work({"bench.work", work_on(tree, values)}, *exercise.problem);
  bool all_right = true;
  for (auto _ : state) all_right = judge_work(exercise, *work.value).all_right() && all_right;
  if (!all_right) state.SkipWithError("a right work is refused");
  count(state, tree);
}

void judge_steps(benchmark::State& state) {
  judge(state, Values::none);
}
void judge_exact_values(benchmark::State& state) {
  judge(state, Values::exact);
}
void judge_rounded_values(benchmark::State& state) {
  judge(state, Values::rounded);
}

void sizes(benchmark::internal::Benchmark* bench) {
  for (const int shape : {0, 1, 2}) {
    for (const int leaves : {10, 100, 1'000, 10'000}) bench->Args({shape, leaves});
  }
  bench->Unit(benchmark::kMillisecond);
}

BENCHMARK(bare_rationals)->Apply(sizes);
BENCHMARK(read_exact_values)->Apply(sizes);
BENCHMARK(judge_steps)->Apply(sizes);
BENCHMARK(judge_exact_values)->Apply(sizes);
BENCHMARK(judge_rounded_values)->Apply(sizes);

}  // namespace
}  // namespace ohmfold::bench
