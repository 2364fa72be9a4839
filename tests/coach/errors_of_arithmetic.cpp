// Works with a slip in one combination, by the formula of each known error.
#include <array>

#include "coach/error_scene.h"

namespace ohmfold::test {
namespace {

Number sum(const Numbers& values) {
  return follow(support::Way::sum, values);
}
Number product(const Numbers& values) {
  return follow(support::Way::product, values);
}
Number parallel(const Numbers& values) {
  return follow(support::Way::reciprocal_sum, values);
}
int count(const Numbers& values) {
  return static_cast<int>(values.size());
}

struct Slip {
  KnownError error{};
  std::optional<Joining> how;  // none: either
  std::size_t least = 2, most = 99;
  std::function<std::optional<Number>(const Numbers&, const Number& right)> number;
};

// IEC 60063, E24 (from memory).
std::optional<Number> nearest_of_e24(const Number& right) {
  constexpr std::array<int, 24> kTenths{10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30,
                                        33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91};
  std::optional<Number> best;
  for (const int scale : {1000, 100, 10, 1}) {
    for (const int tenths : kTenths) {
      const Number value = Number(tenths) / scale;
      if (!best || abs(value - right) < abs(*best - right)) best = value;
    }
  }
  return *best == right ? std::nullopt : best;
}

std::vector<Slip> slips() {
  using enum KnownError;
  constexpr auto kSeries = Joining::series;
  constexpr auto kParallel = Joining::parallel;
  return {
      {not_inverted, kParallel, 2, 99, [](const Numbers& r, auto&) { return 1 / parallel(r); }},
      {product_without_sum, kParallel, 2, 99, [](const Numbers& r, auto&) { return product(r); }},
      {sum_over_product, kParallel, 2, 99,
       [](const Numbers& r, auto&) { return sum(r) / product(r); }},
      {average, {}, 2, 99, [](const Numbers& r, auto&) { return sum(r) / count(r); }},
      {added_in_parallel, kParallel, 2, 99, [](const Numbers& r, auto&) { return sum(r); }},
      {reciprocals_in_series, kSeries, 2, 99, [](const Numbers& r, auto&) { return parallel(r); }},
      {product_over_sum_of_all, kParallel, 3, 99,
       [](const Numbers& r, auto&) { return product(r) / sum(r); }},
      {reciprocal_of_sum, kParallel, 2, 99, [](const Numbers& r, auto&) { return 1 / sum(r); }},
      {difference, kParallel, 2, 2, [](const Numbers& r, auto&) { return abs(r[0] - r[1]); }},
      {divided_by_count, kParallel, 2, 99,
       [](const Numbers& r, auto&) -> std::optional<Number> {
         const bool alike = std::count(r.begin(), r.end(), r[0]) == count(r);
         return alike ? std::nullopt : std::optional(r[1] / count(r));
       }},
      {operand_left_out, kParallel, 3, 9,
       [](const Numbers& r, auto&) {
         return parallel({r.begin() + 1, r.end()});
       }},
      {operand_left_out, kSeries, 3, 9,
       [](const Numbers& r, auto&) {
         return sum({r.begin(), r.end() - 1});
       }},
      {brackets_missing, kParallel, 2, 2, [](const Numbers& r, auto&) { return r[1] * 2; }},
      {numerators_added, kParallel, 2, 2, [](const Numbers& r, auto&) { return product(r) / 2; }},
      {prefix_slip, {}, 2, 99, [](auto&, const Number& right) { return right * 1000; }},
      {prefix_slip, {}, 2, 99, [](auto&, const Number& right) { return right / 1000; }},
      {decimal_point_slip, {}, 2, 99, [](auto&, const Number& right) { return right / 10; }},
      {impossible_size, kSeries, 2, 99,
       [](const Numbers& r, auto&) {
         return *std::min_element(r.begin(), r.end()) * Number::quotient(997, 1009);
       }},
      {impossible_size, kParallel, 2, 99,
       [](const Numbers& r, auto&) { return sum(r) * Number::quotient(1009, 997); }},
      {preferred_value,
       {},
       2,
       99,
       [](auto&, const Number& right) { return nearest_of_e24(right); }},
  };
}

std::optional<ErrorWork> make_slip(const Slip& slip, RandomCircuits& random) {
  const Scene scene(random, 4);
  const Made& made = scene.any_made(random);
  const std::size_t operands = made.operands.size();
  if ((slip.how && *slip.how != made.how) || operands < slip.least || operands > slip.most) {
    return std::nullopt;
  }
  const std::string key = "R " + made.name;
  const auto wrong = slip.number(scene.values("R", made.operands), scene[key]);
  if (!wrong) return std::nullopt;
  return scene.with_value(scene.up_to(made.name), "", key, *wrong, "ohm");
}

// One operand read as the value of another part of the file.
std::optional<ErrorWork> make_miscopied(RandomCircuits& random) {
  const Scene scene(random, 4);
  const Made& made = scene.any_made(random);
  Numbers values = scene.values("R", made.operands);
  const std::vector<Part>& parts = scene.work.exercise.problem->parts;
  values.front() = parts[1 + random.below(parts.size() - 1)].value;
  const Number wrong = made.how == Joining::series ? sum(values) : parallel(values);
  return scene.with_value(scene.up_to(made.name), "", "R " + made.name, wrong, "ohm");
}

}  // namespace

std::vector<ErrorRow> arithmetic_rows() {
  std::vector<ErrorRow> rows;
  for (const Slip& slip : slips()) {
    rows.push_back(
        {slip.error, [slip](RandomCircuits& random) { return make_slip(slip, random); }});
  }
  rows.push_back({KnownError::miscopied, make_miscopied});
  return rows;
}

}  // namespace ohmfold::test
