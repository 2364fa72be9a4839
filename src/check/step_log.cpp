// A whole log of steps, on a network that the check keeps for itself.
#include <algorithm>

#include "check/rationals.h"
#include "check/report.h"
#include "check/step.h"
#include "check/step_conductance.h"

namespace ohmfold {
namespace {

using check::Arithmetic;
using check::StepFinding;

constexpr std::size_t kMostExactBits = 100'000;

std::size_t bits_of(const Network& network) {
  std::size_t bits = 0;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    bits += network.resistance(PartId{i}).bits();
  }
  return bits;
}

class LogCheck {
 public:
  LogCheck(const Reduction& reduction, bool exact) : reduction_(reduction), now_(reduction.start) {
    if (!exact) primes_ = check::random_fields();
  }

  StepFinding check(const Step& step) {
    std::optional<NewPart> made;
    if (step.makes.exists()) {
      if (step.makes.index >= reduction_.end.part_count()) {
        return {false, "the part made is not known at the end"};
      }
      made = NewPart{step.first, step.second, reduction_.end.resistance(step.makes)};
    }
    StepFinding finding = check::check_structure(now_, step, made);
    if (made && finding.holds) finding = compare(step, *made);
    if (finding.holds) finding = advance(step, made);
    if (finding.holds && step.number == reduction_.steps.size()) finding = compare_ends();
    return finding;
  }

  [[nodiscard]] int primes() const { return static_cast<int>(primes_.size()); }

 private:
  [[nodiscard]] StepFinding compare(const Step& step, const NewPart& made) const {
    if (primes_.empty()) return check::check_conductance(check::Rationals{}, now_, step, made);
    for (const PrimeField& field : primes_) {
      StepFinding finding = check::check_conductance(field, now_, step, made);
      if (!finding.holds) return finding;
    }
    return {};
  }

  StepFinding advance(const Step& step, const std::optional<NewPart>& made) {
    Edit edit;
    edit.removes.assign(step.takes.begin(), step.takes.end());
    edit.merges.assign(step.merges.begin(), step.merges.end());
    if (made) edit.adds.push_back(*made);
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
  std::vector<PrimeField> primes_;
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
