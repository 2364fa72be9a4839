// One claim after the other against the book of its case.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "coach/case_book.h"
#include "coach/value_judge.h"
#include "ohmfold/coach.h"

namespace ohmfold {

/// Judges claims of one case and keeps the book of it up to date.
class ClaimJudge {
 public:
  ClaimJudge(CaseBook& book, const JudgeOptions& options) : book_(book), options_(options) {}

  /// The names of parts in a claim that nothing is called yet, and that are needed to judge it.
  [[nodiscard]] std::vector<std::string> missing_names(const Claim& claim) const;

  /// Judges the claim, the `number`-th of the work. Marks are not given yet.
  [[nodiscard]] Judgement judge(const Claim& claim, std::size_t number);

 private:
  void judge_claim(const CombineClaim& claim);
  void judge_claim(const ValueClaim& claim);
  void judge_claim(const SamePotentialClaim& claim);
  void judge_claim(const NoCurrentClaim& claim);
  void judge_claim(const NoPairClaim& claim);
  void judge_claim(const RewriteClaim& claim);
  void judge_claim(const CaseClaim& claim);

  // Looking up names; nothing, and a hindrance, where there is none.
  std::optional<PartId> find_part(const WrittenName& name);
  std::optional<PointId> find_point(const WrittenName& name);
  void hinder(Hindrance hindrance, const std::string& name = {}, PartId part = {});
  [[nodiscard]] bool is_hindered() const { return line_.hindrance != Hindrance::none; }

  // Combinations.
  bool may_be_combined(const std::vector<PartId>& parts);
  PartId join(const Combination& combination, const std::vector<PartId>& parts, bool is_last,
              const CombineClaim& claim);
  [[nodiscard]] bool is_other_word(Joining how, const std::vector<PartId>& parts,
                                   const CombineClaim& claim) const;
  void judge_combined_value(const CombineClaim& claim, const std::vector<PartId>& operands,
                            PartId made);
  void miss_value_of(const std::vector<PartId>& operands);
  void claim_whole(const CombineClaim& claim, PartId made);
  PartId not_carried_out(Making making);

  // Values.
  [[nodiscard]] std::optional<Target> target_of(const ValueClaim& claim);
  [[nodiscard]] bool has_what_is_claimed(const Target& target) const;
  void judge_target(const Target& target, const WrittenValue& written);
  // How a value is to be compared with what the person has.
  struct Ways {
    bool any_sign = false;
    std::function<std::vector<Route>()> routes;
  };
  void compare(const WrittenValue& written, Unit unit, const Truth& truth, const Ways& ways);
  void judge_unit(const WrittenValue& written, Unit expected);
  void judge_figures(const WrittenValue& written, const std::optional<Number>& right);
  void state(const WrittenValue& written, Unit unit, const Truth& truth);
  [[nodiscard]] bool is_asked() const;
  void note_slips(const WrittenValue& written, const std::function<std::vector<Route>()>& routes);
  void keep(const Target& target, const WrittenValue& written);
  [[nodiscard]] OwnValue own_of(const WrittenValue& written) const;
  void state_zero(const Target& target, Unit unit);

  // Statements about potentials.
  void judge_equal(PointId first, PointId second);

  // Delta and star.
  void judge_arms(const RewriteClaim& claim, const std::vector<PartId>& takes, PartId first);

  CaseBook& book_;
  const JudgeOptions& options_;
  Judgement line_;
  std::size_t number_ = 0;
};

}  // namespace ohmfold
