// All that is known of one case while a work on it is judged: names, networks, the true values, and
// the person's own.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "coach/networks.h"
#include "coach/written.h"
#include "ohmfold/coach.h"

namespace ohmfold {

/// What a claim can give a value of, with names looked up.
struct Target {
  Claimed claimed{};
  PartId part;
  PointId first, second;

  friend auto operator<=>(const Target&, const Target&) = default;
};

/// What a question asks for, as a claim would give it; of a Thevenin equivalent, its voltage.
[[nodiscard]] Target target_of(const Question& question);

/// How far a claim's value can be relied on.
struct Quality {
  bool is_exact = true;  ///< equal to the true value
  bool is_right = true;  ///< the true value, as far as its figures go
};

/// A number of the person's own: given, claimed, or what follows.
struct OwnValue {
  Number number;
  Range range;                      ///< what it stands for, being rounded
  std::vector<std::size_t> claims;  ///< that say it, or that it follows from
};

/// A true value, or why there is none.
using Truth = Reading;

[[nodiscard]] inline std::optional<Number> number_of(const Truth& truth) {
  return truth.value ? std::optional(truth.value->number) : std::nullopt;
}

/// How a part came into being.
struct Making {
  std::optional<Joining> how;  ///< none: by delta and star
  RuleName rule{};
  std::vector<PartId> operands;
  std::vector<PartId> leaves;  ///< parts of the file, in their order
  std::size_t claim = 0;
  std::string name;  ///< empty within a claim
};

class CaseBook {
 public:
  CaseBook(const Exercise& exercise, std::size_t case_index);

  [[nodiscard]] const Problem& problem() const { return *exercise_->problem; }
  [[nodiscard]] const CaseTrace& solved() const { return exercise_->trace.cases[case_index_]; }
  [[nodiscard]] const Exercise& exercise() const { return *exercise_; }
  [[nodiscard]] std::size_t case_index() const { return case_index_; }
  [[nodiscard]] const Case& setting() const { return problem().cases[case_index_]; }

  Networks networks;

  // --- names ---------------------------------------------------------------------------------
  [[nodiscard]] std::optional<PartId> part_named(const std::string& name) const;
  [[nodiscard]] std::optional<PointId> point_named(const std::string& name) const;
  /// Every name of a part, for suggestions.
  [[nodiscard]] std::vector<std::string_view> part_names() const;
  [[nodiscard]] std::vector<std::string_view> point_names() const;
  /// By PartId and PointId, for views.
  [[nodiscard]] std::vector<std::string> names_by_part() const;
  [[nodiscard]] std::vector<std::string> names_by_point() const;
  void name_point(PointId point, const std::string& name);

  // --- parts that were made ------------------------------------------------------------------
  void add_made(PartId part, Making making);
  /// Nothing for a part of the file, or for none.
  [[nodiscard]] const Making* making(PartId part) const;
  /// The part that this one is inside of by now, or none.
  [[nodiscard]] PartId container(PartId part) const;
  [[nodiscard]] std::vector<PartId> leaves_of(const std::vector<PartId>& parts) const;
  [[nodiscard]] bool is_of_file(PartId part) const { return part.index < problem().parts.size(); }

  // --- true values ---------------------------------------------------------------------------
  /// Of a part that was made, the size only: its direction is nobody's choice.
  [[nodiscard]] Truth truth(const Target& target) const;
  [[nodiscard]] bool has_direction(const Target& target) const {
    return !target.part.exists() || is_of_file(target.part);
  }
  /// Called where a step is right in the circuit as it works: finds current and voltage of what
  /// came.
  void note_true_flow(PartId made, Joining how, const std::vector<PartId>& operands);
  void note_true_arms(PartId first, std::size_t count);
  /// Some points of the true network are not where they were.
  void note_moved_points() { points_moved_ = true; }

  // --- the person's own values ---------------------------------------------------------------
  /// Given values of the file are everyone's own.
  [[nodiscard]] std::optional<OwnValue> own_resistance(PartId part) const;
  void set_own_resistance(PartId part, OwnValue value);
  /// What the latest claim says of it.
  [[nodiscard]] const OwnValue* claimed(const Target& target) const;
  void set_claimed(const Target& target, OwnValue value);

  void set_quality(std::size_t claim, Quality quality) {
    quality_[claim] = quality;
    has_wrong_ = has_wrong_ || !quality.is_right;
  }
  /// Has some claim a wrong value?
  [[nodiscard]] bool has_wrong_values() const { return has_wrong_; }
  /// Of a claim that gives no value: exact.
  [[nodiscard]] Quality quality(std::size_t claim) const;
  /// Has one of these claims a wrong value?
  [[nodiscard]] bool rests_on_wrong(const std::vector<std::size_t>& claims) const;
  /// Counts the searches for what a wrong number comes from that need solutions of networks; false
  /// when there have been enough for one work.
  [[nodiscard]] bool may_search() const;

 private:
  [[nodiscard]] std::optional<Truth> answered(const Target& target) const;
  [[nodiscard]] std::optional<Truth> behind_asked_points(const Target& target) const;
  [[nodiscard]] Truth made_truth(const Target& target) const;
  [[nodiscard]] Truth resistance_truth(const Target& target) const;
  [[nodiscard]] std::optional<Number> potential(PointId point) const;

  const Exercise* exercise_;
  std::size_t case_index_;
  std::unordered_map<std::string, PartId> parts_;
  std::unordered_map<std::string, PointId> points_;
  std::map<PartId, Making> made_;
  std::map<PartId, PartId> inside_;
  std::map<PartId, Number> made_current_, made_voltage_;  // sizes, in the true circuit
  std::map<PointId, Number> new_potentials_;
  std::map<PartId, OwnValue> own_resistance_;
  std::map<Target, OwnValue> claimed_;
  std::map<std::size_t, Quality> quality_;
  mutable std::map<Target, Truth> resistances_;  // found once
  mutable int searches_ = 0;
  bool has_wrong_ = false;
  bool points_moved_ = false;
};

}  // namespace ohmfold
