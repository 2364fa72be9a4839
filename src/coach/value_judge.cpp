// Is a written value right: in itself, on the person's own numbers, or as far as rounding goes?
#include "coach/value_judge.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace ohmfold {
namespace {

constexpr int kFewestFigures = 2;
constexpr int kNarrow = 20;  // a range is narrow where it is less than 1/20 of what it is about

class ValueJudge {
 public:
  ValueJudge(const CaseBook& book, const ValueQuestion& question)
      : book_(book), question_(question), written_(question.written) {
    const bool turned = question.any_sign && question.right &&
                        question.right->is_negative() != written_.number.is_negative();
    if (turned && !written_.number.is_zero()) written_ = negated(written_);
  }

  ValueFinding run() && {
    const std::optional<Number>& right = question_.right;
    if (right && agrees(written_, *right)) {
      found_.verdict = written_.number == *right ? ValueVerdict::exact : ValueVerdict::rounded;
      return std::move(found_);
    }
    found_.routes = question_.routes();
    if (on_own_numbers() || within_rounding()) return std::move(found_);
    if (right && is_cut_off(written_, *right)) {
      found_.verdict = ValueVerdict::cut_off;
    } else if (!right && found_.routes.empty()) {
      found_.verdict = ValueVerdict::cannot_tell;
    } else {
      found_.verdict = ValueVerdict::wrong;
    }
    return std::move(found_);
  }

 private:
  // With the sign that the true value has, or that is written where nobody knows better.
  [[nodiscard]] Number signed_as_meant(const Number& value) const {
    const bool negative = question_.right && !question_.right->is_symbolic()
                              ? question_.right->is_negative()
                              : written_.number.is_negative();
    if (!question_.any_sign) return value;
    return negative ? -abs(value) : abs(value);
  }

  [[nodiscard]] bool uses_wrong_value(const Route& route) const {
    return book_.rests_on_wrong(route.claims);
  }

  [[nodiscard]] std::vector<std::size_t> those(const Route& route, bool wrong) const {
    std::vector<std::size_t> claims;
    for (const std::size_t claim : route.claims) {
      const Quality quality = book_.quality(claim);
      if (wrong ? !quality.is_right : !quality.is_exact) claims.push_back(claim);
    }
    std::sort(claims.begin(), claims.end());
    claims.erase(std::unique(claims.begin(), claims.end()), claims.end());
    return claims;
  }

  void rests_on(const Route& route, ValueVerdict verdict) {
    found_.verdict = verdict;
    found_.own = signed_as_meant(route.value);
    found_.caused_by = those(route, verdict == ValueVerdict::on_own);
  }

  // Without a true value (after a wrong step) everything rests on the person's own numbers.
  [[nodiscard]] ValueVerdict verdict_for(const Route& route, ValueVerdict by_rounding) const {
    return !question_.right || uses_wrong_value(route) ? ValueVerdict::on_own : by_rounding;
  }

  bool on_own_numbers() {
    const Route* best = nullptr;
    for (const Route& route : found_.routes) {
      if (!agrees(written_, signed_as_meant(route.value))) continue;
      // Rounded numbers are the better explanation than wrong ones.
      if (best == nullptr || (uses_wrong_value(*best) && !uses_wrong_value(route))) best = &route;
    }
    if (best == nullptr) return false;
    rests_on(*best, verdict_for(*best, ValueVerdict::rounded_early));
    return true;
  }

  [[nodiscard]] bool is_narrow(const Range& range) const {
    const Number width = range.high - range.low;
    const Number size = abs(range.high + range.low) / 2;
    return width * kNarrow <= size;
  }

  bool within_rounding() {
    if (!is_precise(written_, kFewestFigures) || written_.number.is_symbolic()) return false;
    Range meant = range_of(written_);
    for (const Route& route : found_.routes) {
      if (route.value.is_symbolic() || route.range.is_point() || !is_narrow(route.range)) continue;
      const bool turned = signed_as_meant(route.value) != route.value;
      const Range range = turned ? Range{-route.range.high, -route.range.low} : route.range;
      if (!range.meets(meant)) continue;
      rests_on(route, verdict_for(route, ValueVerdict::within_rounding));
      return true;
    }
    return false;
  }

  const CaseBook& book_;
  const ValueQuestion& question_;
  WrittenValue written_;
  ValueFinding found_;
};

}  // namespace

ValueFinding judge_value(const CaseBook& book, const ValueQuestion& question) {
  return ValueJudge(book, question).run();
}

std::vector<std::size_t> wrong_claims_passed(const CaseBook& book, const WrittenValue& written,
                                             const std::vector<Route>& routes) {
  std::vector<std::size_t> wrong;
  for (const Route& route : routes) {
    std::vector<std::size_t> here;
    std::copy_if(route.claims.begin(), route.claims.end(), std::back_inserter(here),
                 [&](std::size_t claim) { return !book.quality(claim).is_right; });
    const bool leads = agrees(written, route.value) || agrees(negated(written), route.value);
    if (here.empty() || leads) return {};
    if (wrong.empty()) wrong = std::move(here);
  }
  return wrong;
}

Quality quality_of(ValueVerdict verdict) {
  switch (verdict) {
    case ValueVerdict::none:
    case ValueVerdict::exact:
      return {true, true};
    case ValueVerdict::rounded:
    case ValueVerdict::within_rounding:
    case ValueVerdict::rounded_early:
      return {false, true};
    case ValueVerdict::on_own:
    case ValueVerdict::cut_off:
    case ValueVerdict::wrong:
    case ValueVerdict::cannot_tell:
      break;
  }
  return {false, false};
}

}  // namespace ohmfold
