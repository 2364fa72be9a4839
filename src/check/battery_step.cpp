// The ring of pieces, and the sums round it.
#include "check/battery_step.h"

#include <unordered_map>

#include "check/excerpt.h"
#include "check/report.h"
#include "check/separation.h"

namespace ohmfold::check {
namespace {

StepFinding failed(std::string detail) {
  return {false, std::move(detail)};
}

class RingCheck {
 public:
  RingCheck(const Network& before, const Step& step)
      : before_(before), step_(step), made_(step.adds.front()) {}

  StepFinding run() {
    for (const PartId part : step_.takes) {
      if (before_.kind(part) != ElementKind::battery) {
        return failed(name_of(part) + " is no battery, and taken with batteries");
      }
    }
    find_pieces();
    if (!walk_ring()) return failed("the batteries taken do not lie one after the other on a ring");
    if (StepFinding finding = check_ends(); !finding.holds) return finding;
    return check_sums();
  }

 private:
  void find_pieces() {
    std::vector<std::vector<PointId>> groups;
    std::unordered_map<std::uint32_t, std::size_t> group_of;
    for (const PartId part : step_.takes) {
      for (const PointId point : {before_.from(part), before_.to(part)}) {
        if (group_of.try_emplace(point.index, groups.size()).second) groups.push_back({point});
      }
    }
    const std::vector<std::uint32_t> number = separate(before_, step_.takes, groups);
    for (const auto& [point, group] : group_of) piece_[point] = number[group];
  }

  // From the first battery round through all others; notes which way each is passed.
  bool walk_ring() {
    std::unordered_map<std::uint32_t, std::vector<std::size_t>> at;  // batteries by piece
    for (std::size_t k = 0; k < step_.takes.size(); ++k) {
      at[piece_[before_.from(step_.takes[k]).index]].push_back(k);
      at[piece_[before_.to(step_.takes[k]).index]].push_back(k);
    }
    along_.assign(step_.takes.size(), true);
    std::size_t passed = 0;
    std::size_t battery = 0;
    std::uint32_t piece = piece_[before_.to(step_.takes[0]).index];
    do {
      ++passed;
      const auto& two = at[piece];
      if (two.size() != 2 || two[0] == two[1]) return false;
      battery = two[0] == battery ? two[1] : two[0];
      const PartId part = step_.takes[battery];
      along_[battery] = piece_[before_.from(part).index] == piece;
      piece = piece_[(along_[battery] ? before_.to(part) : before_.from(part)).index];
    } while (battery != 0 && passed <= step_.takes.size());
    return passed == step_.takes.size();
  }

  StepFinding check_ends() {
    const PartId first = step_.takes.front();
    const bool same = made_.from == before_.from(first) && made_.to == before_.to(first);
    const bool turned = made_.from == before_.to(first) && made_.to == before_.from(first);
    if (!same && !turned) {
      return failed("the battery made does not join the ends of " + name_of(first));
    }
    turned_ = turned;
    if (step_.merging != Merging::by_twos || step_.merges.size() != 2 * (step_.takes.size() - 1)) {
      return failed("not all other batteries have their two ends made one point");
    }
    for (std::size_t k = 1; k < step_.takes.size(); ++k) {
      const PartId part = step_.takes[k];
      const bool forward = along_[k] != turned_;
      const PointId one = forward ? before_.from(part) : before_.to(part);
      const PointId two = forward ? before_.to(part) : before_.from(part);
      if (step_.merges[2 * k - 2] != one || step_.merges[2 * k - 1] != two) {
        return failed("the ends of " + name_of(part) + " are not the points made one");
      }
    }
    return {};
  }

  StepFinding check_sums() const {
    Voltage emf;
    Resistance internal;
    for (std::size_t k = 0; k < step_.takes.size(); ++k) {
      const BatteryData& data = before_.battery(step_.takes[k]);
      emf = along_[k] != turned_ ? emf + data.emf : emf - data.emf;
      internal += data.internal;
    }
    if (made_.emf != emf) {
      return failed("voltage of the battery made: off by " + (made_.emf - emf).number.to_string() +
                    " V, compared with " + emf.number.to_string() + " V");
    }
    const Number has = made_.resistance.lowest_terms();
    if (has == internal.number) return {};
    return failed("internal resistance of the battery made: off by " +
                  (has - internal.number).to_string() + " ohm, compared with " +
                  internal.number.to_string() + " ohm");
  }

  const Network& before_;
  const Step& step_;
  const NewPart& made_;
  std::unordered_map<std::uint32_t, std::uint32_t> piece_;  // by point
  std::vector<bool> along_;  // by battery taken: the walk passes it from − to +
  bool turned_ = false;      // the battery made runs against the first
};

}  // namespace

bool is_battery_step(const Step& step) {
  return step.adds.size() == 1 && step.adds.front().kind == ElementKind::battery;
}

StepFinding check_battery_step(const Network& before, const Step& step) {
  const std::string fault = fault_in_parts(before, step.takes);
  if (!fault.empty()) return failed(fault);
  if (step.takes.size() < 2 || step.new_points != 0) {
    return failed("a battery made of fewer than two, or with new points");
  }
  return RingCheck(before, step).run();
}

}  // namespace ohmfold::check
