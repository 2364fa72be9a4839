// Each question by what it asks; resistances by reductions of their own.
#include "solve/answers.h"

#include "circuit/set_case.h"
#include "solve/conditions.h"
#include "solve/node_voltage.h"
#include "solve/path_back.h"
#include "solve/reduce.h"

namespace ohmfold {
namespace {

class Answerer {
 public:
  Answerer(const Problem& problem, const Case& setting, const SolveOptions& options,
           const PointPotentials* points, CaseTrace& result)
      : problem_(problem), setting_(setting), options_(options), points_(points), result_(result) {
    if (points == nullptr && PathBack::leads(result.main)) path_.emplace(result.main);
  }

  void run() {
    for (const Question& question : questions_of(problem_, result_.complete)) {
      further_.reset();
      thevenin_.reset();
      Reading value = std::visit([this](const auto& asked) { return find(asked); }, question);
      std::optional<SignCondition> condition;
      if (value.value) condition = sign_condition(value.value->number);
      result_.answers.push_back(
          {question, std::move(value), further_, std::move(thevenin_), std::move(condition)});
    }
  }

 private:
  [[nodiscard]] bool main_is_port() const {
    const PartId source = result_.main.source;
    return source.exists() && result_.main.end.kind(source) == ElementKind::port;
  }

  Reading find(const CurrentThrough& asked) {
    if (points_ != nullptr) return branch(asked.part).current;
    const std::optional<Current> current = on_its_path(asked.part);
    return current ? Reading(*current) : Reading(Undetermined::too_long);
  }

  Reading find(const VoltageAcross& asked) {
    if (points_ != nullptr) return branch(asked.part).voltage;
    const ElementKind kind = result_.main.start.kind(asked.part);
    if (is_wire(kind)) return Voltage{};
    const std::optional<Current> current = on_its_path(asked.part);
    const bool follows = is_gap(kind) || kind == ElementKind::current_source;
    if (!current || follows) return Undetermined::too_long;
    if (kind == ElementKind::battery) {
      const BatteryData& data = result_.main.start.battery(asked.part);
      return data.emf - *current * data.internal;
    }
    return *current * Resistance{result_.main.start.resistance(asked.part).lowest_terms()};
  }

  Reading find(const VoltageBetween& asked) {
    return points_ != nullptr ? points_->between(asked.from, asked.to)
                              : Reading(Undetermined::too_long);
  }

  Reading find(const PotentialAt& asked) {
    return points_ != nullptr ? result_.nodes[asked.point.index].potential
                              : Reading(Undetermined::too_long);
  }

  Reading find(const PowerIn& asked) {
    if (points_ != nullptr) return branch(asked.part).power;
    const Reading current = find(CurrentThrough{asked.part});
    const Reading voltage = find(VoltageAcross{asked.part});
    if (!current.value || !voltage.value) return Undetermined::too_long;
    return Power{voltage.value->number * current.value->number};
  }

  Reading find(const ResistanceBetween& asked) {
    const PartId source = result_.main.source;
    if (main_is_port() && result_.main.start.from(source) == asked.from &&
        result_.main.start.to(source) == asked.to) {
      return *result_.equivalent;
    }
    return further(resistors_between(problem_, setting_, asked.from, asked.to));
  }

  Reading find(const ResistanceSeenBy& asked) {
    if (result_.main.source == asked.battery && result_.equivalent) return *result_.equivalent;
    return further(seen_by(problem_, setting_, asked.battery));
  }

  // The open circuit is the circuit as it stands; the resistance has a reduction of its own.
  Reading find(const TheveninBetween& asked) {
    Thevenin equivalent;
    equivalent.voltage = find(VoltageBetween{asked.from, asked.to});
    equivalent.resistance = further(seen_from(problem_, setting_, asked.from, asked.to));
    equivalent.short_circuit_current = short_circuit_current(equivalent);
    thevenin_ = equivalent;
    return equivalent.voltage;
  }

  static Reading short_circuit_current(const Thevenin& equivalent) {
    const auto& voltage = equivalent.voltage.value;
    const auto& resistance = equivalent.resistance.value;
    if (!resistance) return equivalent.resistance.why;
    if (!voltage) return equivalent.voltage.why;
    if (!resistance->number.is_zero()) {
      return Current{voltage->number / resistance->number};
    }
    // A wire across an ideal battery, or beside another wire.
    return voltage->number.is_zero() ? Undetermined::ideal_loop : Undetermined::unlimited;
  }

  Reading find(const ValueOf& asked) {
    const Unit unit = unit_of(asked, problem_);
    for (const Setting& setting : setting_.settings) {
      if (setting.part != asked.part) continue;
      if (setting.kind != SettingKind::value) return Undetermined::taken_out;
      return Quantity(setting.value, unit);
    }
    return Quantity(problem_.part(asked.part).value, unit);
  }

  Reading further(Network network) {
    result_.further.push_back(reduce(std::move(network), options_));
    further_ = result_.further.size() - 1;
    return seen_resistance(result_.further.back());
  }

  const BranchResult& branch(PartId part) { return result_.branches[part.index]; }

  std::optional<Current> on_its_path(PartId part) {
    const std::optional<Ratio> found = path_ ? path_->current(part) : std::nullopt;
    if (!found) return std::nullopt;
    return Current{found->lowest_terms()};
  }

  const Problem& problem_;
  const Case& setting_;
  const SolveOptions& options_;
  const PointPotentials* points_;
  CaseTrace& result_;
  std::optional<PathBack> path_;
  std::optional<std::size_t> further_;
  std::optional<Thevenin> thevenin_;
};

}  // namespace

Reading seen_resistance(const Reduction& reduction) {
  switch (reduction.stop) {
    case Stop::reduced:
      return Resistance{reduction.end.resistance(reduction.root).lowest_terms()};
    case Stop::short_circuit:
      return Resistance{};
    case Stop::bridge: {
      if (reduction.choice.method == Method::series_parallel) return Undetermined::beyond_method;
      Flow<ExactField> flow(ExactField{}, reduction.end.part_count());
      if (!solve_by_node_voltage(reduction, flow)) return Undetermined::too_long;
      // The port was driven by 1 V.
      return Resistance{Number(1) / abs(flow.current[reduction.source.index])};
    }
    case Stop::several_sources:
    case Stop::open:
    case Stop::no_source:
      break;
  }
  return Undetermined::no_path;
}

std::vector<Question> questions_of(const Problem& problem, bool complete) {
  if (!problem.questions.empty()) return problem.questions;
  std::vector<PartId> sources;
  for (std::uint32_t i = 0; i < problem.parts.size(); ++i) {
    if (is_source(problem.parts[i].kind)) sources.push_back(PartId{i});
  }
  std::vector<Question> questions;
  for (const PartId unknown : unknowns_of(problem)) questions.emplace_back(ValueOf{unknown});
  for (const PartId source : sources) {
    if (sources.size() <= kMostSeenUnasked) questions.emplace_back(ResistanceSeenBy{source});
    if (!complete) questions.emplace_back(CurrentThrough{source});
  }
  if (!complete) return questions;
  for (std::uint32_t i = 0; i < problem.parts.size(); ++i) {
    questions.emplace_back(CurrentThrough{PartId{i}});
    questions.emplace_back(VoltageAcross{PartId{i}});
    questions.emplace_back(PowerIn{PartId{i}});
  }
  return questions;
}

void answer(const Problem& problem, const Case& setting, const SolveOptions& options,
            const PointPotentials* points, CaseTrace& result) {
  Answerer(problem, setting, options, points, result).run();
}

}  // namespace ohmfold
