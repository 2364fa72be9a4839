// The sums behind some checks, written out.
#include "views/check_sums.h"

#include <algorithm>

#include "views/amounts.h"

namespace ohmfold::views {

namespace {

const BranchResult* branch(const CaseTrace& trace, PartId part) {
  return part.index < trace.branches.size() ? &trace.branches[part.index] : nullptr;
}

/// Is there room for a sum of these values, where some have symbols?
bool fits(const Scene& scene, const std::vector<Quantity>& values) {
  constexpr std::size_t kMostLetters = 68;
  std::size_t letters = 0;
  bool symbols = false;
  for (const Quantity& value : values) {
    if (is_too_long_to_show(value.number)) return false;
    symbols = symbols || value.number.is_symbolic();
    letters += amount_text(scene.amount(value, Form::exact), Letters::ascii).size() + 3;
  }
  return !symbols || letters <= kMostLetters;
}

/// "left = right", each a sum; the entries from `split` on stand on the right.
std::optional<Equation> balance(const Scene& scene, const std::vector<Quantity>& values,
                                std::size_t split, Words note) {
  if (!fits(scene, values)) return std::nullopt;
  std::vector<Expression> left = scene.put_in(values);
  std::vector<Expression> right(left.begin() + static_cast<std::ptrdiff_t>(split), left.end());
  left.resize(split);
  if (left.empty() || right.empty()) return std::nullopt;
  Equation line{sum(std::move(left)), {{Relation::equal, sum(std::move(right))}}, std::move(note)};
  if (has_unwritten_amount(line.left) || has_unwritten_amount(line.links.front().right)) {
    return std::nullopt;
  }
  return line;
}

std::optional<Equation> balance(const Scene& scene, std::vector<Quantity> left,
                                const std::vector<Quantity>& right, Words note) {
  const std::size_t split = left.size();
  left.insert(left.end(), right.begin(), right.end());
  return balance(scene, left, split, std::move(note));
}

}  // namespace

std::optional<Equation> current_sum(const Scene& scene, const CaseTrace& trace, PointId point) {
  const Network& start = scene.reduction.start;
  std::vector<PartId> parts;
  start.for_each_at(point, [&](PartId part) { parts.push_back(part); });
  if (parts.size() > kMostTerms) return std::nullopt;
  std::sort(parts.begin(), parts.end());
  std::vector<Quantity> in, out;
  for (const PartId part : parts) {
    const BranchResult* result = branch(trace, part);
    if (result == nullptr || start.from(part) == start.to(part)) continue;
    if (!result->current.value) return std::nullopt;
    const Number& number = result->current.value->number;
    if (number.is_zero()) continue;
    const bool leaves = (start.from(part) == point) != number.is_negative();
    (leaves ? out : in).emplace_back(abs(number), Unit::ampere);
  }
  if (in.size() + out.size() < 3) return std::nullopt;
  return balance(scene, std::move(in), out, say("in = out at ", scene.words.point(point)));
}

std::optional<Equation> loop_sum(const Scene& scene, const CaseTrace& trace,
                                 std::span<const PartId> loop) {
  const Network& start = scene.reduction.start;
  if (loop.size() < 3 || loop.size() > kMostTerms) return std::nullopt;
  // The walk begins with a battery and runs through it from − to +.
  std::vector<PartId> walk(loop.begin(), loop.end());
  const auto source = std::find_if(walk.begin(), walk.end(), [&](PartId part) {
    return start.kind(part) == ElementKind::battery;
  });
  if (source == walk.end()) return std::nullopt;
  std::rotate(walk.begin(), source, walk.end());
  const auto ends_on = [&](PartId part, PointId point) {
    return start.from(part) == point || start.to(part) == point;
  };
  PointId at = start.from(walk.front());
  if (!ends_on(walk.back(), at)) std::reverse(walk.begin() + 1, walk.end());
  std::vector<Quantity> sizes;
  std::vector<bool> falls;
  Number total(0);
  for (const PartId part : walk) {
    const BranchResult* result = branch(trace, part);
    if (result == nullptr || !result->voltage.value || !ends_on(part, at)) return std::nullopt;
    const bool rises = (start.from(part) == at) == is_source(start.kind(part));
    if (is_too_long_to_show(result->voltage.value->number)) return std::nullopt;
    const Number gain = rises ? result->voltage.value->number : -result->voltage.value->number;
    at = start.across(part, at);
    total += gain;
    if (gain.is_zero()) continue;
    sizes.emplace_back(abs(gain), Unit::volt);
    falls.push_back(gain.is_negative());
  }
  if (!total.is_zero() || sizes.size() < 3 || !fits(scene, sizes)) return std::nullopt;
  std::vector<Expression> terms = scene.put_in(sizes);
  for (std::size_t i = 0; i < terms.size(); ++i) {
    if (falls[i]) terms[i] = negative(std::move(terms[i]));
  }
  Equation line{sum(std::move(terms)), {}, say("round ", scene.words.parts(walk, 8))};
  line.links.push_back({Relation::equal, {scene.amount({Number(0), Unit::volt}, Form::exact)}});
  if (has_unwritten_amount(line.left)) return std::nullopt;
  return line;
}

std::optional<Equation> power_sum(const Scene& scene, const CaseTrace& trace) {
  std::vector<Quantity> delivered, taken;
  for (const BranchResult& result : trace.branches) {
    if (!result.power.value || delivered.size() + taken.size() > kMostTerms) return std::nullopt;
    const Number& number = result.power.value->number;
    if (number.is_zero()) continue;
    const bool gives =
        scene.reduction.start.kind(result.part) == ElementKind::battery && !number.is_negative();
    (gives ? delivered : taken).emplace_back(abs(number), Unit::watt);
  }
  return balance(scene, std::move(delivered), taken, {});
}

}  // namespace ohmfold::views
