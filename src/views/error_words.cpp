// The known errors in words: which function speaks of which, and what they share.
#include "views/error_words.h"

#include <array>

namespace ohmfold::views {

namespace {

struct Speaker {
  KnownError error;
  ErrorWords (*words)(const Diagnosed&);
};

constexpr std::array<Speaker, kKnownErrors> kSpeakers{{
    {KnownError::series_at_a_junction, series_at_a_junction},
    {KnownError::parallel_ends_apart, parallel_ends_apart},
    {KnownError::parallel_from_a_fork, parallel_from_a_fork},
    {KnownError::series_of_parallel, series_of_parallel},
    {KnownError::bridge_part_combined, bridge_part_combined},
    {KnownError::used_already, used_already},
    {KnownError::shorted_part_counted, shorted_part_counted},
    {KnownError::dead_end_counted, dead_end_counted},
    {KnownError::gap_taken_for_wire, gap_taken_for_wire},
    {KnownError::switch_taken_for_gap, switch_taken_for_gap},
    {KnownError::meter_taken_for_other, meter_taken_for_other},
    {KnownError::other_two_points, other_two_points},
    {KnownError::part_forgotten, part_forgotten},
    {KnownError::part_taken_for_wire, part_taken_for_wire},
    {KnownError::wrong_word, wrong_word},
    {KnownError::pair_overlooked, pair_overlooked},
    {KnownError::not_balanced, not_balanced},
    {KnownError::wrong_sides_at_corner, wrong_sides_at_corner},
    {KnownError::star_rule_reversed, star_rule_reversed},
    {KnownError::shorted_part_carries, shorted_part_carries},
    {KnownError::no_voltage_across_gap, no_voltage_across_gap},
    {KnownError::dead_end_carries, dead_end_carries},
    {KnownError::internal_left_out, internal_left_out},
    {KnownError::not_inverted, not_inverted},
    {KnownError::product_without_sum, product_without_sum},
    {KnownError::sum_over_product, sum_over_product},
    {KnownError::average, average},
    {KnownError::added_in_parallel, added_in_parallel},
    {KnownError::reciprocals_in_series, reciprocals_in_series},
    {KnownError::product_over_sum_of_all, product_over_sum_of_all},
    {KnownError::reciprocal_of_sum, reciprocal_of_sum},
    {KnownError::difference, difference},
    {KnownError::divided_by_count, divided_by_count},
    {KnownError::operand_left_out, operand_left_out},
    {KnownError::brackets_missing, brackets_missing},
    {KnownError::numerators_added, numerators_added},
    {KnownError::prefix_slip, prefix_slip},
    {KnownError::decimal_point_slip, decimal_point_slip},
    {KnownError::miscopied, miscopied},
    {KnownError::impossible_size, impossible_size},
    {KnownError::source_on_one_part, source_on_one_part},
    {KnownError::split_equally, split_equally},
    {KnownError::split_in_proportion, split_in_proportion},
    {KnownError::two_branch_rule_on_more, two_branch_rule_on_more},
    {KnownError::no_split, no_split},
    {KnownError::split_by_parts, split_by_parts},
    {KnownError::voltage_shared_equally, voltage_shared_equally},
    {KnownError::voltage_split_in_parallel, voltage_split_in_parallel},
    {KnownError::divider_upside_down, divider_upside_down},
    {KnownError::divider_without_load, divider_without_load},
    {KnownError::divider_from_source, divider_from_source},
    {KnownError::current_used_up, current_used_up},
    {KnownError::sequential, sequential},
    {KnownError::current_stays, current_stays},
    {KnownError::source_over_all, source_over_all},
    {KnownError::ohm_upside_down, ohm_upside_down},
    {KnownError::values_of_two_parts, values_of_two_parts},
    {KnownError::wrong_sign, wrong_sign},
    {KnownError::wrong_order_of_points, wrong_order_of_points},
    {KnownError::wrong_drop_subtracted, wrong_drop_subtracted},
    {KnownError::drops_of_parallel_added, drops_of_parallel_added},
    {KnownError::current_sum_wrong, current_sum_wrong},
    {KnownError::potential_for_voltage, potential_for_voltage},
    {KnownError::power_formula, power_formula},
    {KnownError::power_of_the_whole, power_of_the_whole},
    {KnownError::lost_volts_for_terminal, lost_volts_for_terminal},
    {KnownError::cut_off, cut_off},
    {KnownError::preferred_value, preferred_value},
    {KnownError::wrong_working_hit, wrong_working_hit},
}};

constexpr bool is_in_order() {
  for (std::size_t i = 0; i < kSpeakers.size(); ++i) {
    if (static_cast<std::size_t>(kSpeakers.at(i).error) != i) return false;
  }
  return true;
}
static_assert(is_in_order());

}  // namespace

ErrorWords error_words(const Diagnosed& d) {
  return kSpeakers.at(static_cast<std::size_t>(d.diagnosis.error)).words(d);
}

Words Diagnosed::part(std::size_t index) const {
  return has_part(index) ? say(line.words.words.part(part_id(index))) : say("this part");
}

Words Diagnosed::described(std::size_t index) const {
  return has_part(index) ? line.words.words.described(part_id(index)) : say("this part");
}

Words Diagnosed::name_of_point(std::size_t index) const {
  return has_point(index) ? say(line.words.words.point(diagnosis.points[index]))
                          : say("this point");
}

Words Diagnosed::point(std::size_t index) const {
  return say(has_point(index) ? "point " : "", name_of_point(index));
}

Words Diagnosed::parts_from(std::size_t index) const {
  constexpr std::size_t kMostParts = 5;
  if (!has_part(index)) return say(index == 0 ? "the parts" : "the others");
  return line.words.words.parts(std::span(diagnosis.parts).subspan(index), kMostParts);
}

Words Diagnosed::least() const {
  return say("the ", diagnosis.parts.size() == 2 ? "smaller" : "smallest", " of ", all());
}

Words Diagnosed::greatest() const {
  return say("the ", diagnosis.parts.size() == 2 ? "larger" : "largest", " of ", all());
}

Words Diagnosed::number(std::size_t index) const {
  if (index >= diagnosis.numbers.size()) return say("this");
  return say(Amount{diagnosis.numbers[index], Form::compact, line.words.figures});
}

Words Diagnosed::so() const {
  const std::optional<Quantity> target = line.target();
  return target ? say(" That makes ", line.words.value(*target), ".") : Words();
}

}  // namespace ohmfold::views
