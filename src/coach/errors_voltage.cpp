// Known errors in a voltage or a potential.
#include <algorithm>

#include "circuit/set_case.h"
#include "coach/errors_of_values.h"

namespace ohmfold {
namespace {

class VoltageErrors {
 public:
  VoltageErrors(const Surroundings& around, const Target& target, Suspects& suspects)
      : around_(around), target_(target), suspects_(suspects) {}

  void run() {
    signs();
    if (target_.part.exists()) {
      of_part();
    } else {
      between_points();
    }
    subtracted();
  }

 private:
  [[nodiscard]] Diagnosis about(KnownError error, std::vector<PartId> others = {}) const {
    if (target_.part.exists()) others.insert(others.begin(), target_.part);
    return {error, std::move(others), {}, {}};
  }
  void try_with(const std::optional<Number>& number, KnownError error,
                std::vector<PartId> others = {}) {
    suspects_.try_number(number, about(error, std::move(others)));
  }

  void signs() {
    const auto& right = suspects_.right();
    if (!right || target_.claimed != Claimed::voltage_between) return;
    suspects_.try_number(
        -*right, {KnownError::wrong_order_of_points, {}, {target_.first, target_.second}, {}});
  }

  void of_part() {
    const PartId part = target_.part;
    const Network& start = around_.book().networks.original();
    if (around_.book().is_of_file(part)) {
      const ElementKind kind = start.kind(part);
      if (kind == ElementKind::battery) of_battery(start.battery(part));
      if (is_gap(kind) && suspects_.written().number.is_zero()) {
        try_with(Number(0), KnownError::no_voltage_across_gap);
      }
      if (kind == ElementKind::resistor) try_carrying_errors(around_, part, suspects_);
      for (const PointId point : {start.from(part), start.to(part)}) {
        const Truth potential = around_.book().truth({Claimed::potential, {}, point, {}});
        if (!potential.value || potential.value->number.is_zero()) continue;
        suspects_.try_number(potential.value->number,
                             {KnownError::potential_for_voltage, {part}, {point}, {}});
      }
    }
    const auto r = around_.resistance(part);
    const auto i = around_.size(Claimed::current, part);
    if (r && around_.emf()) {
      try_with(around_.emf(), KnownError::source_on_one_part, {around_.battery()});
    }
    if (r && i) by_ohm(*r, *i);
    for (const Group& group : around_.groups()) shares(group);
    if (r) without_load(*r);
  }

  void of_battery(const BatteryData& data) {
    const auto current = around_.size(Claimed::current, data.part);
    if (data.internal.is_zero() || !current) return;
    try_with(data.emf.number, KnownError::internal_left_out);
    try_with(*current * data.internal.number, KnownError::lost_volts_for_terminal);
  }

  void by_ohm(const Number& r, const Number& i) {
    if (!i.is_zero()) try_with(r / i, KnownError::ohm_upside_down);
    try_with(i / r, KnownError::ohm_upside_down);
    for (const PartId other : around_.resistors()) {
      if (other == target_.part) continue;
      const auto other_r = around_.resistance(other);
      const auto other_i = around_.size(Claimed::current, other);
      if (!other_r || !other_i) continue;
      try_with(i * *other_r, KnownError::values_of_two_parts, {other});
      try_with(*other_i * r, KnownError::values_of_two_parts, {other});
    }
  }

  void shares(const Group& group) {
    const int count = static_cast<int>(group.members.size());
    const std::vector<PartId> others = group.others();
    const Number& own = group.own().resistance;
    const Number sum = group.sum();
    if (group.how == Joining::parallel) {
      try_with(group.voltage / count, KnownError::voltage_split_in_parallel, others);
      try_with(group.voltage * own / sum, KnownError::voltage_split_in_parallel, others);
      try_with(group.voltage * count, KnownError::drops_of_parallel_added, others);
      return;
    }
    try_with(group.voltage / count, KnownError::voltage_shared_equally, others);
    if (count == 2) {
      const Number& other = group.members[1 - group.self].resistance;
      try_with(group.voltage * other / sum, KnownError::divider_upside_down, others);
    }
    const auto emf = around_.emf();
    if (!emf || *emf == group.voltage) return;
    try_with(*emf * own / sum, KnownError::divider_from_source, {around_.battery()});
    for (const Group::Member& member : group.members) {
      if (&member == &group.own()) continue;
      try_with(abs(group.voltage - member.voltage * 2), KnownError::wrong_drop_subtracted,
               member.leaves);
    }
  }

  // E R / (R + other) though something else is joined where the two meet.
  void without_load(const Number& r) {
    const auto emf = around_.emf();
    if (!emf || !around_.book().is_of_file(target_.part)) return;
    const Network& start = around_.book().networks.original();
    for (const PointId point : {start.from(target_.part), start.to(target_.part)}) {
      std::vector<PartId> others;
      start.for_each_at(point, [&](PartId other) {
        if (other != target_.part && start.kind(other) == ElementKind::resistor) {
          others.push_back(other);
        }
      });
      if (others.size() < 2) continue;
      for (const PartId other : others) {
        const auto other_r = around_.resistance(other);
        if (!other_r) continue;
        std::vector<PartId> load;
        std::copy_if(others.begin(), others.end(), std::back_inserter(load),
                     [&](PartId one) { return one != other; });
        Diagnosis error = about(KnownError::divider_without_load, std::move(load));
        error.points = {point};
        suspects_.try_number(*emf * r / (r + *other_r), error);
      }
    }
  }

  void between_points() {
    const Network& start = around_.book().networks.original();
    for (std::uint32_t i = 0; i < around_.book().problem().parts.size(); ++i) {
      const PartId part{i};
      const bool joins = std::minmax(start.from(part), start.to(part)) ==
                         std::minmax(target_.first, target_.second);
      if (joins && is_gap(start.kind(part)) && suspects_.written().number.is_zero()) {
        suspects_.try_number(Number(0), {KnownError::no_voltage_across_gap, {part}, {}, {}});
      }
    }
    if (target_.claimed != Claimed::voltage_between) return;
    for (const PointId point : {target_.first, target_.second}) {
      const Truth potential = around_.book().truth({Claimed::potential, {}, point, {}});
      if (!potential.value || potential.value->number.is_zero()) continue;
      suspects_.try_number(potential.value->number,
                           {KnownError::potential_for_voltage, {}, {point}, {}});
    }
  }

  // The source less a drop that is not on the way.
  void subtracted() {
    const auto emf = around_.emf();
    if (!emf) return;
    for (const PartId other : around_.resistors()) {
      if (other == target_.part) continue;
      const auto drop = around_.size(Claimed::voltage, other);
      if (!drop || drop->is_zero()) continue;
      try_with(abs(*emf - *drop), KnownError::wrong_drop_subtracted, {other});
      try_with(abs(*emf - *drop * 2), KnownError::wrong_drop_subtracted, {other});
    }
  }

  const Surroundings& around_;
  const Target& target_;
  Suspects& suspects_;
};

}  // namespace

void try_voltage_errors(const Surroundings& around, const Target& target, Suspects& suspects) {
  VoltageErrors(around, target, suspects).run();
}

}  // namespace ohmfold
