// What the judging of all kinds of claims has in common: names, hindrances, units, figures.
#include "coach/claim_judge.h"

#include <algorithm>

#include "coach/standing.h"
#include "language/nearest.h"

namespace ohmfold {
namespace {

void add_unknown(const CaseBook& book, const WrittenName& name, std::vector<std::string>& missing) {
  if (!name.text.empty() && !book.part_named(name.text)) missing.push_back(name.text);
}

bool is_of_points(Claimed claimed) {
  return claimed == Claimed::voltage_between || claimed == Claimed::potential ||
         claimed == Claimed::resistance_between || claimed == Claimed::whole_resistance;
}

}  // namespace

std::vector<std::string> ClaimJudge::missing_names(const Claim& claim) const {
  std::vector<std::string> missing;
  if (const auto* combine = std::get_if<CombineClaim>(&claim.says)) {
    for (const Combination& combination : combine->combinations) {
      for (const Combination::Operand& operand : combination.operands) {
        if (!operand.inner) add_unknown(book_, operand.name, missing);
      }
    }
  } else if (const auto* value = std::get_if<ValueClaim>(&claim.says)) {
    if (!is_of_points(value->claimed)) add_unknown(book_, value->first, missing);
  } else if (const auto* none = std::get_if<NoCurrentClaim>(&claim.says)) {
    add_unknown(book_, none->part, missing);
  } else if (const auto* rewrite = std::get_if<RewriteClaim>(&claim.says)) {
    for (const WrittenName& name : rewrite->takes) add_unknown(book_, name, missing);
  }
  return missing;
}

Judgement ClaimJudge::judge(const Claim& claim, std::size_t number) {
  line_ = Judgement{};
  line_.claim = number;
  line_.case_index = book_.case_index();
  number_ = number;
  std::visit([this](const auto& says) { judge_claim(says); }, claim.says);
  return std::move(line_);
}

void ClaimJudge::judge_claim(const CaseClaim& /*claim*/) {}

std::optional<PartId> ClaimJudge::find_part(const WrittenName& name) {
  if (const auto part = book_.part_named(name.text)) return part;
  hinder(Hindrance::unknown_name, name.text);
  line_.suggestion = nearest(name.text, book_.part_names());
  return std::nullopt;
}

std::optional<PointId> ClaimJudge::find_point(const WrittenName& name) {
  if (const auto point = book_.point_named(name.text)) return point;
  hinder(Hindrance::unknown_name, name.text);
  line_.suggestion = nearest(name.text, book_.point_names());
  return std::nullopt;
}

void ClaimJudge::hinder(Hindrance hindrance, const std::string& name, PartId part) {
  if (is_hindered()) return;
  line_.hindrance = hindrance;
  line_.name = name;
  line_.part = part;
}

void ClaimJudge::judge_unit(const WrittenValue& written, Unit expected) {
  line_.expected_unit = expected;
  if (!written.unit) {
    // Nothing needs no unit.
    line_.unit = written.number.is_zero() ? UnitVerdict::right : UnitVerdict::missing;
  } else {
    line_.unit = *written.unit == expected ? UnitVerdict::right : UnitVerdict::wrong;
  }
}

void ClaimJudge::judge_figures(const WrittenValue& written, const std::optional<Number>& right) {
  const bool stands = may_stand(line_.value);
  const int figures = figures_of(written);
  if (!stands || figures == 0 || !right || written.number == *right) return;
  if (figures < options_.least_figures) {
    line_.figures = FiguresVerdict::too_few;
  } else if (figures > book_.problem().figures + 1 && is_asked()) {
    line_.figures = FiguresVerdict::too_many;  // what leads to an answer may well have more
  }
}

void ClaimJudge::state(const WrittenValue& written, Unit unit, const Truth& truth) {
  line_.stated = Quantity(written.number, unit);
  if (truth.value) line_.right = truth.value;
  judge_unit(written, unit);
}

// The value against the true one and the person's own; what there is to say of it so far.
void ClaimJudge::compare(const WrittenValue& written, Unit unit, const Truth& truth,
                         const Ways& ways) {
  state(written, unit, truth);
  const std::optional<Number> right = number_of(truth);
  const ValueFinding found = judge_value(book_, {written, right, ways.any_sign, ways.routes});
  line_.value = found.verdict;
  line_.caused_by = found.caused_by;
  if (found.own) line_.own = Quantity(*found.own, unit);
  judge_figures(written, right ? right : found.own);
}

bool ClaimJudge::is_asked() const {
  const std::vector<Answer>& asked = book_.solved().answers;
  return std::any_of(asked.begin(), asked.end(), [&](const Answer& answer) {
    return answers(line_, answer.question, book_.solved());
  });
}

// What there is to say of a value that is not wrong: digits cut off, or right without following.
void ClaimJudge::note_slips(const WrittenValue& written,
                            const std::function<std::vector<Route>()>& routes) {
  if (line_.value == ValueVerdict::cut_off) {
    line_.errors.push_back({KnownError::cut_off, {}, {}, {}});
  }
  const bool right = line_.value == ValueVerdict::exact || line_.value == ValueVerdict::rounded;
  if (!right || !book_.has_wrong_values()) return;
  line_.caused_by = wrong_claims_passed(book_, written, routes());
  if (line_.caused_by.empty()) return;
  line_.errors.push_back({KnownError::wrong_working_hit, {}, {}, {}});
}

OwnValue ClaimJudge::own_of(const WrittenValue& written) const {
  // A number that is exactly right stands for itself; another may be rounded.
  const bool exact = line_.value == ValueVerdict::exact;
  return {written.number, exact ? Range::of(written.number) : range_of(written), {number_}};
}

void ClaimJudge::keep(const Target& target, const WrittenValue& written) {
  book_.set_quality(number_, quality_of(line_.value));
  book_.set_claimed(target, own_of(written));
}

}  // namespace ohmfold
