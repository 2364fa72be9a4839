// What a network becomes by a step that must not be made.
#include "coach/forced_step.h"

#include <algorithm>

namespace ohmfold {
namespace {

// Points that become one, two by two, seen as groups: is each source still between two of them?
bool shorts_a_source(const Network& network, const std::vector<PointId>& merges) {
  std::vector<PointId> name(network.point_count());
  for (std::uint32_t i = 0; i < name.size(); ++i) name[i] = network.representative(PointId{i});
  for (std::size_t i = 0; i + 1 < merges.size(); i += 2) {
    const PointId from = name[merges[i].index];
    const PointId to = name[merges[i + 1].index];
    std::replace(name.begin(), name.end(), from, to);
  }
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part) || !is_source(network.kind(part))) continue;
    const bool apart = network.from(part) != network.to(part);
    if (apart && name[network.from(part).index] == name[network.to(part).index]) return true;
  }
  return false;
}

Ratio value_of(const Network& network, Joining how, const std::vector<PartId>& parts) {
  Ratio value = network.resistance(parts.front());
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const Ratio& next = network.resistance(parts[i]);
    value = how == Joining::series ? Ratio::series(value, next) : Ratio::parallel(value, next);
  }
  return value;
}

class Forcing {
 public:
  Forcing(const Network& network, Joining how, const std::vector<PartId>& parts)
      : network_(network), how_(how), parts_(parts), value_(value_of(network, how, parts)) {}

  std::vector<Edit> run() && {
    if (how_ == Joining::series) {
      for (const PartId kept : parts_) series_in_place_of(kept);
    } else {
      parallel();
    }
    return std::move(edits_);
  }

 private:
  // The result takes the place of one of them, the others become wires: between neighbours, what
  // meets there moves to the far end of each in turn.
  void series_in_place_of(PartId kept) {
    std::vector<PointId> merges;
    for (const PartId part : parts_) {
      if (part == kept) continue;
      merges.push_back(network_.from(part));
      merges.push_back(network_.to(part));
    }
    add(network_.from(kept), network_.to(kept), std::move(merges));
  }

  // All ends on the one side become one point, and all on the other: each part one way or the
  // other, the ends that are shared deciding where there are such.
  void parallel() {
    const PartId first = parts_.front();
    const std::size_t ways = parts_.size() == 2 ? 2 : 1;
    for (std::size_t way = 0; way < ways; ++way) {
      std::vector<PointId> merges;
      for (std::size_t i = 1; i < parts_.size(); ++i) {
        const PointId a = network_.from(first);
        const PointId b = network_.to(first);
        PointId near = network_.from(parts_[i]);
        PointId far = network_.to(parts_[i]);
        if (far == a || near == b) std::swap(near, far);
        if (way == 1) {
          if (near == a || far == b) return;  // a shared end leaves no choice
          std::swap(near, far);
        }
        if (near != a) merges.insert(merges.end(), {a, near});
        if (far != b) merges.insert(merges.end(), {b, far});
      }
      add(network_.from(first), network_.to(first), std::move(merges));
    }
  }

  void add(PointId from, PointId to, std::vector<PointId> merges) {
    if (shorts_a_source(network_, merges)) return;
    Edit edit;
    edit.removes = parts_;
    edit.adds.push_back({from, to, value_});
    edit.merges = std::move(merges);
    edit.merging = Merging::by_twos;
    edit.formula = how_ == Joining::series ? Formula::sum : Formula::reciprocal_sum;
    edits_.push_back(std::move(edit));
  }

  const Network& network_;
  Joining how_;
  const std::vector<PartId>& parts_;
  Ratio value_;
  std::vector<Edit> edits_;
};

}  // namespace

std::vector<Edit> forced_steps(const Network& network, Joining how,
                               const std::vector<PartId>& parts) {
  return Forcing(network, how, parts).run();
}

}  // namespace ohmfold
