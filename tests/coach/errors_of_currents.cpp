// Works with a wrong current or power, by the formula of each known error.
#include "coach/error_scene.h"
#include "ohmfold/decimal.h"

namespace ohmfold::test {
namespace {

using enum KnownError;

// An operand of a combination, and what a formula may use of it. Sizes.
struct InGroup {
  Number current, voltage;  // of the whole group
  Numbers resistances;      // of the operands
  std::size_t self = 0;
  std::size_t leaves = 0, own_leaves = 0;  // resistors of the file
  Number emf, whole_current;

  [[nodiscard]] const Number& own() const { return resistances[self]; }
  [[nodiscard]] Number sum() const { return follow(support::Way::sum, resistances); }
  [[nodiscard]] int count() const { return static_cast<int>(resistances.size()); }
};

struct Share {
  KnownError error{};
  Joining how{};
  std::string what;  // "I", "V" or "P" of the operand
  std::function<std::optional<Number>(const InGroup&)> number;
};

std::size_t leaves_of(const std::vector<Made>& all, const std::string& name) {
  for (const Made& made : all) {
    if (made.name != name) continue;
    std::size_t leaves = 0;
    for (const std::string& operand : made.operands) leaves += leaves_of(all, operand);
    return leaves;
  }
  return 1;
}

std::optional<ErrorWork> make_share(const Share& share, RandomCircuits& random) {
  const Scene scene(random);
  const Made& made = scene.any_made(random);
  if (made.how != share.how) return std::nullopt;
  const std::size_t self = random.below(made.operands.size());
  const std::string& name = made.operands[self];
  InGroup group{scene["I " + made.name],
                scene["V " + made.name],
                scene.values("R", made.operands),
                self,
                leaves_of(scene.work.made, made.name),
                leaves_of(scene.work.made, name),
                scene["E"],
                scene["I X0"]};
  const auto wrong = share.number(group);
  if (!wrong) return std::nullopt;
  const std::string words = share.what == "I"   ? "current through "
                            : share.what == "V" ? "voltage across "
                                                : "power in ";
  const char* unit = share.what == "I" ? "A" : share.what == "V" ? "V" : "W";
  return scene.with_value(scene.whole_reduction(), words + name, share.what + " " + name, *wrong,
                          unit);
}

std::vector<Share> shares() {
  constexpr auto kSeries = Joining::series;
  constexpr auto kParallel = Joining::parallel;
  using Group = const InGroup&;
  const auto only_if = [](bool holds, const Number& number) {
    return holds ? std::optional(number) : std::nullopt;
  };
  return {
      {split_equally, kParallel, "I", [](Group g) { return g.current / g.count(); }},
      {split_in_proportion, kParallel, "I", [](Group g) { return g.current * g.own() / g.sum(); }},
      {two_branch_rule_on_more, kParallel, "I",
       [=](Group g) { return only_if(g.count() > 2, g.current * (g.sum() - g.own()) / g.sum()); }},
      {no_split, kParallel, "I", [](Group g) { return g.current; }},
      {split_by_parts, kParallel, "I",
       [=](Group g) {
         return only_if(g.leaves > static_cast<std::size_t>(g.count()),
                        g.current / static_cast<int>(g.leaves));
       }},
      {voltage_shared_equally, kSeries, "V", [](Group g) { return g.voltage / g.count(); }},
      {voltage_split_in_parallel, kParallel, "V", [](Group g) { return g.voltage / g.count(); }},
      {voltage_split_in_parallel, kParallel, "V",
       [](Group g) { return g.voltage * g.own() / g.sum(); }},
      {divider_upside_down, kSeries, "V",
       [=](Group g) { return only_if(g.count() == 2, g.voltage * (g.sum() - g.own()) / g.sum()); }},
      {divider_from_source, kSeries, "V",
       [=](Group g) { return only_if(g.emf != g.voltage, g.emf * g.own() / g.sum()); }},
      {drops_of_parallel_added, kParallel, "V", [](Group g) { return g.voltage * g.count(); }},
      {source_on_one_part, kSeries, "I", [](Group g) { return g.emf / g.own(); }},
      {source_on_one_part, kSeries, "V", [](Group g) { return g.emf; }},
      {ohm_upside_down, kSeries, "V", [](Group g) { return g.own() / g.current; }},
      {ohm_upside_down, kSeries, "V", [](Group g) { return g.current / g.own(); }},
      {ohm_upside_down, kParallel, "I", [](Group g) { return g.voltage * g.own(); }},
      {ohm_upside_down, kParallel, "I", [](Group g) { return g.own() / g.voltage; }},
      {power_formula, kSeries, "P", [](Group g) { return g.current * g.own(); }},
      {power_formula, kSeries, "P", [](Group g) { return g.current * g.current / g.own(); }},
      {power_formula, kParallel, "P", [](Group g) { return g.voltage * g.voltage / g.own() / 2; }},
      {power_formula, kParallel, "P", [](Group g) { return g.voltage * g.voltage * g.own(); }},
      {power_of_the_whole, kParallel, "P", [](Group g) { return g.emf * g.emf / g.own(); }},
      {power_of_the_whole, kParallel, "P",
       [](Group g) { return g.whole_current * g.whole_current * g.own(); }},
  };
}

std::optional<ErrorWork> make_values_of_two(const std::string& what, RandomCircuits& random) {
  const Scene scene(random);
  const std::vector<Part>& parts = scene.work.exercise.problem->parts;
  const std::string& one = parts[1 + random.below(parts.size() - 1)].name;
  const std::string& two = parts[1 + random.below(parts.size() - 1)].name;
  if (what == "I") {
    return scene.with_value(scene.whole_reduction(), "I_" + one, "I " + one,
                            scene["V " + two] / scene["R " + one], "A");
  }
  return scene.with_value(scene.whole_reduction(), "V_" + one, "V " + one,
                          scene["I " + two] * scene["R " + one], "V");
}

std::optional<ErrorWork> make_source_over_all(RandomCircuits& random) {
  const Scene scene(random);
  Number all(0);
  for (const Part& part : scene.work.exercise.problem->parts) {
    if (!is_source(part.kind)) all += part.value;
  }
  return scene.with_value(scene.whole_reduction(), "current through X0", "I X0", scene["E"] / all,
                          "A");
}

std::optional<ErrorWork> make_internal_left_out(RandomCircuits& random) {
  const Scene scene(random);
  return scene.with_value(scene.whole_reduction(), "current through X0", "I X0",
                          scene["E"] / scene["R whole"], "A");
}

// The path from the positive terminal: only what comes before the part, and the part, count.
std::optional<ErrorWork> make_sequential(RandomCircuits& random) {
  const Number emf(static_cast<int>(5 + random.below(40)));
  const Number r1 = random.resistance();
  const Number r2 = random.resistance();
  const Number r3 = random.resistance();
  return on_circuit("battery E = " + emf.to_string() + " V from G to T\nresistor R1 = " +
                        r1.to_string() + " ohm from T to A\nresistor R2 = " + r2.to_string() +
                        " ohm from A to B\nresistor R3 = " + r3.to_string() + " ohm from B to G\n",
                    "I_R2 = " + exactly_written(emf / (r1 + r2)) + " A\n");
}

std::optional<ErrorWork> make_current_stays(RandomCircuits& random) {
  const Number emf(static_cast<int>(5 + random.below(40)));
  const Number r1 = random.resistance();
  return on_circuit("battery E = " + emf.to_string() + " V from G to T\nresistor R1 = " +
                        r1.to_string() + " ohm from T to A\n" + resistor(random, "R2", "A", "B") +
                        "switch S from A to G\nwire from B to G\ncase \"open\": S open\n"
                        "case \"closed\": S closed\n",
                    "case \"open\"\nI_R1 = " + exactly_written(emf / r1) + " A\n");
}

// Where one current comes in and two go out: their difference in place of their sum.
std::optional<ErrorWork> make_current_sum_wrong(RandomCircuits& random) {
  const Number v(static_cast<int>(5 + random.below(40)));
  const Number r2 = random.resistance();
  const Number r3 = random.resistance();
  const Number wrong = abs(v / r2 - v / r3);
  if (wrong.is_zero()) return std::nullopt;
  return on_circuit("battery E = " + (v * 2).to_string() +
                        " V from G to T\nresistor R1 = " + (1 / (1 / r2 + 1 / r3)).to_string() +
                        " ohm from T to A\nresistor R2 = " + r2.to_string() +
                        " ohm from A to G\nresistor R3 = " + r3.to_string() + " ohm from A to G\n",
                    "I_R1 = " + exactly_written(wrong) + " A\n");
}

// Two resistors in series on a battery, the lines that a row is about, and their numbers.
struct TwoInSeries {
  Number emf, r1, r2;

  explicit TwoInSeries(RandomCircuits& random)
      : emf(static_cast<int>(5 + random.below(40))),
        r1(random.resistance()),
        r2(random.resistance()) {}

  [[nodiscard]] ErrorWork with(const std::string& lines) const {
    return on_circuit(
        "battery E = " + emf.to_string() + " V from G to T\nresistor R1 = " + r1.to_string() +
            " ohm from T to A\nresistor R2 = " + r2.to_string() + " ohm from A to G\n",
        lines);
  }
};

// Behind the first part a little less runs than through it.
std::optional<ErrorWork> make_current_used_up(RandomCircuits& random) {
  const TwoInSeries two(random);
  const Number current = two.emf / (two.r1 + two.r2);
  return two.with("R12 = R1 + R2\nI_R1 = " + exactly_written(current) +
                  " A\nI_R2 = " + exactly_written(current * 17 / 19) + " A\n");
}

// E / R1 + R2 as a calculator takes it.
std::optional<ErrorWork> make_brackets_missing(RandomCircuits& random) {
  const TwoInSeries two(random);
  return two.with("R12 = R1 + R2\nI_E = " + exactly_written(two.emf / two.r1 + two.r2) + " A\n");
}

// The right current behind a wrong resistance.
std::optional<ErrorWork> make_wrong_working_hit(RandomCircuits& random) {
  const TwoInSeries two(random);
  const Number whole = two.r1 + two.r2;
  return two.with("R12 = R1 + R2 = " + exactly_written(whole * 3) +
                  " ohm\nI_E = " + exactly_written(two.emf / whole) + " A\n");
}

// The first three decimals of a current, where the fourth would raise the last of them.
std::optional<ErrorWork> make_cut_off(RandomCircuits& random) {
  const TwoInSeries two(random);
  const Number current = two.emf / (two.r1 + two.r2);
  const std::string longer = round_to_figures(current, 12);
  const std::size_t point = longer.find('.');
  if (point == std::string::npos || longer.size() < point + 6 || longer[point + 4] < '6') {
    return std::nullopt;
  }
  return two.with("I_E = " + longer.substr(0, point + 4) + " A\n");
}

std::optional<ErrorWork> make_wrong_sign(RandomCircuits& random) {
  const Scene scene(random);
  const std::vector<Part>& parts = scene.work.exercise.problem->parts;
  const std::size_t index = random.below(parts.size());
  const Reading& current = scene.work.exercise.trace.cases.front().branches[index].current;
  return ErrorWork{scene.work.exercise,
                   scene.whole_reduction() + "I_" + parts[index].name + " = " +
                       exactly_written(-current.value->number) + " A\n",
                   "", std::nullopt, std::nullopt};
}

}  // namespace

std::vector<ErrorRow> current_rows() {
  std::vector<ErrorRow> rows;
  for (const Share& share : shares()) {
    rows.push_back(
        {share.error, [share](RandomCircuits& random) { return make_share(share, random); }});
  }
  for (const char* what : {"I", "V"}) {
    rows.push_back({values_of_two_parts,
                    [what](RandomCircuits& random) { return make_values_of_two(what, random); }});
  }
  rows.push_back({source_over_all, make_source_over_all});
  rows.push_back({internal_left_out, make_internal_left_out});
  rows.push_back({sequential, make_sequential});
  rows.push_back({current_stays, make_current_stays});
  rows.push_back({current_sum_wrong, make_current_sum_wrong});
  rows.push_back({wrong_sign, make_wrong_sign});
  rows.push_back({current_used_up, make_current_used_up});
  rows.push_back({brackets_missing, make_brackets_missing});
  rows.push_back({wrong_working_hit, make_wrong_working_hit});
  rows.push_back({cut_off, make_cut_off});
  return rows;
}

}  // namespace ohmfold::test
