// Looks for the largest power, voltage and battery current.
#include "solve/cautions.h"

#include <optional>

namespace ohmfold {
namespace {

const Number& quarter_watt() {
  static const Number limit = Number(1) / Number(4);
  return limit;
}
constexpr int kHighVolts = 60;
constexpr int kHighAmperes = 10;

// Keeps the part with the largest size of a quantity above a limit.
class Worst {
 public:
  Worst(CautionKind kind, Number limit, const std::vector<SymbolValue>& symbols)
      : kind_(kind), limit_(std::move(limit)), symbols_(symbols) {}

  void see(PartId part, const Reading& reading) {
    if (!reading.value) return;
    const std::optional<Number> number = substitute(reading.value->number, symbols_);
    if (!number || number->is_symbolic()) return;
    Number size = abs(*number);
    if (size <= limit_) return;
    limit_ = size;
    found_ = Caution{kind_, part, Quantity(size, reading.value->unit)};
  }

  void add_to(std::vector<Caution>& cautions) const {
    if (found_) cautions.push_back(*found_);
  }

 private:
  CautionKind kind_;
  Number limit_;
  const std::vector<SymbolValue>& symbols_;
  std::optional<Caution> found_;
};

// The largest difference of potentials between any two points whose potentials are known.
Reading widest(const std::vector<NodeResult>& nodes, const std::vector<SymbolValue>& symbols) {
  std::optional<Number> low, high;
  for (const NodeResult& node : nodes) {
    if (!node.potential.value) continue;
    const std::optional<Number> potential = substitute(node.potential.value->number, symbols);
    if (!potential || potential->is_symbolic()) continue;
    if (!low || *potential < *low) low = potential;
    if (!high || *potential > *high) high = potential;
  }
  if (!low) return Undetermined::floating;
  return Voltage{*high - *low};
}

}  // namespace

std::vector<Caution> cautions_of(const Problem& problem, const CaseTrace& result) {
  const std::vector<SymbolValue> symbols = given_values(problem);
  Worst power(CautionKind::part_power, quarter_watt(), symbols);
  Worst voltage(CautionKind::high_voltage, Number(kHighVolts), symbols);
  Worst current(CautionKind::battery_current, Number(kHighAmperes), symbols);
  Worst shorted(CautionKind::short_circuit, Number(0), symbols);
  for (const BranchResult& branch : result.branches) {
    voltage.see(branch.part, branch.voltage);
    const ElementKind kind = result.main.start.kind(branch.part);
    if (kind == ElementKind::resistor) power.see(branch.part, branch.power);
    if (kind != ElementKind::battery) continue;
    current.see(branch.part, branch.current);
    const Network& end = result.main.end;
    const bool ends_meet =
        end.representative(end.from(branch.part)) == end.representative(end.to(branch.part));
    if (ends_meet) shorted.see(branch.part, branch.current);
  }
  voltage.see(PartId{}, widest(result.nodes, symbols));
  std::vector<Caution> cautions;
  for (const Worst* one : {&power, &voltage, &current, &shorted}) one->add_to(cautions);
  return cautions;
}

}  // namespace ohmfold
