// A whole log of steps, on a network that the check keeps for itself.
#include <algorithm>
#include <cstdint>

#include "check/battery_step.h"
#include "check/rationals.h"
#include "check/report.h"
#include "check/step.h"
#include "check/step_conductance.h"
#include "check/step_potentials.h"
#include "check/step_replacement.h"

namespace ohmfold {
namespace {

using check::Arithmetic;
using check::StepFinding;

constexpr std::size_t kMostExactBits = 100'000;

// At most the bits of all values; beyond any budget where some were let go.
std::size_t bits_of(const Network& network) {
  std::size_t bits = 0;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    if (!network.knows_resistance(PartId{i})) return SIZE_MAX;
    bits += network.resistance(PartId{i}).bits();
  }
  return bits;
}

// The resistances of all parts modulo one prime, as the check comes to know them. A value that the
// engine let go is taken to be what its step makes it; if that was not so, a later value that is on
// record will differ.
class Residues {
 public:
  Residues(PrimeField field, const Network& start) : field_(field) {
    for (std::uint32_t i = 0; i < start.part_count(); ++i) {
      residue_.push_back(field_.from(start.resistance(PartId{i})));
    }
  }

  [[nodiscard]] auto values() const {
    return [this](PartId part) { return residue_[part.index]; };
  }

  StepFinding compare_potentials(const Network& before,
                                 const std::vector<std::pair<PointId, PointId>>& equal) const {
    return check::check_potentials(field_, before, equal, values());
  }

  StepFinding compare_several(const Network& before, const Step& step) {
    StepFinding finding = check::check_replacement(field_, before, step, values());
    for (const NewPart& part : step.adds) residue_.push_back(field_.from(part.resistance));
    return finding;
  }
  /// A battery has come: it has no resistance to compare.
  void pass_battery() { residue_.push_back(field_.from(Number(0))); }

  StepFinding compare(const Network& before, const Step& step, const NewPart& made, bool is_known) {
    const auto had = check::conductance_taken(field_, before, step, made, values());
    residue_.push_back(is_known || !had ? field_.from(made.resistance)
                                        : field_.divide(field_.from(Number(1)), *had));
    if (!had) return {};
    return check::compare_conductance(field_, made, *had, residue_.back());
  }

 private:
  PrimeField field_;
  std::vector<PrimeField::Value> residue_;
};

class LogCheck {
 public:
  LogCheck(const Reduction& reduction, bool exact) : reduction_(reduction), now_(reduction.start) {
    if (exact) return;
    for (const PrimeField& field : check::random_fields()) residues_.emplace_back(field, now_);
  }

  StepFinding check(const Step& step) {
    if (check::is_battery_step(step)) return check_batteries(step);
    std::optional<NewPart> made;
    bool is_known = true;
    if (step.makes.exists() && !step.adds.empty()) {
      StepFinding recorded = compare_record(step);
      if (!recorded.holds) return recorded;
    } else if (step.makes.exists()) {
      if (step.makes.index >= reduction_.end.part_count()) {
        return {false, "the part made is not known at the end"};
      }
      made = NewPart{step.first, step.second, reduction_.end.resistance(step.makes)};
      is_known = reduction_.end.knows_resistance(step.makes);
    }
    StepFinding finding = check::check_structure(now_, step, made);
    if (made && finding.holds) finding = compare(step, *made, is_known);
    if (!step.adds.empty() && finding.holds) finding = compare_several(step);
    if (!finding.equal.empty() && finding.holds) finding = compare_potentials(finding.equal);
    if (finding.holds) finding = advance(step, made);
    if (finding.holds && step.number == reduction_.steps.size()) finding = compare_ends();
    return finding;
  }

  // Few and short as their values are, they are compared exactly whatever the size of the rest.
  StepFinding check_batteries(const Step& step) {
    StepFinding finding = check::check_battery_step(now_, step);
    if (!finding.holds) return finding;
    finding = advance(step, std::nullopt);
    for (Residues& residues : residues_) residues.pass_battery();
    if (finding.holds && step.number == reduction_.steps.size()) finding = compare_ends();
    return finding;
  }

  [[nodiscard]] int primes() const { return static_cast<int>(residues_.size()); }

 private:
  [[nodiscard]] StepFinding compare(const Step& step, const NewPart& made, bool is_known) {
    if (residues_.empty()) return check::check_conductance(check::Rationals{}, now_, step, made);
    for (Residues& residues : residues_) {
      StepFinding finding = residues.compare(now_, step, made, is_known);
      if (!finding.holds) return finding;
    }
    return {};
  }

  [[nodiscard]] auto exact_values() const {
    return [this](PartId part) { return now_.resistance(part).lowest_terms(); };
  }

  [[nodiscard]] StepFinding compare_several(const Step& step) {
    if (residues_.empty()) {
      return check::check_replacement(check::Rationals{}, now_, step, exact_values());
    }
    for (Residues& residues : residues_) {
      StepFinding finding = residues.compare_several(now_, step);
      if (!finding.holds) return finding;
    }
    return {};
  }

  [[nodiscard]] StepFinding compare_potentials(
      const std::vector<std::pair<PointId, PointId>>& equal) const {
    if (residues_.empty()) {
      return check::check_potentials(check::Rationals{}, now_, equal, exact_values());
    }
    for (const Residues& residues : residues_) {
      StepFinding finding = residues.compare_potentials(now_, equal);
      if (!finding.holds) return finding;
    }
    return {};
  }

  // What the step says that it makes must be what the network at the end knows.
  [[nodiscard]] StepFinding compare_record(const Step& step) const {
    for (std::uint32_t i = 0; i < step.adds.size(); ++i) {
      const PartId part{step.makes.index + i};
      if (part.index >= reduction_.end.part_count()) {
        return {false, "a part made is not known at the end"};
      }
      const Ratio& known = reduction_.end.resistance(part);
      const Ratio& said = step.adds[i].resistance;
      if (!reduction_.end.knows_resistance(part)) continue;
      if (known.lowest_terms() == said.lowest_terms()) continue;
      return {false, check::name_of(part) + " has another resistance in the network at the end"};
    }
    return {};
  }

  // The check's own network knows what is joined where; values it takes from the record.
  StepFinding advance(const Step& step, const std::optional<NewPart>& made) {
    Edit edit;
    edit.removes.assign(step.takes.begin(), step.takes.end());
    edit.merges.assign(step.merges.begin(), step.merges.end());
    edit.new_points = step.new_points;
    edit.adds.assign(step.adds.begin(), step.adds.end());
    edit.merging = step.merging;
    if (made) {
      edit.adds.push_back(*made);
      if (made->resistance.is_zero()) edit.adds.front().resistance = Ratio(Number(1));
    }
    if (now_.commit(edit) == step.makes) return {};
    return {false, check::name_of(step.makes) + " is not the part that the step makes"};
  }

  // The network that the steps lead to must be the one on record.
  [[nodiscard]] StepFinding compare_ends() const {
    const Network& end = reduction_.end;
    if (end.part_count() != now_.part_count() || end.point_count() != now_.point_count()) {
      return {false, "the network at the end has parts that no step made"};
    }
    for (std::uint32_t i = 0; i < now_.part_count(); ++i) {
      const PartId part{i};
      if (now_.is_alive(part) != end.is_alive(part)) {
        return {false, check::name_of(part) + " is in one network at the end, not in the other"};
      }
      if (now_.from(part) != end.from(part) || now_.to(part) != end.to(part)) {
        return {false, check::name_of(part) + " has other ends in the network at the end"};
      }
    }
    return {};
  }

  const Reduction& reduction_;
  Network now_;
  std::vector<Residues> residues_;  // none: exact
};

}  // namespace

std::vector<Check> check_steps(const Reduction& reduction, std::size_t most_single,
                               Arithmetic arithmetic) {
  const std::size_t steps = reduction.steps.size();
  if (steps == 0) return {};
  const bool exact = arithmetic == Arithmetic::exact || (arithmetic == Arithmetic::by_size &&
                                                         bits_of(reduction.end) <= kMostExactBits);
  LogCheck log(reduction, exact);
  std::vector<Check> checks;
  for (std::size_t i = 0; i < steps; ++i) {
    const Step step = reduction.steps[i];
    const StepFinding finding = log.check(step);
    Check one{CheckLaw::step, finding.holds, step.number, {}, {}, 1, log.primes(), {}};
    if (!finding.holds) one.detail = "step " + std::to_string(step.number) + ": " + finding.detail;
    if (steps <= most_single || !finding.holds) checks.push_back(std::move(one));
    if (!finding.holds) return checks;
  }
  if (steps > most_single) {
    checks.push_back({CheckLaw::step, true, 0, {}, {}, steps, log.primes(), {}});
  }
  return checks;
}

}  // namespace ohmfold
