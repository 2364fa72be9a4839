// The known errors by name, and which mark each costs.
#include "ohmfold/known_error.h"

#include <array>

namespace ohmfold {
namespace {

struct Entry {
  KnownError error;
  std::string_view word;
  bool costs_method;
};

// Which mark: docs/errors.md, from the published marking conventions named there.
constexpr std::array<Entry, kKnownErrors> kEntries{{
    {KnownError::series_at_a_junction, "series-at-a-junction", true},
    {KnownError::parallel_ends_apart, "parallel-ends-apart", true},
    {KnownError::parallel_from_a_fork, "parallel-from-a-fork", true},
    {KnownError::series_of_parallel, "series-of-parallel", true},
    {KnownError::bridge_part_combined, "bridge-part-combined", true},
    {KnownError::used_already, "used-already", true},
    {KnownError::shorted_part_counted, "shorted-part-counted", true},
    {KnownError::dead_end_counted, "dead-end-counted", true},
    {KnownError::gap_taken_for_wire, "gap-taken-for-wire", true},
    {KnownError::switch_taken_for_gap, "switch-taken-for-gap", true},
    {KnownError::meter_taken_for_other, "meter-taken-for-other", true},
    {KnownError::other_two_points, "other-two-points", true},
    {KnownError::part_forgotten, "part-forgotten", false},
    {KnownError::part_taken_for_wire, "part-taken-for-wire", false},
    {KnownError::wrong_word, "wrong-word", false},
    {KnownError::pair_overlooked, "pair-overlooked", true},
    {KnownError::not_balanced, "not-balanced", true},
    {KnownError::wrong_sides_at_corner, "wrong-sides-at-corner", false},
    {KnownError::star_rule_reversed, "star-rule-reversed", true},
    {KnownError::shorted_part_carries, "shorted-part-carries", true},
    {KnownError::no_voltage_across_gap, "no-voltage-across-gap", true},
    {KnownError::dead_end_carries, "dead-end-carries", false},
    {KnownError::internal_left_out, "internal-left-out", true},
    {KnownError::not_inverted, "not-inverted", false},
    {KnownError::product_without_sum, "product-without-sum", false},
    {KnownError::sum_over_product, "sum-over-product", false},
    {KnownError::average, "average", true},
    {KnownError::added_in_parallel, "added-in-parallel", true},
    {KnownError::reciprocals_in_series, "reciprocals-in-series", true},
    {KnownError::product_over_sum_of_all, "product-over-sum-of-all", true},
    {KnownError::reciprocal_of_sum, "reciprocal-of-sum", true},
    {KnownError::difference, "difference", true},
    {KnownError::divided_by_count, "divided-by-count", true},
    {KnownError::operand_left_out, "operand-left-out", false},
    {KnownError::brackets_missing, "brackets-missing", false},
    {KnownError::numerators_added, "numerators-added", false},
    {KnownError::prefix_slip, "prefix-slip", false},
    {KnownError::decimal_point_slip, "decimal-point-slip", false},
    {KnownError::miscopied, "miscopied", false},
    {KnownError::impossible_size, "impossible-size", false},
    {KnownError::source_on_one_part, "source-on-one-part", true},
    {KnownError::split_equally, "split-equally", true},
    {KnownError::split_in_proportion, "split-in-proportion", false},
    {KnownError::two_branch_rule_on_more, "two-branch-rule-on-more", true},
    {KnownError::no_split, "no-split", true},
    {KnownError::split_by_parts, "split-by-parts", true},
    {KnownError::voltage_shared_equally, "voltage-shared-equally", true},
    {KnownError::voltage_split_in_parallel, "voltage-split-in-parallel", true},
    {KnownError::divider_upside_down, "divider-upside-down", false},
    {KnownError::divider_without_load, "divider-without-load", true},
    {KnownError::divider_from_source, "divider-from-source", true},
    {KnownError::current_used_up, "current-used-up", true},
    {KnownError::sequential, "sequential", true},
    {KnownError::current_stays, "current-stays", true},
    {KnownError::source_over_all, "source-over-all", true},
    {KnownError::ohm_upside_down, "ohm-upside-down", true},
    {KnownError::values_of_two_parts, "values-of-two-parts", true},
    {KnownError::wrong_sign, "wrong-sign", false},
    {KnownError::wrong_order_of_points, "wrong-order-of-points", false},
    {KnownError::wrong_drop_subtracted, "wrong-drop-subtracted", true},
    {KnownError::drops_of_parallel_added, "drops-of-parallel-added", true},
    {KnownError::current_sum_wrong, "current-sum-wrong", true},
    {KnownError::potential_for_voltage, "potential-for-voltage", true},
    {KnownError::power_formula, "power-formula", true},
    {KnownError::power_of_the_whole, "power-of-the-whole", true},
    {KnownError::lost_volts_for_terminal, "lost-volts-for-terminal", false},
    {KnownError::cut_off, "cut-off", false},
    {KnownError::preferred_value, "preferred-value", false},
    {KnownError::wrong_working_hit, "wrong-working-hit", false},
}};

constexpr bool is_in_order() {
  for (std::size_t i = 0; i < kEntries.size(); ++i) {
    if (static_cast<std::size_t>(kEntries.at(i).error) != i) return false;
  }
  return true;
}
static_assert(is_in_order());

const Entry& entry_of(KnownError error) {
  return kEntries.at(static_cast<std::size_t>(error));
}

}  // namespace

std::string_view word_of(KnownError error) {
  return entry_of(error).word;
}

bool costs_method(KnownError error) {
  return entry_of(error).costs_method;
}

}  // namespace ohmfold
