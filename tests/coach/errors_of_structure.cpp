// Works with a step that must not be made, or a wrong word about the network.
#include "coach/error_scene.h"

namespace ohmfold::test {
namespace {

using enum KnownError;

// How two parts of a random network meet, and how many parts there are at the points they share.
struct Meeting {
  std::string one, two;
  std::size_t shared = 0;
  bool third = false;  // something else is joined at a shared point
  bool one_current = false;
};

Meeting any_two(const Scene& scene, RandomCircuits& random) {
  const Problem& problem = *scene.work.exercise.problem;
  const Network network = support::network_of(problem);
  const auto one = static_cast<std::uint32_t>(1 + random.below(problem.parts.size() - 1));
  const auto two = static_cast<std::uint32_t>(1 + random.below(problem.parts.size() - 1));
  Meeting meeting{problem.parts[one].name, problem.parts[two].name, 0, false, false};
  if (one == two) return meeting;
  for (const PointId point : {network.from(PartId{one}), network.to(PartId{one})}) {
    if (point != network.from(PartId{two}) && point != network.to(PartId{two})) continue;
    ++meeting.shared;
    meeting.third = meeting.third || network.degree(point) > 2;
  }
  meeting.one_current = support::carry_one_current(network, PartId{one}, PartId{two});
  return meeting;
}

ErrorWork claim_on(const Scene& scene, const std::string& claim) {
  return {scene.work.exercise, claim + "\n", "", std::nullopt, std::nullopt};
}

std::optional<ErrorWork> make_series_at_a_junction(RandomCircuits& random) {
  const Scene scene(random, 4);
  const Meeting two = any_two(scene, random);
  if (two.shared != 1 || !two.third || two.one_current) return std::nullopt;
  const Number sum = scene["R " + two.one] + scene["R " + two.two];
  return claim_on(scene, "J = " + two.one + " + " + two.two + " = " + sum.to_string() + " ohm");
}

std::optional<ErrorWork> make_series_of_parallel(RandomCircuits& random) {
  const Scene scene(random, 4);
  const Meeting two = any_two(scene, random);
  if (two.shared != 2) return std::nullopt;
  const Number sum = scene["R " + two.one] + scene["R " + two.two];
  return claim_on(scene, "J = " + two.one + " + " + two.two + " = " + sum.to_string() + " ohm");
}

std::optional<ErrorWork> make_wrong_parallel(std::size_t shared, RandomCircuits& random) {
  const Scene scene(random, 4);
  const Meeting two = any_two(scene, random);
  if (two.one == two.two || two.shared != shared) return std::nullopt;
  const Number value = 1 / (1 / scene["R " + two.one] + 1 / scene["R " + two.two]);
  return claim_on(scene, "J = " + two.one + " || " + two.two + " = " + value.to_string() + " ohm");
}

std::optional<ErrorWork> make_used_already(RandomCircuits& random) {
  const Scene scene(random, 4);
  const Made& first = scene.work.made.front();
  const std::vector<Part>& parts = scene.work.exercise.problem->parts;
  const std::string& other = parts[1 + random.below(parts.size() - 1)].name;
  if (other == first.operands.front()) return std::nullopt;
  return claim_on(scene, first.name + " = " + formula_of(first, scene.work.made) +
                             "\nJ = " + first.operands.front() +
                             (random.below(2) == 0 ? " + " : " || ") + other);
}

std::optional<ErrorWork> make_wrong_word(RandomCircuits& random) {
  const Scene scene(random, 4);
  const Made& made = scene.any_made(random);
  const std::string right = scene.up_to(made.name);
  Made said = made;
  said.how = made.how == Joining::series ? Joining::parallel : Joining::series;
  const std::string before = right.substr(0, right.rfind(made.name + " = "));
  return claim_on(scene, before + made.name + " = " + formula_of(said, scene.work.made) + " = " +
                             scene["R " + made.name].to_string() + " ohm");
}

std::optional<ErrorWork> make_pair_overlooked(RandomCircuits& random) {
  const Scene scene(random);
  const std::size_t done = random.below(scene.work.made.size());
  std::string text;
  for (std::size_t i = 0; i < done; ++i) {
    const Made& made = scene.work.made[i];
    text += made.name + " = " + formula_of(made, scene.work.made) + "\n";
  }
  return claim_on(scene, text + "no series or parallel pair left");
}

// --- bridges -------------------------------------------------------------------------------------
struct Bridge {
  Number r1, r2, r3, r4, r5;
  std::string circuit;

  explicit Bridge(RandomCircuits& random)
      : r1(random.resistance()),
        r2(random.resistance()),
        r3(random.resistance()),
        r4(random.resistance()),
        r5(random.resistance()) {
    const auto part = [](const char* name, const Number& value, const char* ends) {
      return std::string("resistor ") + name + " = " + value.to_string() + " ohm from " + ends +
             "\n";
    };
    circuit = battery(random) + part("R1", r1, "T to A") + part("R2", r2, "A to G") +
              part("R3", r3, "T to B") + part("R4", r4, "B to G") + part("R5", r5, "A to B");
  }
  [[nodiscard]] bool is_balanced() const { return r1 * r4 == r2 * r3; }
};

std::optional<ErrorWork> make_bridge_part_combined(RandomCircuits& random) {
  const Bridge bridge(random);
  const std::string other = "R" + std::to_string(1 + random.below(4));
  return on_circuit(bridge.circuit,
                    "J = R5" + std::string(random.below(2) == 0 ? " + " : " || ") + other + "\n");
}

std::optional<ErrorWork> make_not_balanced(RandomCircuits& random) {
  const Bridge bridge(random);
  if (bridge.is_balanced()) return std::nullopt;
  return on_circuit(bridge.circuit, "no current through R5\n");
}

// R1, R3 and R5 are a delta; the arm for R1 is that at the corner of R3 and R5.
std::optional<ErrorWork> make_delta_star(bool reversed, RandomCircuits& random) {
  const Bridge bridge(random);
  const Number& a = bridge.r1;
  const Number& b = bridge.r3;
  const Number& c = bridge.r5;
  const Number sum = a + b + c;
  const Number pairs = a * b + b * c + c * a;
  const Number wrong = reversed ? pairs / a : a * b / sum;
  if (wrong == b * c / sum) return std::nullopt;
  return on_circuit(bridge.circuit, "R1 R3 R5 in delta make Ya Yb Yc = " + wrong.to_string() +
                                        ", " + (a * c / sum).to_string() + ", " +
                                        (a * b / sum).to_string() + " ohm meeting at M\n");
}

// --- parts that carry nothing --------------------------------------------------------------------
std::optional<ErrorWork> make_shorted_carries(RandomCircuits& random) {
  return on_circuit(battery(random) + resistor(random, "R1", "T", "A") +
                        resistor(random, "R2", "A", "B") + "wire from A to B\n" +
                        resistor(random, "R3", "B", "G"),
                    "I_R2 = " + std::to_string(2 + random.below(9)) + "/7 A\n");
}

std::optional<ErrorWork> make_dead_end_carries(RandomCircuits& random) {
  return on_circuit(battery(random) + resistor(random, "R1", "T", "A") +
                        resistor(random, "R2", "A", "B") + resistor(random, "R3", "A", "G"),
                    "I_R2 = " + std::to_string(2 + random.below(9)) + "/7 A\n");
}

std::optional<ErrorWork> make_shorted_counted(RandomCircuits& random) {
  return on_circuit(battery(random) + resistor(random, "R1", "T", "A") +
                        resistor(random, "R2", "A", "B") + "wire from A to B\n" +
                        resistor(random, "R3", "B", "G"),
                    "J = R1 + R2\n");
}

}  // namespace

std::vector<ErrorRow> structure_rows() {
  const auto parallel = [](std::size_t shared) {
    return [shared](RandomCircuits& random) { return make_wrong_parallel(shared, random); };
  };
  const auto star = [](bool reversed) {
    return [reversed](RandomCircuits& random) { return make_delta_star(reversed, random); };
  };
  return {{series_at_a_junction, make_series_at_a_junction},
          {parallel_ends_apart, parallel(0)},
          {parallel_from_a_fork, parallel(1)},
          {series_of_parallel, make_series_of_parallel},
          {used_already, make_used_already},
          {wrong_word, make_wrong_word},
          {pair_overlooked, make_pair_overlooked},
          {bridge_part_combined, make_bridge_part_combined},
          {not_balanced, make_not_balanced},
          {wrong_sides_at_corner, star(false)},
          {star_rule_reversed, star(true)},
          {shorted_part_carries, make_shorted_carries},
          {dead_end_carries, make_dead_end_carries},
          {shorted_part_counted, make_shorted_counted}};
}

}  // namespace ohmfold::test
