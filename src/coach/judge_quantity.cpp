// Claims of a value: of a current, a voltage, a power, a potential, a resistance.
#include <algorithm>

#include "coach/claim_judge.h"
#include "coach/errors.h"
#include "coach/own_routes.h"
#include "coach/value_judge.h"

namespace ohmfold {
namespace {

Unit unit_of(const Target& target, const CaseBook& book) {
  const bool given = target.claimed == Claimed::value && book.is_of_file(target.part);
  return given ? unit_of_value(book.problem().part(target.part).kind)
               : ohmfold::unit_of(target.claimed);
}

Hindrance hindrance_of(Undetermined why, Claimed claimed) {
  switch (why) {
    case Undetermined::too_long:
      return Hindrance::too_large;
    case Undetermined::beyond_method:
      return claimed == Claimed::whole_resistance ? Hindrance::several_sources : Hindrance::none;
    case Undetermined::ideal_loop:
    case Undetermined::floating:
    case Undetermined::no_path:
    case Undetermined::taken_out:
    case Undetermined::unlimited:
    case Undetermined::irrational:
    case Undetermined::any_value:
      break;
  }
  return Hindrance::not_determined;
}

}  // namespace

std::optional<Target> ClaimJudge::target_of(const ValueClaim& claim) {
  Target target{claim.claimed, {}, {}, {}};
  switch (claim.claimed) {
    case Claimed::current:
    case Claimed::voltage:
    case Claimed::power:
    case Claimed::value:
    case Claimed::resistance_seen_by: {
      const auto part = find_part(claim.first);
      if (!part) return std::nullopt;
      target.part = *part;
      return target;
    }
    case Claimed::potential: {
      const auto point = find_point(claim.first);
      if (!point) return std::nullopt;
      target.first = *point;
      return target;
    }
    case Claimed::voltage_between:
    case Claimed::resistance_between: {
      const auto first = find_point(claim.first);
      const auto second = first ? find_point(claim.second) : std::nullopt;
      if (!second) return std::nullopt;
      target.first = *first;
      target.second = *second;
      return target;
    }
    case Claimed::whole_resistance:
      return target;
  }
  return std::nullopt;
}

// Only sources see a resistance; wires, switches and meters have no value.
bool ClaimJudge::has_what_is_claimed(const Target& target) const {
  const bool of_file = target.part.exists() && book_.is_of_file(target.part);
  const PartKind kind = of_file ? book_.problem().part(target.part).kind : PartKind::resistor;
  if (target.claimed == Claimed::resistance_seen_by) return is_source(kind);
  return target.claimed != Claimed::value || is_source(kind) || kind == PartKind::resistor ||
         kind == PartKind::lamp;
}

void ClaimJudge::judge_claim(const ValueClaim& claim) {
  line_.claimed = claim.claimed;
  const std::optional<Target> target = target_of(claim);
  if (!target) {
    line_.value = ValueVerdict::cannot_tell;
    return;
  }
  if (!has_what_is_claimed(*target)) {
    hinder(Hindrance::not_a_resistor, {}, target->part);
    line_.value = ValueVerdict::cannot_tell;
    return;
  }
  line_.of = target->part;
  line_.at = target->first;
  line_.to = target->second;
  judge_target(*target, claim.value);
}

void ClaimJudge::judge_target(const Target& target, const WrittenValue& written) {
  const Unit unit = unit_of(target, book_);
  const Truth truth = book_.truth(target);
  const auto routes = [&] { return own_routes(book_, target); };
  compare(written, unit, truth, {!book_.has_direction(target), routes});
  if (line_.value == ValueVerdict::cannot_tell) {
    hinder(hindrance_of(truth.why, target.claimed));
    if (!is_hindered()) hinder(Hindrance::lost_track);
  }
  if (line_.value == ValueVerdict::wrong) {
    line_.errors = errors_in(TargetPlace{book_, target, written, number_of(truth)});
  }
  note_slips(written, routes);
  keep(target, written);
  if (target.claimed == Claimed::value) book_.set_own_resistance(target.part, own_of(written));
}

}  // namespace ohmfold
