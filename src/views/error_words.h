// What there is to say about each known error, at each level of help.
#pragma once

#include <string>

#include "ohmfold/coach.h"
#include "views/judged_work.h"

namespace ohmfold::views {

/// One error at one place. `nudge` holds no value and gives no place away; `point` says where to
/// look; `tell` gives reason and value.
struct ErrorWords {
  Words cause;  ///< a clause that follows "… comes out when"; empty where the cause is not known
  Words nudge, point, tell;
};

/// A diagnosis with the names of its parts and points. Refers to both, which must outlive it.
class Diagnosed {
 public:
  Diagnosed(const JudgedLine& the_line, const Diagnosis& the_diagnosis)
      : line(the_line), diagnosis(the_diagnosis) {}

  const JudgedLine& line;
  const Diagnosis& diagnosis;

  [[nodiscard]] bool has_part(std::size_t index) const { return index < diagnosis.parts.size(); }
  [[nodiscard]] bool has_point(std::size_t index) const { return index < diagnosis.points.size(); }
  [[nodiscard]] PartId part_id(std::size_t index) const {
    return has_part(index) ? diagnosis.parts[index] : PartId();
  }
  /// "R1"; "this part" where the diagnosis does not say.
  [[nodiscard]] Words part(std::size_t index) const;
  /// "battery E", "R1"
  [[nodiscard]] Words described(std::size_t index) const;
  /// "A"; "this point" where the diagnosis does not say.
  [[nodiscard]] Words name_of_point(std::size_t index) const;
  /// "point A"
  [[nodiscard]] Words point(std::size_t index) const;
  /// "R1, R2 and R3"; "the parts" where the diagnosis does not say.
  [[nodiscard]] Words all() const { return parts_from(0); }
  /// "the smaller of R1 and R2", "the smallest of R1, R2 and R3"
  [[nodiscard]] Words least() const;
  [[nodiscard]] Words greatest() const;
  /// All parts but the first.
  [[nodiscard]] Words others() const { return parts_from(1); }
  /// Is there more than one part from this one on?
  [[nodiscard]] bool several_from(std::size_t index) const {
    return diagnosis.parts.size() > index + 1;
  }
  [[nodiscard]] Words number(std::size_t index) const;
  /// Is the line about parts in series? Otherwise, where it combines parts, in parallel.
  [[nodiscard]] bool is_series() const { return line.judgement.rule == RuleName::series; }

  /// " That makes 6 Ω.", on the person's own numbers; nothing where the value is not known.
  [[nodiscard]] Words so() const;

 private:
  [[nodiscard]] Words parts_from(std::size_t index) const;
};

[[nodiscard]] ErrorWords error_words(const Diagnosed& d);

// Of structure: what may be combined.
[[nodiscard]] ErrorWords series_at_a_junction(const Diagnosed& d);
[[nodiscard]] ErrorWords parallel_ends_apart(const Diagnosed& d);
[[nodiscard]] ErrorWords parallel_from_a_fork(const Diagnosed& d);
[[nodiscard]] ErrorWords series_of_parallel(const Diagnosed& d);
[[nodiscard]] ErrorWords bridge_part_combined(const Diagnosed& d);
[[nodiscard]] ErrorWords used_already(const Diagnosed& d);
[[nodiscard]] ErrorWords wrong_word(const Diagnosed& d);
[[nodiscard]] ErrorWords pair_overlooked(const Diagnosed& d);
[[nodiscard]] ErrorWords not_balanced(const Diagnosed& d);
[[nodiscard]] ErrorWords wrong_sides_at_corner(const Diagnosed& d);
[[nodiscard]] ErrorWords star_rule_reversed(const Diagnosed& d);

// Of structure: what is in the circuit, and what it is.
[[nodiscard]] ErrorWords shorted_part_counted(const Diagnosed& d);
[[nodiscard]] ErrorWords dead_end_counted(const Diagnosed& d);
[[nodiscard]] ErrorWords gap_taken_for_wire(const Diagnosed& d);
[[nodiscard]] ErrorWords switch_taken_for_gap(const Diagnosed& d);
[[nodiscard]] ErrorWords meter_taken_for_other(const Diagnosed& d);
[[nodiscard]] ErrorWords other_two_points(const Diagnosed& d);
[[nodiscard]] ErrorWords part_forgotten(const Diagnosed& d);
[[nodiscard]] ErrorWords part_taken_for_wire(const Diagnosed& d);
[[nodiscard]] ErrorWords shorted_part_carries(const Diagnosed& d);
[[nodiscard]] ErrorWords no_voltage_across_gap(const Diagnosed& d);
[[nodiscard]] ErrorWords dead_end_carries(const Diagnosed& d);
[[nodiscard]] ErrorWords internal_left_out(const Diagnosed& d);

// Of arithmetic.
[[nodiscard]] ErrorWords not_inverted(const Diagnosed& d);
[[nodiscard]] ErrorWords product_without_sum(const Diagnosed& d);
[[nodiscard]] ErrorWords sum_over_product(const Diagnosed& d);
[[nodiscard]] ErrorWords average(const Diagnosed& d);
[[nodiscard]] ErrorWords added_in_parallel(const Diagnosed& d);
[[nodiscard]] ErrorWords reciprocals_in_series(const Diagnosed& d);
[[nodiscard]] ErrorWords product_over_sum_of_all(const Diagnosed& d);
[[nodiscard]] ErrorWords reciprocal_of_sum(const Diagnosed& d);
[[nodiscard]] ErrorWords difference(const Diagnosed& d);
[[nodiscard]] ErrorWords divided_by_count(const Diagnosed& d);
[[nodiscard]] ErrorWords operand_left_out(const Diagnosed& d);
[[nodiscard]] ErrorWords brackets_missing(const Diagnosed& d);
[[nodiscard]] ErrorWords numerators_added(const Diagnosed& d);
[[nodiscard]] ErrorWords prefix_slip(const Diagnosed& d);
[[nodiscard]] ErrorWords decimal_point_slip(const Diagnosed& d);
[[nodiscard]] ErrorWords miscopied(const Diagnosed& d);
[[nodiscard]] ErrorWords impossible_size(const Diagnosed& d);

// Of the way back: currents.
[[nodiscard]] ErrorWords split_equally(const Diagnosed& d);
[[nodiscard]] ErrorWords split_in_proportion(const Diagnosed& d);
[[nodiscard]] ErrorWords two_branch_rule_on_more(const Diagnosed& d);
[[nodiscard]] ErrorWords no_split(const Diagnosed& d);
[[nodiscard]] ErrorWords split_by_parts(const Diagnosed& d);
[[nodiscard]] ErrorWords current_used_up(const Diagnosed& d);
[[nodiscard]] ErrorWords sequential(const Diagnosed& d);
[[nodiscard]] ErrorWords current_stays(const Diagnosed& d);
[[nodiscard]] ErrorWords source_over_all(const Diagnosed& d);
[[nodiscard]] ErrorWords current_sum_wrong(const Diagnosed& d);
[[nodiscard]] ErrorWords wrong_sign(const Diagnosed& d);
[[nodiscard]] ErrorWords ohm_upside_down(const Diagnosed& d);
[[nodiscard]] ErrorWords values_of_two_parts(const Diagnosed& d);

// Of the way back: voltages and powers.
[[nodiscard]] ErrorWords source_on_one_part(const Diagnosed& d);
[[nodiscard]] ErrorWords voltage_shared_equally(const Diagnosed& d);
[[nodiscard]] ErrorWords voltage_split_in_parallel(const Diagnosed& d);
[[nodiscard]] ErrorWords divider_upside_down(const Diagnosed& d);
[[nodiscard]] ErrorWords divider_without_load(const Diagnosed& d);
[[nodiscard]] ErrorWords divider_from_source(const Diagnosed& d);
[[nodiscard]] ErrorWords wrong_order_of_points(const Diagnosed& d);
[[nodiscard]] ErrorWords wrong_drop_subtracted(const Diagnosed& d);
[[nodiscard]] ErrorWords drops_of_parallel_added(const Diagnosed& d);
[[nodiscard]] ErrorWords potential_for_voltage(const Diagnosed& d);
[[nodiscard]] ErrorWords power_formula(const Diagnosed& d);
[[nodiscard]] ErrorWords power_of_the_whole(const Diagnosed& d);
[[nodiscard]] ErrorWords lost_volts_for_terminal(const Diagnosed& d);

// Of reporting.
[[nodiscard]] ErrorWords cut_off(const Diagnosed& d);
[[nodiscard]] ErrorWords preferred_value(const Diagnosed& d);
[[nodiscard]] ErrorWords wrong_working_hit(const Diagnosed& d);

}  // namespace ohmfold::views
