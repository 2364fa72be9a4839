// Known errors in the current through a part.
#include <utility>

#include "coach/errors_of_values.h"

namespace ohmfold {
namespace {

class CurrentErrors {
 public:
  CurrentErrors(const Surroundings& around, PartId part, Suspects& suspects)
      : around_(around), part_(part), suspects_(suspects) {}

  void run() {
    const bool of_file = around_.book().is_of_file(part_);
    if (of_file && is_source(around_.book().networks.original().kind(part_))) {
      of_source();
    } else {
      of_resistor();
    }
    for (const Group& group : around_.groups()) {
      if (group.how == Joining::parallel) shares(group);
    }
    of_other_cases();
    if (of_file) at_ends();
    if (suspects_.empty()) used_up();
  }

 private:
  [[nodiscard]] Diagnosis about(KnownError error, std::vector<PartId> others = {}) const {
    others.insert(others.begin(), part_);
    return {error, std::move(others), {}, {}};
  }

  void of_source() {
    const auto emf = around_.emf();
    if (!emf || around_.battery() != part_) return;
    Number all(0);
    for (const PartId part : around_.resistors()) {
      const auto r = around_.resistance(part);
      if (!r) return;
      all += *r;
    }
    if (!all.is_zero()) {
      suspects_.try_number(*emf / all, about(KnownError::source_over_all, around_.resistors()));
    }
    without_brackets(*emf);
    const auto whole = around_.size(Claimed::whole_resistance, PartId{});
    const Number internal = around_.internal().value_or(Number(0));
    if (whole && !whole->is_zero()) {
      if (!internal.is_zero()) {
        suspects_.try_number(*emf / *whole, about(KnownError::internal_left_out));
      }
      suspects_.try_number(*whole / *emf, about(KnownError::ohm_upside_down));
      suspects_.try_number(*whole * *emf, about(KnownError::ohm_upside_down));
    }
    suspects_.go_through([emf, internal](const Number& resistance) -> std::optional<Number> {
      const Number sum = resistance + internal;
      if (sum.is_zero()) return std::nullopt;
      return *emf / sum;
    });
    try_resistance_errors(around_.book(), {Claimed::whole_resistance, {}, {}, {}}, suspects_);
    suspects_.go_through({});
  }

  // E / R1 + R2 typed without brackets, where these two are all that is left.
  void without_brackets(const Number& emf) {
    const Network& own = around_.book().networks.own();
    std::vector<PartId> left = living_resistors(own);
    const Making* making = left.size() == 1 ? around_.book().making(left.front()) : nullptr;
    if (making != nullptr && making->how == Joining::series) left = making->operands;
    if (left.size() != 2) return;
    const auto a = around_.resistance(left[0]);
    const auto b = around_.resistance(left[1]);
    if (!a || !b) return;
    const Diagnosis error{KnownError::brackets_missing, left, {}, {}};
    suspects_.try_number(emf / *a + *b, error);
    suspects_.try_number(emf / *b + *a, error);
  }

  void of_resistor() {
    const auto r = around_.resistance(part_);
    const auto v = around_.size(Claimed::voltage, part_);
    try_carrying_errors(around_, part_, suspects_);
    if (!r) return;
    if (const auto emf = around_.emf()) {
      suspects_.try_number(*emf / *r, about(KnownError::source_on_one_part, {around_.battery()}));
      sequential(*emf);
    }
    if (!v) return;
    suspects_.try_number(*v * *r, about(KnownError::ohm_upside_down));
    if (!v->is_zero()) suspects_.try_number(*r / *v, about(KnownError::ohm_upside_down));
    for (const PartId other : around_.resistors()) {
      if (other == part_) continue;
      const auto other_r = around_.resistance(other);
      const auto other_v = around_.size(Claimed::voltage, other);
      if (!other_r || !other_v) continue;
      suspects_.try_number(*v / *other_r, about(KnownError::values_of_two_parts, {other}));
      suspects_.try_number(*other_v / *r, about(KnownError::values_of_two_parts, {other}));
    }
  }

  // Only the parts from the positive terminal up to this one.
  void sequential(const Number& emf) {
    Number sum(0);
    std::vector<PartId> passed;
    for (const Group& group : around_.groups()) {
      if (group.how != Joining::series) continue;
      for (std::size_t i = 0; i < group.self; ++i) {
        sum += group.members[i].resistance;
        if (group.members[i].part.exists()) passed.push_back(group.members[i].part);
      }
    }
    const auto own = around_.resistance(part_);
    if (sum.is_zero() || !own) return;
    suspects_.try_number(emf / (sum + *own), about(KnownError::sequential, std::move(passed)));
  }

  void shares(const Group& group) {
    const int count = static_cast<int>(group.members.size());
    const Number& current = group.current;
    const Number sum = group.sum();
    const Number& own = group.own().resistance;
    const std::vector<PartId> others = group.others();
    suspects_.try_number(current / count, about(KnownError::split_equally, others));
    suspects_.try_number(current * own / sum, about(KnownError::split_in_proportion, others));
    suspects_.try_number(current, about(KnownError::no_split, others));
    if (count > 2) {
      suspects_.try_number(current * (sum - own) / sum,
                           about(KnownError::two_branch_rule_on_more, others));
      suspects_.try_number(current * (sum - own) / (sum * (count - 1)),
                           about(KnownError::two_branch_rule_on_more, others));
    }
    std::size_t leaves = 0;
    for (const Group::Member& member : group.members) leaves += member.leaves.size();
    if (leaves == group.members.size()) return;
    const int parts = static_cast<int>(leaves);
    suspects_.try_number(current / parts, about(KnownError::split_by_parts, others));
    const int inside = static_cast<int>(group.own().leaves.size());
    suspects_.try_number(current * inside / parts, about(KnownError::split_by_parts, others));
  }

  // Less than what is claimed, rightly, of a part in series with it: by how much is open.
  void used_up() {
    const Number written = abs(suspects_.written().number);
    for (const Group& group : around_.groups()) {
      if (group.how != Joining::series || !group.is_part_itself) continue;
      for (const Group::Member& member : group.members) {
        if (!member.part.exists() || member.part == part_) continue;
        const OwnValue* own = around_.book().claimed({Claimed::current, member.part, {}, {}});
        if (own == nullptr || written >= abs(own->number)) continue;
        if (!around_.book().rests_on_wrong(own->claims)) {
          suspects_.try_number(suspects_.written().number,
                               about(KnownError::current_used_up, {member.part}));
        }
      }
    }
  }

  // The current of another case, as if the source gave the same in all.
  void of_other_cases() {
    if (!around_.book().is_of_file(part_)) return;
    const std::vector<CaseTrace>& cases = around_.book().exercise().trace.cases;
    for (std::size_t i = 0; i < cases.size(); ++i) {
      if (i == around_.book().case_index() || part_.index >= cases[i].branches.size()) continue;
      const Reading& current = cases[i].branches[part_.index].current;
      if (!current.value) continue;
      suspects_.try_number(current.value->number, about(KnownError::current_stays));
    }
  }

  // The current law with one of the others turned round or left out.
  void at_ends() {
    const Network& start = around_.book().networks.original();
    for (const PointId point : {start.from(part_), start.to(part_)}) {
      std::vector<PartId> others;
      start.for_each_at(point, [&](PartId other) {
        if (other != part_) others.push_back(other);
      });
      if (others.size() < 2 || others.size() > 6) continue;
      std::vector<Number> into;
      for (const PartId other : others) {
        const Truth truth = around_.book().truth({Claimed::current, other, {}, {}});
        const auto size = around_.size(Claimed::current, other);
        if (!truth.value || !size) break;
        const bool arrives = (start.to(other) == point) != truth.value->number.is_negative();
        into.push_back(arrives ? *size : -*size);
      }
      if (into.size() != others.size()) continue;
      Number sum(0);
      for (const Number& one : into) sum += one;
      for (const Number& one : into) {
        for (const Number& wrong : {sum - one, sum - one * 2}) {
          if (wrong.is_zero()) continue;
          Diagnosis error = about(KnownError::current_sum_wrong, others);
          error.points = {point};
          suspects_.try_number(abs(wrong), error);
        }
      }
    }
  }

  const Surroundings& around_;
  PartId part_;
  Suspects& suspects_;
};

}  // namespace

void try_current_errors(const Surroundings& around, const Target& target, Suspects& suspects) {
  CurrentErrors(around, target.part, suspects).run();
}

}  // namespace ohmfold
