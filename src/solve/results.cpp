// Unfolds, then finds what belongs to the original points: wires, potentials, gaps, powers.
#include "solve/results.h"

#include <algorithm>

#include "circuit/set_case.h"
#include "ohmfold/error.h"
#include "solve/ideal_currents.h"
#include "solve/unfold.h"

namespace ohmfold {
namespace {

// More parts at a point than this are not listed one by one in a return.
constexpr std::size_t kMostNamed = 64;

class Results {
 public:
  Results(const Problem& problem, Flow<ExactField>& flow, CaseTrace& result)
      : problem_(problem),
        flow_(flow),
        result_(result),
        start_(result.main.start),
        points_{walk_potentials(start_, ground_of(problem)), {}} {}

  PointPotentials run() {
    tell_of_left();
    const ExactField field;
    unfold(result_.main, field, resistances(result_.main, field), flow_,
           [this](Law law, PartId part, const Step& step) { tell_of_step(law, part, step); });
    find_wires();
    find_potentials();
    fill_branches();
    return std::move(points_);
  }

  // What the sources do together, where `flow_` holds the sums of what each does alone.
  PointPotentials run_superposed() {
    for (std::uint32_t i = 0; i < problem_.parts.size(); ++i) {
      const PartId part{i};
      const ElementKind kind = start_.kind(part);
      if (is_gap(kind)) continue;
      if (kind == ElementKind::current_source) {
        tell_of(Law::given_current, Subject::current, part);
        continue;
      }
      if (kind == ElementKind::battery && !has_share(part)) {
        tell_of(Law::zero_current, Subject::current, part);
        tell_of(Law::terminal, Subject::voltage, part, {part});
        continue;
      }
      if (flow_.open_share[i]) {
        tell(Law::not_determined, Subject::current, Undetermined::ideal_loop).part = part;
      } else {
        tell_of(Law::superposition, Subject::current, part);
      }
      if (!is_wire(kind)) tell_of(Law::superposition, Subject::voltage, part);
    }
    find_potentials();
    fill_branches();
    return std::move(points_);
  }

  [[nodiscard]] bool has_share(PartId source) const {
    return std::any_of(result_.shares.begin(), result_.shares.end(), [&](const Share& share) {
      return std::find(share.sources.begin(), share.sources.end(), source) != share.sources.end();
    });
  }

  PointPotentials run_without_source() {
    find_potentials();
    fill_branches();
    result_.returns.clear();
    return std::move(points_);
  }

 private:
  Return& tell(Law law, Subject subject, Reading value) {
    Return one;
    one.number = result_.returns.size() + 1;
    one.law = law;
    one.subject = subject;
    one.value = std::move(value);
    return result_.returns.emplace_back(std::move(one));
  }

  void tell_of(Law law, Subject subject, PartId part, std::vector<PartId> from = {}) {
    const Number& number =
        subject == Subject::current ? flow_.current[part.index] : flow_.voltage[part.index];
    const Unit unit = subject == Subject::current ? Unit::ampere : Unit::volt;
    Return& one = tell(law, subject, Quantity(number, unit));
    one.part = part;
    one.from = std::move(from);
  }

  // How the parts that no step took come by their values.
  void tell_of_left() {
    const Reduction& main = result_.main;
    switch (main.stop) {
      case Stop::reduced:
        tell_of_source(main.source, Law::source, {main.root});
        tell_of(Law::same_current, Subject::current, main.root, {main.source});
        if (main_kind(main.source) == ElementKind::current_source) {
          tell_of(Law::ohm_voltage, Subject::voltage, main.root, {main.root});
        } else {
          tell_of(Law::same_voltage, Subject::voltage, main.root, {main.source});
        }
        return;
      case Stop::short_circuit:
        tell_of_source(main.source, Law::source, {});
        return;
      case Stop::open:
        for (const PartId part : main.left) tell_of_source(part, Law::zero_current, {});
        return;
      case Stop::bridge:
      case Stop::several_sources:
        tell_of_node_voltages();
        return;
      case Stop::no_source:
        return;
    }
  }

  void tell_of_source(PartId source, Law law, std::vector<PartId> from) {
    if (main_kind(source) == ElementKind::current_source) {
      tell_of(Law::given_current, Subject::current, source);
    }
    if (main_kind(source) != ElementKind::battery) return;
    if (flow_.open_share[source.index]) {
      tell(Law::not_determined, Subject::current, Undetermined::ideal_loop).part = source;
    } else {
      tell_of(law, Subject::current, source, std::move(from));
    }
    tell_of(Law::terminal, Subject::voltage, source, {source});
  }

  void tell_of_node_voltages() {
    for (const PartId part : result_.main.left) {
      if (main_kind(part) == ElementKind::current_source) {
        tell_of(Law::given_current, Subject::current, part);
        continue;
      }
      const bool battery = main_kind(part) == ElementKind::battery;
      tell_of(Law::node_voltage, Subject::voltage, part);
      if (flow_.open_share[part.index]) {
        tell(Law::not_determined, Subject::current, Undetermined::ideal_loop).part = part;
      } else if (battery && result_.main.end.battery(part).internal.is_zero()) {
        tell_of(Law::current_cut, Subject::current, part);
      } else {
        tell_of(battery ? Law::terminal : Law::ohm_current, Subject::current, part, {part});
      }
    }
  }

  void tell_of_step(Law law, PartId part, const Step& step) {
    const bool current = law == Law::same_current || law == Law::ohm_current ||
                         law == Law::zero_current || law == Law::sides_at_end;
    // The voltage of a source of current follows from the potentials.
    if (!current && main_kind(part) == ElementKind::current_source) return;
    std::vector<PartId> from;
    if (law == Law::two_arms || law == Law::sides_at_end) from = made_at_ends(part, step);
    if (law == Law::same_current || law == Law::same_voltage) from.push_back(step.makes);
    if (law == Law::ohm_current || law == Law::ohm_voltage) from.push_back(part);
    if (law == Law::terminal) from.push_back(part);
    if (current && flow_.open_share[part.index]) {
      tell(Law::not_determined, Subject::current, Undetermined::ideal_loop).part = part;
    } else {
      tell_of(law, current ? Subject::current : Subject::voltage, part, std::move(from));
    }
    result_.returns.back().step = step.number;
  }

  // Of a star, the arms at both ends of a side; of a mesh, the parts at the outer end of an arm.
  [[nodiscard]] std::vector<PartId> made_at_ends(PartId taken, const Step& step) const {
    const Network& end = result_.main.end;
    std::vector<PartId> parts;
    for (std::uint32_t k = 0; k < step.adds.size(); ++k) {
      const auto meets = [&](PointId point) {
        return point != step.first && (point == end.from(taken) || point == end.to(taken));
      };
      if (meets(step.adds[k].from) || meets(step.adds[k].to)) {
        parts.push_back({step.makes.index + k});
      }
    }
    return parts;
  }

  [[nodiscard]] ElementKind main_kind(PartId part) const { return result_.main.end.kind(part); }

  void find_wires() {
    const std::vector<PartId> ideal = ideal_parts(start_, flow_);
    const IdealForest forest = ideal_forest(start_, ideal);
    find_ideal_currents(start_, forest, ExactField{}, flow_);
    for (const auto& branch : forest.branches) {
      if (branch.on_loop) continue;
      tell_of(Law::current_cut, Subject::current, branch.part,
              others_at(branch.below, branch.part));
    }
    for (const PartId part : ideal) {
      if (!flow_.open_share[part.index] || !is_wire(start_.kind(part))) continue;
      tell(Law::not_determined, Subject::current, Undetermined::ideal_loop).part = part;
    }
  }

  // The parts whose currents the current law sums up at a point; none are named where there are
  // more than anyone would write down.
  std::vector<PartId> others_at(PointId point, PartId wire) {
    std::vector<PartId> parts;
    if (start_.degree(point) > kMostNamed) return parts;
    start_.for_each_at(point, [&](PartId part) {
      if (part != wire && !is_gap(start_.kind(part))) parts.push_back(part);
    });
    std::sort(parts.begin(), parts.end());
    return parts;
  }

  void find_potentials() {
    points_.value = potentials(start_, points_.walk, ExactField{}, flow_);
    result_.nodes.resize(problem_.points.size());
    for (const PointId point : points_.walk.order) {
      NodeResult& node = result_.nodes[point.index];
      node.point = point;
      const auto& reach = points_.walk.points[point.index];
      if (reach.piece != 0) {
        node.potential = Undetermined::floating;
        continue;
      }
      node.potential = Quantity(points_.value[point.index], Unit::volt);
      Return& one = tell(Law::voltage_loop, Subject::potential, node.potential);
      one.point = point;
      if (reach.by.exists()) one.from.push_back(reach.by);
    }
  }

  void fill_branches() {
    result_.branches.reserve(problem_.parts.size());
    for (std::uint32_t i = 0; i < problem_.parts.size(); ++i) {
      const PartId part{i};
      BranchResult branch{part, {}, {}, {}};
      if (start_.kind(part) == ElementKind::taken_out) {
        branch.current = branch.voltage = branch.power = Undetermined::taken_out;
      } else if (is_gap(start_.kind(part))) {
        fill_gap(branch);
      } else if (start_.kind(part) == ElementKind::current_source) {
        fill_current_source(branch);
      } else {
        fill_conductor(branch);
      }
      result_.branches.push_back(std::move(branch));
    }
  }

  void fill_gap(BranchResult& branch) {
    branch.current = Current{};
    branch.power = Power{};
    branch.voltage = points_.between(start_.from(branch.part), start_.to(branch.part));
    const Law law = branch.voltage.value ? Law::voltage_loop : Law::not_determined;
    tell(law, Subject::voltage, branch.voltage).part = branch.part;
  }

  // Its voltage is what the others make it; it delivers power where the current comes out at the
  // higher potential.
  void fill_current_source(BranchResult& branch) {
    const Current current = start_.driven_current(branch.part);
    branch.current = current;
    branch.voltage = points_.between(start_.from(branch.part), start_.to(branch.part));
    const bool known = branch.voltage.value.has_value();
    const Law law = known ? Law::voltage_loop : Law::not_determined;
    tell(law, Subject::voltage, branch.voltage).part = branch.part;
    branch.power = branch.voltage;
    if (!known) return;
    branch.power = -Voltage{branch.voltage.value->number} * current;
    tell_of_power(branch);
  }

  void tell_of_power(const BranchResult& branch) {
    Return& one = tell(Law::power, Subject::power, branch.power);
    one.part = branch.part;
    one.from.push_back(branch.part);
  }

  void fill_conductor(BranchResult& branch) {
    const Current current{flow_.current[branch.part.index]};
    const Voltage voltage{flow_.voltage[branch.part.index]};
    branch.voltage = voltage;
    branch.power = voltage * current;
    if (flow_.open_share[branch.part.index]) {
      branch.current = Undetermined::ideal_loop;
      if (!voltage.is_zero()) branch.power = Undetermined::ideal_loop;
      return;
    }
    branch.current = current;
    if (!is_wire(start_.kind(branch.part))) tell_of_power(branch);
  }

  const Problem& problem_;
  Flow<ExactField>& flow_;
  CaseTrace& result_;
  const Network& start_;
  PointPotentials points_;
};

}  // namespace

PointPotentials fill_in_results(const Problem& problem, Flow<ExactField>& flow, CaseTrace& result) {
  return Results(problem, flow, result).run();
}

PointPotentials fill_in_superposed(const Problem& problem, Flow<ExactField>& flow,
                                   CaseTrace& result) {
  return Results(problem, flow, result).run_superposed();
}

PointPotentials fill_in_nothing(const Problem& problem, CaseTrace& result) {
  Flow<ExactField> flow(ExactField{}, result.main.end.part_count());
  return Results(problem, flow, result).run_without_source();
}

}  // namespace ohmfold
