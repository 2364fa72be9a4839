// Claims of the reduction: parts in series or in parallel make another.
#include <algorithm>
#include <utility>

#include "coach/claim_judge.h"
#include "coach/errors.h"
#include "coach/own_routes.h"
#include "coach/value_judge.h"

namespace ohmfold {
namespace {

Joining other(Joining how) {
  return how == Joining::series ? Joining::parallel : Joining::series;
}

// The resistors that are left beside this one, where there are least; of all its networks.
std::vector<PartId> left_beside(const CaseBook& book, PartId made) {
  std::vector<const Network*> networks = book.networks.with({made});
  if (networks.empty()) networks.push_back(&book.networks.own());
  std::optional<std::vector<PartId>> fewest;
  for (const Network* network : networks) {
    std::vector<PartId> left = living_resistors(*network);
    left.erase(std::remove(left.begin(), left.end(), made), left.end());
    if (!fewest || left.size() < fewest->size()) fewest = std::move(left);
  }
  return *fewest;
}

RuleName rule_of(Joining how) {
  return how == Joining::series ? RuleName::series : RuleName::parallel;
}

}  // namespace

void ClaimJudge::judge_claim(const CombineClaim& claim) {
  std::vector<PartId> made;
  for (std::size_t i = 0; i < claim.combinations.size(); ++i) {
    const Combination& combination = claim.combinations[i];
    std::vector<PartId> parts;
    for (const Combination::Operand& operand : combination.operands) {
      const auto part =
          operand.inner ? std::optional(made.at(*operand.inner)) : find_part(operand.name);
      if (!part) {
        line_.step = StepVerdict::cannot_tell;
        return;
      }
      parts.push_back(*part);
    }
    const bool is_last = i + 1 == claim.combinations.size();
    made.push_back(join(combination, parts, is_last, claim));
    if (!is_last) continue;
    line_.operands = parts;
    line_.leaves = book_.leaves_of(parts);
    line_.makes = made.back();
    if (claim.value) judge_combined_value(claim, parts, made.back());
    if (claim.makes.text == kWholeName) claim_whole(claim, made.back());
  }
}

// What speaks against combining these, whatever the network: each names a hindrance.
bool ClaimJudge::may_be_combined(const std::vector<PartId>& parts) {
  for (const PartId part : parts) {
    if (std::count(parts.begin(), parts.end(), part) < 2) continue;
    hinder(Hindrance::named_twice, book_.names_by_part().at(part.index));
    return false;
  }
  for (const PartId part : parts) {
    if (!book_.is_of_file(part)) continue;
    const ElementKind kind = book_.networks.original().kind(part);
    if (kind != ElementKind::resistor) {
      hinder(Hindrance::not_a_resistor, {}, part);
    } else if (const auto& why = book_.networks.left_out(part); !why.empty()) {
      hinder(Hindrance::left_out, {}, part);
      line_.why = why;
      line_.errors = errors_of_left_out(part, why);
    }
  }
  if (is_hindered()) return false;
  if (book_.networks.has_together(parts)) return true;
  for (const PartId part : parts) {
    const PartId whole = book_.container(part);
    if (!whole.exists()) continue;
    hinder(Hindrance::used_already, {}, part);
    line_.earlier = book_.making(whole)->claim;
    line_.errors.push_back({KnownError::used_already, {part, whole}, {}, {}});
    return false;
  }
  hinder(Hindrance::lost_track, {}, parts.front());
  return false;
}

// Series said for parallel or the reverse, where the value shows that the right law was used.
bool ClaimJudge::is_other_word(Joining how, const std::vector<PartId>& parts,
                               const CombineClaim& claim) const {
  if (!claim.value || claim.combinations.size() > 1) return false;
  const auto own = combined_route(book_, other(how), parts);
  if (!own || !agrees(*claim.value, own->value)) return false;
  const StepTest said = test_for(how);
  const StepTest done = test_for(other(how));
  const Place place{parts, {}, {}};
  for (const Network* network : book_.networks.with(parts)) {
    if (said.judge(*network, place).allowed) return false;
    if (done.judge(*network, place).allowed) return true;
  }
  return false;
}

PartId ClaimJudge::join(const Combination& combination, const std::vector<PartId>& parts,
                        bool is_last, const CombineClaim& claim) {
  Making making{
      combination.how, rule_of(combination.how), parts, book_.leaves_of(parts), number_, {}};
  if (is_last) {
    line_.rule = rule_of(combination.how);
    if (book_.part_named(claim.makes.text)) {
      hinder(Hindrance::name_taken, claim.makes.text);
    } else {
      making.name = claim.makes.text;
    }
  }
  if (!may_be_combined(parts)) {
    line_.step =
        line_.hindrance == Hindrance::lost_track ? StepVerdict::cannot_tell : StepVerdict::refused;
    return not_carried_out(std::move(making));
  }
  if (is_other_word(combination.how, parts, claim)) {
    line_.errors.push_back({KnownError::wrong_word, parts, {}, {}});
    making.how = other(combination.how);
  }
  const StepResult result = book_.networks.combine(*making.how, parts);
  if (line_.step == StepVerdict::none || result.verdict > line_.step) line_.step = result.verdict;
  line_.why.insert(line_.why.end(), result.why.begin(), result.why.end());
  if (result.verdict == StepVerdict::refused) {
    line_.why = result.why;
    if (result.refused_in) {
      line_.errors = errors_of_step(*result.refused_in, combination.how, parts, result.why);
    }
  }
  if (!result.makes.exists()) return not_carried_out(std::move(making));
  const Joining how = *making.how;
  book_.add_made(result.makes, std::move(making));
  if (const auto own = combined_route(book_, how, parts)) {
    book_.set_own_resistance(result.makes, {own->value, own->range, own->claims});
  }
  if (result.in_main) book_.note_true_flow(result.makes, how, parts);
  const bool apart = std::any_of(result.why.begin(), result.why.end(), [](const Fact& fact) {
    return std::holds_alternative<CarryOneCurrent>(fact);
  });
  if (apart) book_.note_moved_points();
  return result.makes;
}

// A part that is in no network, so that later lines can still be followed by their numbers.
PartId ClaimJudge::not_carried_out(Making making) {
  const PartId part = book_.networks.reserve();
  const auto own = combined_route(book_, *making.how, making.operands);
  making.operands.clear();  // they stay where they are
  book_.add_made(part, std::move(making));
  if (own) book_.set_own_resistance(part, {own->value, own->range, own->claims});
  return part;
}

void ClaimJudge::judge_combined_value(const CombineClaim& claim,
                                      const std::vector<PartId>& operands, PartId made) {
  const WrittenValue& written = *claim.value;
  const Making* making = book_.making(made);
  const Joining how =
      making != nullptr && making->how ? *making->how : claim.combinations.back().how;
  const Target target{Claimed::value, made, {}, {}};
  const auto own = combined_route(book_, how, operands);
  const auto routes = [&] { return own ? std::vector<Route>{*own} : std::vector<Route>{}; };
  const Truth truth = book_.truth(target);
  compare(written, Unit::ohm, truth, {false, routes});
  if (line_.value == ValueVerdict::wrong && line_.step != StepVerdict::cannot_tell) {
    const auto right = number_of(truth);
    const auto meant = right ? right : own ? std::optional(own->value) : std::nullopt;
    for (Diagnosis& error : errors_in(CombinationPlace{book_, how, operands, written, meant})) {
      line_.errors.push_back(std::move(error));
    }
  }
  if (line_.value == ValueVerdict::cannot_tell) miss_value_of(operands);
  note_slips(written, routes);
  keep(target, written);
  book_.set_own_resistance(made, *book_.claimed(target));
}

// Nothing can be worked out from a part whose value nobody has stated.
void ClaimJudge::miss_value_of(const std::vector<PartId>& operands) {
  for (const PartId operand : operands) {
    if (book_.own_resistance(operand)) continue;
    hinder(Hindrance::no_values, {}, operand);
    if (const Making* making = book_.making(operand)) line_.earlier = making->claim;
    return;
  }
}

// "R_eq = …": after this step one part has to be left.
void ClaimJudge::claim_whole(const CombineClaim& claim, PartId made) {
  const Target target{Claimed::whole_resistance, {}, {}, {}};
  if (claim.value) {
    book_.set_claimed(target, own_of(*claim.value));
  }
  const std::vector<PartId> left = left_beside(book_, made);
  line_.claimed = Claimed::whole_resistance;
  if (left.empty() || line_.step == StepVerdict::refused) return;
  for (const PartId part : left)
    line_.errors.push_back({KnownError::part_forgotten, {part}, {}, {}});
  line_.step = StepVerdict::refused;
}

}  // namespace ohmfold
