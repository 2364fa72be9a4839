// The known errors of students: wrong ideas that each give a number, or a step, of their own.
//
// A number is blamed on an error only where the error gives exactly that number at that very place.
// Published reviews of where they come from are named in docs/errors.md.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

#include "ohmfold/ids.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// Behind each: what Diagnosis::parts, points and numbers hold, in order. "the part" is the one
/// that the claim is about.
enum class KnownError : std::uint8_t {
  // --- of structure: what may be combined ------------------------------------------------------
  series_at_a_junction,   ///< parts: two neighbours, the third part; points: where it joins
  parallel_ends_apart,    ///< parts: two; points: where the first ends, where the second does
  parallel_from_a_fork,   ///< parts: two; points: the shared one, the two far ends
  series_of_parallel,     ///< called series, they join the same two points; parts: two; points: two
  bridge_part_combined,   ///< parts: the bridging part; points: its ends
  used_already,           ///< parts: the part, the part it is inside of
  shorted_part_counted,   ///< parts: the part; points: the one it has both ends on
  dead_end_counted,       ///< parts: the part; points: where it hangs, if at one point
  gap_taken_for_wire,     ///< parts: the open switch, or what else joins nothing
  switch_taken_for_gap,   ///< parts: the closed switch, or another ideal wire
  meter_taken_for_other,  ///< parts: an ammeter taken for a gap, or a voltmeter for a wire
  other_two_points,       ///< resistance between others; points: those used, then those asked
  part_forgotten,         ///< parts: the part that the number leaves out
  part_taken_for_wire,    ///< parts: the part that the number takes for a wire
  wrong_word,             ///< right value, series said for parallel or the reverse; parts: two
  pair_overlooked,        ///< "no pair left", but there is; parts: two; points: theirs or between
  not_balanced,           ///< no current claimed in a bridge out of balance; parts: the part
  wrong_sides_at_corner,  ///< delta to star with the wrong pair; parts: the right pair
  star_rule_reversed,     ///< the formula of the reverse transformation; parts: the three
  shorted_part_carries,   ///< parts: the part; points: the one it has both ends on
  no_voltage_across_gap,  ///< parts: what is open
  dead_end_carries,       ///< parts: the part
  internal_left_out,      ///< parts: the battery
  // --- of arithmetic, in one combination; parts: its operands ----------------------------------
  not_inverted,             ///< the sum of the reciprocals itself
  product_without_sum,      ///<
  sum_over_product,         ///<
  average,                  ///<
  added_in_parallel,        ///< the sum where they are in parallel
  reciprocals_in_series,    ///< the parallel value where they are in series
  product_over_sum_of_all,  ///< product over sum of three or more
  reciprocal_of_sum,        ///<
  difference,               ///<
  divided_by_count,         ///< one value over how many there are; parts: that one first
  operand_left_out,         ///< parts: those left out
  brackets_missing,         ///< a b / a + b, or E / R1 + R2
  numerators_added,         ///< a b / 2
  prefix_slip,              ///< a power of 1000 too much or too little
  decimal_point_slip,       ///< a power of ten too much or too little
  miscopied,                ///< parts: the operand; numbers: what it was taken for
  impossible_size,          ///< numbers: the bound that it passes
  // --- of the way back; parts: the part, then those whose values were used ----------------------
  source_on_one_part,       ///< the whole source voltage on one part of a path; parts: part, source
  split_equally,            ///< the current shared in equal parts; parts: part, the others
  split_in_proportion,      ///< … in proportion to R; parts: part, the others
  two_branch_rule_on_more,  ///< parts: part, the others
  no_split,                 ///< the whole current in each branch; parts: part, what carries it
  split_by_parts,           ///< … by how many parts there are, not branches; parts: part, …
  voltage_shared_equally,   ///< in series; parts: part, the others
  voltage_split_in_parallel,  ///< parts: part, the others
  divider_upside_down,        ///< parts: part, the others
  divider_without_load,       ///< parts: part, what else is joined; points: where
  divider_from_source,        ///< an inner divider from E; parts: part, source
  current_used_up,            ///< less behind a part than before it; parts: part, that before
  sequential,                 ///< only the parts met so far count; parts: part, those
  current_stays,              ///< of another case, as if the source gave a fixed current
  source_over_all,            ///< E over the sum of all; parts: source, …
  ohm_upside_down,            ///< R/V, V R, I/R; parts: part
  values_of_two_parts,        ///< V of one with R of another; parts: part, the other
  wrong_sign,                 ///< the size is right; points: from which to which it is counted
  wrong_order_of_points,      ///< V_B - V_A for V_AB; points: the two
  wrong_drop_subtracted,      ///< parts: part, that whose drop was subtracted
  drops_of_parallel_added,    ///< parts: part, the others
  current_sum_wrong,          ///< parts: part, those added or subtracted; points: where
  potential_for_voltage,      ///< parts: part; points: whose potential it is
  power_formula,              ///< I R, V/I, I²/R, V² R, or half; parts: part
  power_of_the_whole,         ///< with the total current, or with E; parts: part, that
  lost_volts_for_terminal,    ///< or the reverse; parts: battery
  // --- of reporting -----------------------------------------------------------------------------
  cut_off,            ///< cut where it had to be rounded; numbers: none
  preferred_value,    ///< the nearest value of the series E12 or E24
  wrong_working_hit,  ///< the right number from wrong lines
};

inline constexpr std::size_t kKnownErrors =
    static_cast<std::size_t>(KnownError::wrong_working_hit) + 1;

/// An error that gives what was written, at the place where it was written.
struct Diagnosis {
  KnownError error{};
  std::vector<PartId> parts;      ///< of the person's own network
  std::vector<PointId> points;    ///< of that network
  std::vector<Quantity> numbers;  ///< never the right value
};

/// "series-at-a-junction", …: the error as other programs read it.
[[nodiscard]] std::string_view word_of(KnownError error);

/// Does the error cost the method mark of its line? Otherwise it costs the accuracy mark alone.
[[nodiscard]] bool costs_method(KnownError error);

}  // namespace ohmfold
