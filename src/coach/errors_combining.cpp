// Known errors of arithmetic in one combination.
#include <algorithm>
#include <numeric>

#include "coach/errors_of_values.h"
#include "exact/rounded.h"
#include "ohmfold/decimal.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostSubsets = 10;  // operands up to which all groups of them are tried

Number sum_of(const std::vector<Number>& values) {
  return std::accumulate(values.begin(), values.end(), Number(0));
}

Number reciprocals_of(const std::vector<Number>& values) {
  Number sum(0);
  for (const Number& value : values) sum += Number(1) / value;
  return sum;
}

Number combined(Joining how, const std::vector<Number>& values) {
  return how == Joining::series ? sum_of(values) : Number(1) / reciprocals_of(values);
}

// Two neighbouring digits of a whole or decimal number exchanged, in each place.
std::vector<Number> with_digits_swapped(const Number& value) {
  std::vector<Number> swapped;
  if (value.is_symbolic() || value.is_zero()) return swapped;
  const Rounded written = rounded(value, 6);
  if (!written.exact) return swapped;
  for (std::size_t i = 0; i + 1 < written.digits.size(); ++i) {
    std::string digits = written.digits;
    std::swap(digits[i], digits[i + 1]);
    if (digits == written.digits || digits.front() == '0') continue;
    swapped.push_back(scaled(parse_number(digits).number,
                             written.exponent - static_cast<long>(digits.size()) + 1));
  }
  return swapped;
}

class CombinationErrors {
 public:
  CombinationErrors(const CaseBook& book, Joining how, const std::vector<PartId>& operands,
                    Suspects& suspects)
      : book_(book), how_(how), operands_(operands), suspects_(suspects) {
    for (const PartId operand : operands) {
      const auto own = book.own_resistance(operand);
      if (own && own->number.is_positive()) values_.push_back(own->number);
    }
  }

  void run() {
    if (values_.size() != operands_.size() || values_.size() < 2) return;
    if (how_ == Joining::series) {
      try_with(Number(1) / reciprocals_of(values_), KnownError::reciprocals_in_series);
      suspects_.try_in_units(reciprocals_of(values_), -1, about(KnownError::not_inverted));
    } else {
      in_parallel();
      of_two();
    }
    try_with(sum_of(values_) / static_cast<int>(values_.size()), KnownError::average);
    left_out();
    miscopied();
    stripped_prefixes();
  }

  // Parallel parts have less than the smallest of them, parts in series more than the largest.
  void impossible(const Number& written) {
    if (values_.size() != operands_.size() || values_.empty()) return;
    const auto least = std::min_element(values_.begin(), values_.end());
    const auto most = std::max_element(values_.begin(), values_.end());
    const bool series = how_ == Joining::series;
    const bool passes = series ? written <= *most : written >= *least;
    if (!passes && !written.is_negative() && !written.is_zero()) return;
    const auto bound = series ? most : least;
    const PartId part = operands_[static_cast<std::size_t>(bound - values_.begin())];
    suspects_.try_number(written,
                         {KnownError::impossible_size, {part}, {}, {Quantity(*bound, Unit::ohm)}});
  }

 private:
  [[nodiscard]] Diagnosis about(KnownError error) const { return {error, operands_, {}, {}}; }
  void try_with(const Number& number, KnownError error) {
    suspects_.try_number(number, about(error));
  }

  void in_parallel() {
    const Number sum = sum_of(values_);
    Number product(1);
    for (const Number& value : values_) product = product * value;
    const int count = static_cast<int>(values_.size());
    try_with(sum, KnownError::added_in_parallel);
    suspects_.try_in_units(reciprocals_of(values_), -1, about(KnownError::not_inverted));
    suspects_.try_in_units(Number(1) / sum, -1, about(KnownError::reciprocal_of_sum));
    if (count > 2) {
      suspects_.try_in_units(product / sum, count - 1, about(KnownError::product_over_sum_of_all));
    }
    suspects_.try_in_units(product, count, about(KnownError::product_without_sum));
    suspects_.try_in_units(sum / product, 1 - count, about(KnownError::sum_over_product));
    const bool alike = std::all_of(values_.begin(), values_.end(),
                                   [&](const Number& value) { return value == values_.front(); });
    for (std::size_t i = 0; i < values_.size() && !alike; ++i) {
      Diagnosis error = about(KnownError::divided_by_count);
      std::swap(error.parts.front(), error.parts[i]);
      suspects_.try_number(values_[i] / count, error);
    }
  }

  void of_two() {
    if (values_.size() != 2) return;
    const Number& a = values_[0];
    const Number& b = values_[1];
    try_with(abs(a - b), KnownError::difference);
    // a x b / a + b typed without brackets gives b + b.
    try_with(a * 2, KnownError::brackets_missing);
    try_with(b * 2, KnownError::brackets_missing);
    suspects_.try_in_units(a * b / 2, 2, about(KnownError::numerators_added));
  }

  // The value of some of the operands only.
  void left_out() {
    const std::size_t count = values_.size();
    if (count < 3 || count > kMostSubsets) return;
    for (std::size_t set = 1; set + 1 < (std::size_t{1} << count); ++set) {
      std::vector<Number> some;
      std::vector<PartId> without;
      for (std::size_t i = 0; i < count; ++i) {
        if (((set >> i) & 1U) != 0) {
          some.push_back(values_[i]);
        } else {
          without.push_back(operands_[i]);
        }
      }
      if (some.size() < 2) continue;
      suspects_.try_number(combined(how_, some),
                           {KnownError::operand_left_out, std::move(without), {}, {}});
    }
  }

  // One operand read as another part's value, or with two digits exchanged.
  void miscopied() {
    const Problem& problem = book_.problem();
    for (std::size_t i = 0; i < values_.size(); ++i) {
      const PartId operand = operands_[i];
      std::vector<Number> others = with_digits_swapped(values_[i]);
      for (std::uint32_t k = 0; k < problem.parts.size() && k < kMostOthers; ++k) {
        const Part& part = problem.parts[k];
        const bool resistor = part.kind == PartKind::resistor || part.kind == PartKind::lamp;
        if (!resistor || part.unknown || part.value.is_zero() || PartId{k} == operand) continue;
        others.push_back(part.value);
      }
      for (const Number& other : others) {
        if (other == values_[i]) continue;
        std::vector<Number> changed = values_;
        changed[i] = other;
        suspects_.try_number(combined(how_, changed),
                             {KnownError::miscopied, {operand}, {}, {Quantity(other, Unit::ohm)}});
      }
    }
  }

  // 2 kohm and 500 ohm worked with as 2 and 500.
  void stripped_prefixes() {
    std::vector<Number> bare = values_;
    bool any = false;
    for (Number& value : bare) {
      if (value.is_symbolic()) return;
      const bool thousands = value >= Number(1000);
      if (!thousands) continue;
      value = scaled(value, value >= Number(1'000'000) ? -6 : -3);
      any = true;
    }
    if (!any) return;
    const Number number = combined(how_, bare);
    for (const long power : {0L, 3L, 6L}) {
      suspects_.try_number(scaled(number, power), about(KnownError::prefix_slip));
    }
  }

  static constexpr std::uint32_t kMostOthers = 200;

  const CaseBook& book_;
  Joining how_;
  const std::vector<PartId>& operands_;
  Suspects& suspects_;
  std::vector<Number> values_;
};

}  // namespace

void try_combination_errors(const CaseBook& book, Joining how, const std::vector<PartId>& operands,
                            Suspects& suspects) {
  CombinationErrors(book, how, operands, suspects).run();
}

std::vector<Diagnosis> errors_in(const CombinationPlace& place) {
  Suspects suspects(place.written, place.right);
  CombinationErrors errors(place.book, place.how, place.operands, suspects);
  errors.run();
  try_slips(suspects, Unit::ohm);
  if (suspects.empty()) errors.impossible(place.written.number);
  return std::move(suspects).take();
}

std::vector<Diagnosis> errors_in(const RewritePlace& place) {
  Suspects suspects(place.written, place.right);
  std::vector<Number> values;
  for (const PartId operand : place.operands) {
    const auto own = place.book.own_resistance(operand);
    if (!own || !own->number.is_positive()) return {};
    values.push_back(own->number);
  }
  if (values.size() != 3) return {};
  const Number& opposite = values[place.index];
  const Number& one = values[(place.index + 1) % 3];
  const Number& two = values[(place.index + 2) % 3];
  const Number sum = opposite + one + two;
  const Number pairs = opposite * one + one * two + two * opposite;
  const std::vector<PartId> right_pair{place.operands[(place.index + 1) % 3],
                                       place.operands[(place.index + 2) % 3]};
  const Diagnosis wrong_sides{KnownError::wrong_sides_at_corner, right_pair, {}, {}};
  const Diagnosis reversed{KnownError::star_rule_reversed, place.operands, {}, {}};
  if (place.rule == RuleName::delta_star) {
    suspects.try_number(opposite * one / sum, wrong_sides);
    suspects.try_number(opposite * two / sum, wrong_sides);
    for (const Number& value : values) suspects.try_number(pairs / value, reversed);
  } else {
    suspects.try_number(pairs / one, wrong_sides);
    suspects.try_number(pairs / two, wrong_sides);
    suspects.try_number(one * two / sum, reversed);
    suspects.try_number(opposite * one / sum, reversed);
    suspects.try_number(opposite * two / sum, reversed);
  }
  try_slips(suspects, Unit::ohm);
  return std::move(suspects).take();
}

}  // namespace ohmfold
