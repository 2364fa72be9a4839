// Works with a wrong voltage, by the formula of each known error.
#include "coach/error_scene.h"

namespace ohmfold::test {
namespace {

using enum KnownError;

// R1 before the block of R2 beside R3 and R4, on an ideal battery, with its exact voltages.
struct Block {
  Number emf, r1, r2, r3, r4, block, v1;
  std::string circuit;

  explicit Block(RandomCircuits& random)
      : emf(static_cast<int>(5 + random.below(40))),
        r1(random.resistance()),
        r2(random.resistance()),
        r3(random.resistance()),
        r4(random.resistance()),
        block(1 / (1 / r2 + 1 / (r3 + r4))),
        v1(emf * r1 / (r1 + block)) {
    const auto part = [](const char* name, const Number& value, const char* ends) {
      return std::string("resistor ") + name + " = " + value.to_string() + " ohm from " + ends +
             "\n";
    };
    circuit = "battery E = " + emf.to_string() + " V from G to T\n" + part("R1", r1, "T to A") +
              part("R2", r2, "A to G") + part("R3", r3, "A to B") + part("R4", r4, "B to G");
  }
  [[nodiscard]] Number v_block() const { return emf - v1; }
  [[nodiscard]] Number v3() const { return v_block() * r3 / (r3 + r4); }

  [[nodiscard]] std::optional<ErrorWork> claims(const std::string& claim, const Number& wrong,
                                                const Number& right) const {
    if (wrong == right || wrong == -right || wrong.is_zero()) return std::nullopt;
    return on_circuit(circuit, claim + " = " + exactly_written(wrong) + " V\n");
  }
};

std::optional<ErrorWork> make_divider_without_load(RandomCircuits& random) {
  const Block block(random);
  return block.claims("V_R2", block.emf * block.r2 / (block.r1 + block.r2), block.v_block());
}

// The drop of a part that is not on the loop, or a drop taken away twice.
std::optional<ErrorWork> make_wrong_drop(RandomCircuits& random) {
  const Block block(random);
  const bool twice = random.below(2) == 0;
  return block.claims("V_R2", abs(twice ? block.emf - block.v1 * 2 : block.emf - block.v3()),
                      block.v_block());
}

std::optional<ErrorWork> make_potential_for_voltage(RandomCircuits& random) {
  const Block block(random);
  return block.claims("V_R3", block.v_block(), block.v3());
}

std::optional<ErrorWork> make_wrong_order(RandomCircuits& random) {
  const Block block(random);
  return on_circuit(block.circuit,
                    "voltage from A to B = " + exactly_written(-block.v3()) + " V\n");
}

std::optional<ErrorWork> make_no_voltage_across_gap(RandomCircuits& random) {
  return on_circuit(battery(random) + resistor(random, "R1", "T", "A") +
                        resistor(random, "R2", "A", "G") + resistor(random, "R3", "A", "B") +
                        "switch S from B to G\ncase \"open\": S open\n",
                    "case \"open\"\nvoltage across S = 0 V\n");
}

// E or I r where E - I r is asked.
std::optional<ErrorWork> make_terminal(bool lost, RandomCircuits& random) {
  const Number emf(static_cast<int>(5 + random.below(40)));
  const Number inner = random.resistance();
  const Number outer = random.resistance();
  const Number volts = lost ? emf * inner / (inner + outer) : emf;
  if (inner == outer) return std::nullopt;
  return on_circuit("battery E = " + emf.to_string() + " V internal " + inner.to_string() +
                        " ohm from G to T\nresistor R = " + outer.to_string() +
                        " ohm from T to G\n",
                    "voltage across E = " + exactly_written(volts) + " V\n");
}

}  // namespace

std::vector<ErrorRow> voltage_rows() {
  const auto terminal = [](bool lost) {
    return [lost](RandomCircuits& random) { return make_terminal(lost, random); };
  };
  return {{divider_without_load, make_divider_without_load},
          {wrong_drop_subtracted, make_wrong_drop},
          {potential_for_voltage, make_potential_for_voltage},
          {wrong_order_of_points, make_wrong_order},
          {no_voltage_across_gap, make_no_voltage_across_gap},
          {internal_left_out, terminal(false)},
          {lost_volts_for_terminal, terminal(true)}};
}

}  // namespace ohmfold::test
