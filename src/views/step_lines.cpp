// The working of one step.
#include "views/step_lines.h"

#include <algorithm>
#include <unordered_map>

#include "ohmfold/symbolic.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

/// A common denominator of more digits than this helps nobody.
constexpr std::size_t kMostCommonDigits = 8;

bool any_too_long(const std::vector<Quantity>& values) {
  return std::any_of(values.begin(), values.end(),
                     [](const Quantity& value) { return is_too_long_to_show(value.number); });
}

std::vector<Quantity> taken_values(const Scene& scene, const Step& step) {
  std::vector<Quantity> values;
  for (const PartId part : step.takes) values.push_back(scene.resistance(part));
  return values;
}

Expression listed_sum(const Scene& scene, const Step& step) {
  std::vector<Expression> terms;
  for (const PartId part : step.takes) terms.push_back(scene.symbols.value(part));
  return sum(std::move(terms));
}

/// The largest value, or the smallest; nothing where that depends on symbols.
const Quantity* extreme(const std::vector<Quantity>& values, bool largest) {
  const auto is_extreme = [&](const Quantity& one) {
    return std::all_of(values.begin(), values.end(), [&](const Quantity& other) {
      return largest ? one.number >= other.number : one.number <= other.number;
    });
  };
  const auto at = std::find_if(values.begin(), values.end(), is_extreme);
  return at == values.end() ? nullptr : &*at;
}

Words size_check(const Scene& scene, const Step& step, const std::vector<Quantity>& values) {
  const bool series = step.formula == Formula::sum;
  const Quantity* found = values.size() <= kMostTerms || !values.front().number.is_symbolic()
                              ? extreme(values, series)
                              : nullptr;
  if (found == nullptr) return {};
  const Quantity& bound = *found;
  const bool two = values.size() == 2;
  const bool alike = std::all_of(values.begin(), values.end(),
                                 [&](const Quantity& value) { return value == bound; });
  if (alike) {
    return say(series ? "more than each, " : "less than each, ", scene.brief(bound));
  }
  return say(series ? "more than the larg" : "less than the small", two ? "er, " : "est, ",
             scene.brief(bound));
}

std::vector<Equation> series_lines(const Scene& scene, const Step& step,
                                   const std::vector<Quantity>& values) {
  Equation line{scene.symbols.value(step.makes), {{Relation::equal, listed_sum(scene, step)}}, {}};
  if (!any_too_long(values)) {
    line.links.push_back({Relation::equal, sum(scene.put_in(values))});
    line.note = size_check(scene, step, values);
  }
  append_value(line, scene.resistance(step.makes), scene.figures);
  return {line};
}

/// "3/(18 Ω)": the sum of reciprocals over the least common denominator of whole resistances.
std::optional<Expression> over_common(const std::vector<Quantity>& values) {
  cln::cl_I common = 1;
  for (const Quantity& value : values) {
    if (!value.number.is_integer()) return std::nullopt;
    common = cln::lcm(common, value.number.numerator());
    if (digit_estimate(Number::quotient(common, 1)) > kMostCommonDigits) return std::nullopt;
  }
  const Number denominator = Number::quotient(common, 1);
  Number above(0);
  for (const Quantity& value : values) above += denominator / value.number;
  return quotient({Count{above}}, {Amount{{denominator, Unit::ohm}, Form::exact}});
}

std::vector<Equation> parallel_lines(const Scene& scene, const Step& step,
                                     const std::vector<Quantity>& values) {
  const Quantity made = scene.resistance(step.makes);
  std::vector<Expression> symbols, numbers;
  for (const PartId part : step.takes) symbols.push_back(reciprocal(scene.symbols.value(part)));
  Equation first{reciprocal(scene.symbols.value(step.makes)),
                 {{Relation::equal, sum(std::move(symbols))}},
                 {}};
  Equation second{scene.symbols.value(step.makes), {}, {}};
  append_value(second, made, scene.figures);
  if (any_too_long(values)) return {first, second};

  for (Expression& value : scene.put_in(values)) numbers.push_back(reciprocal(std::move(value)));
  first.links.push_back({Relation::equal, sum(std::move(numbers))});
  const auto common = over_common(values);
  if (common) first.links.push_back({Relation::equal, *common});
  const Expression lowest = quotient({Count{denominator_of(made.number)}},
                                     {Amount{{numerator_of(made.number), Unit::ohm}, Form::exact}});
  const bool same =
      common && formula_text(*common, Letters::ascii) == formula_text(lowest, Letters::ascii);
  if (!same && !is_too_long_to_show(made.number)) {
    first.links.push_back({Relation::equal, lowest});
  }
  second.note = size_check(scene, step, values);
  return {first, second};
}

/// Puts `term` among the terms, or its own terms where it is of the same kind.
template <class Kind>
void splice(std::vector<Expression>& terms, const Expression& term) {
  if (const auto* same = std::get_if<Kind>(&term.node)) {
    terms.insert(terms.end(), same->terms.begin(), same->terms.end());
  } else {
    terms.push_back(term);
  }
}

}  // namespace

std::optional<Expression> combination(const Scene& scene, const Step& step) {
  switch (step.formula) {
    case Formula::none:
      return std::nullopt;
    case Formula::sum:
      return listed_sum(scene, step);
    case Formula::reciprocal_sum: {
      std::vector<Expression> terms;
      for (const PartId part : step.takes) terms.push_back(scene.symbols.value(part));
      return in_parallel(std::move(terms));
    }
  }
  return std::nullopt;
}

std::vector<Equation> step_lines(const Scene& scene, const Step& step) {
  switch (step.formula) {
    case Formula::none:
      return {};
    case Formula::sum:
      return series_lines(scene, step, taken_values(scene, step));
    case Formula::reciprocal_sum:
      return parallel_lines(scene, step, taken_values(scene, step));
  }
  return {};
}

std::optional<Expression> structure(const Scene& scene) {
  const Reduction& reduction = scene.reduction;
  if (reduction.stop != Stop::reduced || reduction.steps.size() > kMostTerms) return std::nullopt;
  std::unordered_map<std::uint32_t, Expression> made;
  std::size_t parts = 0;
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    const Step step = reduction.steps[i];
    if (!step.makes.exists()) continue;
    std::vector<Expression> terms;
    for (const PartId part : step.takes) {
      const auto at = made.find(part.index);
      if (at == made.end() && ++parts > kMostTerms) return std::nullopt;
      const Expression term = at == made.end() ? scene.symbols.value(part) : at->second;
      if (step.formula == Formula::sum) {
        splice<Sum>(terms, term);
      } else {
        splice<InParallel>(terms, term);
      }
    }
    made[step.makes.index] =
        step.formula == Formula::sum ? sum(std::move(terms)) : in_parallel(std::move(terms));
  }
  const auto root = made.find(reduction.root.index);
  return root == made.end() ? std::nullopt : std::optional(root->second);
}

}  // namespace ohmfold::views
