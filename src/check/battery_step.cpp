// The ring of pieces, and the sums round it.
#include "check/battery_step.h"

#include <algorithm>
#include <optional>
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
    if (!walk_ring()) return failed("the batteries taken do not lie one after the other");
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

  // From the first battery on through its second point, and where that comes to an end, from its
  // first point backwards; notes which way each battery is passed.
  bool walk_ring() {
    for (std::size_t k = 0; k < step_.takes.size(); ++k) {
      at_[piece_[before_.from(step_.takes[k]).index]].push_back(k);
      at_[piece_[before_.to(step_.takes[k]).index]].push_back(k);
    }
    along_.assign(step_.takes.size(), true);
    passed_.assign(step_.takes.size(), false);
    passed_[0] = true;
    std::size_t count = 1;
    for (const bool forward : {true, false}) {
      std::uint32_t piece = end_piece(0, forward);
      for (auto next = next_battery(piece); next; next = next_battery(piece)) {
        const PartId part = step_.takes[*next];
        passed_[*next] = true;
        ++count;
        along_[*next] = (piece_[before_.from(part).index] == piece) == forward;
        piece = end_piece(*next, along_[*next] == forward);
      }
    }
    return count == step_.takes.size() && none_branches();
  }

  [[nodiscard]] std::uint32_t end_piece(std::size_t battery, bool second) {
    const PartId part = step_.takes[battery];
    return piece_[(second ? before_.to(part) : before_.from(part)).index];
  }

  // The one battery at a piece that was not passed yet.
  [[nodiscard]] std::optional<std::size_t> next_battery(std::uint32_t piece) {
    for (const std::size_t k : at_[piece]) {
      if (!passed_[k]) return k;
    }
    return std::nullopt;
  }

  // At each piece at most two batteries end, and two ends of one are not at the same piece.
  [[nodiscard]] bool none_branches() const {
    return std::all_of(at_.begin(), at_.end(), [](const auto& entry) {
      const std::vector<std::size_t>& ends = entry.second;
      return ends.size() == 1 || (ends.size() == 2 && ends[0] != ends[1]);
    });
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
  std::unordered_map<std::uint32_t, std::uint32_t> piece_;          // by point
  std::unordered_map<std::uint32_t, std::vector<std::size_t>> at_;  // batteries by piece
  std::vector<bool> passed_;                                        // by battery taken
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
