// The working of steps beyond series and parallel.
#include "views/rewriting_lines.h"

#include <algorithm>

#include "views/amounts.h"

namespace ohmfold::views {

namespace {

using Parts = std::vector<PartId>;

/// A product or a sum in symbols and in numbers.
struct Side {
  Expression symbols, values;
};

class Rewriting {
 public:
  Rewriting(const Scene& scene, const Step& step) : scene_(scene), step_(step) {}

  Equation line(std::size_t at) const {
    const PartId made{step_.makes.index + static_cast<std::uint32_t>(at)};
    Equation line{scene_.symbols.value(made), {}, {}};
    for (const bool values : {false, true}) {
      Expression right = formula(step_.adds[at], values);
      if (values && has_unwritten_amount(right)) continue;
      line.links.push_back({Relation::equal, std::move(right)});
    }
    append_value(line, scene_.resistance(made), scene_.figures);
    return line;
  }

 private:
  [[nodiscard]] Expression value(PartId part, bool values) const {
    return values ? scene_.put_in(scene_.resistance(part)) : scene_.symbols.value(part);
  }

  /// The parts taken that end at this point.
  [[nodiscard]] Parts taken_at(PointId point) const {
    Parts parts;
    for (const PartId part : step_.takes) {
      const Network& end = scene_.reduction.end;
      if (end.from(part) == point || end.to(part) == point) parts.push_back(part);
    }
    return parts;
  }

  [[nodiscard]] Expression formula(const NewPart& made, bool values) const {
    std::vector<Expression> all;
    for (const PartId part : step_.takes) all.push_back(value(part, values));
    if (step_.formula == Formula::star_arm) {
      const Parts sides = taken_at(made.from);
      return quotient(product(value(sides[0], values), value(sides[1], values)),
                      sum(std::move(all)));
    }
    const PartId one = taken_at(made.from).front();
    const PartId two = taken_at(made.to).front();
    if (step_.formula == Formula::delta_side) {
      const Expression products =
          sum({product(all[0], all[1]), product(all[1], all[2]), product(all[2], all[0])});
      const auto third = std::find_if(step_.takes.begin(), step_.takes.end(),
                                      [&](PartId part) { return part != one && part != two; });
      return quotient(products, value(*third, values));
    }
    for (Expression& arm : all) arm = reciprocal(std::move(arm));
    return product(product(value(one, values), value(two, values)), sum(std::move(all)));
  }

  const Scene& scene_;
  const Step& step_;
};

Equation ratio(const Scene& scene, PartId near, PartId far) {
  Equation line{quotient(scene.symbols.value(near), scene.symbols.value(far)), {}, {}};
  const Quantity above = scene.resistance(near);
  const Quantity below = scene.resistance(far);
  Expression values = quotient(scene.put_in(above), scene.put_in(below));
  if (has_unwritten_amount(values)) return line;
  line.links.push_back({Relation::equal, std::move(values)});
  line.links.push_back({Relation::equal, {Count{above.number / below.number}}});
  return line;
}

}  // namespace

std::vector<Equation> rewriting_lines(const Scene& scene, const Step& step) {
  const Rewriting rewriting(scene, step);
  std::vector<Equation> lines;
  for (std::size_t i = 0; i < std::min(step.adds.size(), kMostTerms); ++i) {
    lines.push_back(rewriting.line(i));
  }
  return lines;
}

std::vector<Equation> balance_lines(const Scene& scene, const Step& step) {
  std::vector<Equation> lines;
  for (const Fact& fact : step.why) {
    const auto* balanced = std::get_if<Balanced>(&fact);
    if (balanced == nullptr || lines.size() + 2 > kMostTerms) continue;
    lines.push_back(ratio(scene, balanced->first_near, balanced->first_far));
    lines.push_back(ratio(scene, balanced->second_near, balanced->second_far));
  }
  return lines;
}

}  // namespace ohmfold::views
