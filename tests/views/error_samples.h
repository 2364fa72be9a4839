// A line of work for every known error, as a person might write it.
#pragma once

#include <string>
#include <vector>

#include "judged_samples.h"

namespace ohmfold::test {

enum class About { series, parallel, current, voltage, power, whole, no_pair, no_current, delta };

struct ErrorRow {
  KnownError error;
  About about;
  std::string of;      // the operands, or the part
  std::string digits;  // as written
  std::string right;   // the true value
  std::string parts, points;
  std::string number = {};
};

inline const std::vector<ErrorRow>& error_rows() {
  using enum KnownError;
  static const std::vector<ErrorRow> kRows{
      {series_at_a_junction, About::series, "R1 R2", "13", "", "R1 R2 R3", "B"},
      {parallel_ends_apart, About::parallel, "R2 R4", "4.95", "", "R2 R4", "B C"},
      {parallel_from_a_fork, About::parallel, "R2 R3", "3.94", "", "R2 R3", "B D C"},
      {series_of_parallel, About::series, "R2 R34", "27", "6", "R2 R34", "B D"},
      {bridge_part_combined, About::series, "R3 R5", "13", "", "R5", "C F"},
      {used_already, About::parallel, "R3 R34", "5.04", "", "R3 R34", ""},
      {shorted_part_counted, About::whole, "", "16", "10", "R5", "C"},
      {dead_end_counted, About::whole, "", "16", "10", "R5", "C"},
      {gap_taken_for_wire, About::whole, "", "8.29", "10", "S", ""},
      {switch_taken_for_gap, About::whole, "", "8.29", "10", "S", ""},
      {meter_taken_for_other, About::whole, "", "4", "10", "M", ""},
      {meter_taken_for_other, About::current, "E", "0", "5/2", "N", ""},
      {other_two_points, About::whole, "", "6", "10", "", "B D A D"},
      {part_forgotten, About::whole, "", "22", "10", "R2", ""},
      {part_taken_for_wire, About::whole, "", "8.95", "10", "R3", ""},
      {wrong_word, About::series, "R2 R34", "6", "6", "R2 R34", ""},
      {pair_overlooked, About::no_pair, "", "", "", "R2 R34", "B D"},
      {pair_overlooked, About::no_pair, "", "", "", "R3 R4", "C"},
      {not_balanced, About::no_current, "R5", "", "", "R5", ""},
      {wrong_sides_at_corner, About::delta, "R2 R3 R4", "77/27", "7/3", "R2 R3", ""},
      {star_rule_reversed, About::delta, "R2 R3 R4", "239/11", "7/3", "R2 R3 R4", ""},
      {shorted_part_carries, About::current, "R5", "2", "0", "R5", "C"},
      {no_voltage_across_gap, About::voltage, "S", "0", "15", "S", ""},
      {dead_end_carries, About::current, "R5", "2", "0", "R5", ""},
      {internal_left_out, About::current, "E", "3", "5/2", "E", ""},
      {not_inverted, About::parallel, "R2 R34", "1/6", "6", "R2 R34", ""},
      {product_without_sum, About::parallel, "R2 R34", "162", "6", "R2 R34", ""},
      {sum_over_product, About::parallel, "R2 R34", "1/6", "6", "R2 R34", ""},
      {average, About::parallel, "R2 R34", "13.5", "6", "R2 R34", ""},
      {added_in_parallel, About::parallel, "R2 R34", "27", "6", "R2 R34", ""},
      {reciprocals_in_series, About::series, "R3 R4", "4.28", "18", "R3 R4", ""},
      {product_over_sum_of_all, About::parallel, "R2 R3 R4", "25.7", "693/239", "R2 R3 R4", ""},
      {reciprocal_of_sum, About::parallel, "R2 R34", "1/27", "6", "R2 R34", ""},
      {difference, About::parallel, "R2 R34", "9", "6", "R2 R34", ""},
      {divided_by_count, About::parallel, "R2 R34", "4.5", "6", "R2 R34", ""},
      {operand_left_out, About::parallel, "R2 R3 R4", "3.94", "693/239", "R4", ""},
      {brackets_missing, About::parallel, "R2 R34", "36", "6", "R2 R34", ""},
      {numerators_added, About::parallel, "R2 R34", "81", "6", "R2 R34", ""},
      {prefix_slip, About::parallel, "R2 R34", "6000", "6", "R2 R34", ""},
      {decimal_point_slip, About::parallel, "R2 R34", "60", "6", "R2 R34", ""},
      {miscopied, About::parallel, "R2 R34", "4.5", "6", "R2", "", "6"},
      {impossible_size, About::parallel, "R2 R34", "11", "6", "R2 R34", "", "9"},
      {impossible_size, About::series, "R3 R4", "8", "18", "R3 R4", "", "11"},
      {impossible_size, About::whole, "", "40", "10", "R1 R2 R3 R4", "", "31"},
      {source_on_one_part, About::voltage, "R2", "30", "15", "R2 E", ""},
      {split_equally, About::current, "R2", "1.25", "5/3", "R2 R34", ""},
      {split_in_proportion, About::current, "R2", "0.833", "5/3", "R2 R34", ""},
      {two_branch_rule_on_more, About::current, "R2", "1.67", "5/4", "R2 R3 R4", ""},
      {no_split, About::current, "R2", "2.5", "5/3", "R2 R1", ""},
      {split_by_parts, About::current, "R2", "0.833", "5/3", "R2 R3 R4", ""},
      {voltage_shared_equally, About::voltage, "R3", "7.5", "35/6", "R3 R4", ""},
      {voltage_split_in_parallel, About::voltage, "R2", "7.5", "15", "R2 R34", ""},
      {divider_upside_down, About::voltage, "R4", "5.83", "55/6", "R4 R3", ""},
      {divider_without_load, About::voltage, "R2", "20.8", "15", "R2 R3", "B"},
      {divider_from_source, About::voltage, "R4", "18.3", "55/6", "R4 E", ""},
      {current_used_up, About::current, "R4", "0.5", "5/6", "R4 R3", ""},
      {sequential, About::current, "R2", "2.31", "5/3", "R2 R1", ""},
      {current_stays, About::current, "E", "3", "5/2", "E", ""},
      {source_over_all, About::current, "E", "0.909", "5/2", "E R1 R2 R3 R4", ""},
      {ohm_upside_down, About::current, "R2", "0.6", "5/3", "R2", ""},
      {values_of_two_parts, About::voltage, "R4", "18.3", "55/6", "R4 R2", ""},
      {wrong_sign, About::current, "R2", "-1.67", "5/3", "R2", "B D"},
      {wrong_order_of_points, About::voltage, "R2", "-15", "15", "", "B D"},
      {wrong_drop_subtracted, About::voltage, "R2", "24.2", "15", "R2 R3", ""},
      {drops_of_parallel_added, About::voltage, "R2", "30", "15", "R2 R34", ""},
      {current_sum_wrong, About::current, "R1", "0.833", "5/2", "R1 R2 R3", "B"},
      {potential_for_voltage, About::voltage, "R1", "25", "10", "R1", "A"},
      {power_formula, About::power, "R2", "15", "25", "R2", ""},
      {power_of_the_whole, About::power, "R2", "56.3", "25", "R2 R1", ""},
      {lost_volts_for_terminal, About::voltage, "E", "5", "25", "E", ""},
      {cut_off, About::current, "R2", "1.66", "5/3", "", ""},
      {preferred_value, About::parallel, "R2 R34", "6.2", "6", "", ""},
      {wrong_working_hit, About::whole, "", "10", "10", "", ""},
  };
  return kRows;
}

/// A sample with one line of working, and then the line of the row.
struct Told {
  JudgedSample sample;

  explicit Told(const ErrorRow& row) {
    sample.add_combination(Joining::series, "R3 R4", "R34", "18.0").value = ValueVerdict::exact;
    Judgement& judgement = line_of(row);
    judgement.value = row.digits.empty() ? ValueVerdict::none : ValueVerdict::wrong;
    if (!row.right.empty()) {
      const Unit unit = judgement.stated ? judgement.stated->unit : Unit::ohm;
      judgement.right = Quantity(parse_number(row.right).number, unit);
    }
    Diagnosis diagnosis;
    diagnosis.error = row.error;
    if (!row.parts.empty()) diagnosis.parts = sample.parts(row.parts);
    if (!row.points.empty()) diagnosis.points = sample.points(row.points);
    if (!row.number.empty()) {
      diagnosis.numbers.emplace_back(parse_number(row.number).number, Unit::ohm);
    }
    const bool is_right =
        row.error == KnownError::wrong_word || row.error == KnownError::wrong_working_hit;
    if (is_right) judgement.value = ValueVerdict::exact;
    if (row.error == KnownError::wrong_working_hit) judgement.caused_by = {0};
    judgement.errors = {diagnosis};
  }

  Judgement& line_of(const ErrorRow& row) {
    switch (row.about) {
      case About::series:
        return sample.add_combination(Joining::series, row.of, "Rx", row.digits);
      case About::parallel:
        return sample.add_combination(Joining::parallel, row.of, "Rx", row.digits);
      case About::current:
        return sample.add_value(Claimed::current, row.of, row.digits, Unit::ampere);
      case About::voltage:
        return sample.add_value(Claimed::voltage, row.of, row.digits, Unit::volt);
      case About::power:
        return sample.add_value(Claimed::power, row.of, row.digits, Unit::watt);
      case About::whole:
        return sample.add_value(Claimed::whole_resistance, "", row.digits, Unit::ohm);
      case About::no_pair: {
        Judgement& judgement = sample.add("no series or parallel pair left", NoPairClaim{});
        judgement.step = StepVerdict::refused;
        return judgement;
      }
      case About::no_current: {
        Judgement& judgement =
            sample.add("no current through " + row.of, NoCurrentClaim{{row.of, {}}});
        judgement.step = StepVerdict::refused;
        judgement.rule = RuleName::equal_potentials;
        judgement.operands = sample.parts(row.of);
        return judgement;
      }
      case About::delta: {
        RewriteClaim claim;
        claim.rule = RuleName::delta_star;
        claim.values = {JudgedSample::written(row.digits, Unit::ohm)};
        Judgement& judgement = sample.add(
            "R2 R3 R4 in delta make Ra Rb Rc = " + row.digits + ", 11/3, 7/3 ohm", claim);
        judgement.step = StepVerdict::right;
        judgement.rule = RuleName::delta_star;
        judgement.operands = sample.parts(row.of);
        judgement.stated = Quantity(parse_number(row.digits).number, Unit::ohm);
        return judgement;
      }
    }
    return sample.judged.lines.front();
  }
};

}  // namespace ohmfold::test
