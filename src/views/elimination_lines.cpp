// Each recorded equation is a line of working; its note says where it comes from.
#include "views/elimination_lines.h"

#include <algorithm>

namespace ohmfold::views {

namespace {

class Lines {
 public:
  Lines(const Scene& scene, const NodeElimination& elimination)
      : scene_(scene), written_(elimination) {}

  void add_to(Document& document) const {
    std::vector<Equation> fixed = fixed_lines();
    const bool some_fixed = !fixed.empty();
    if (some_fixed) {
      document.paragraph(say("One unknown will do for points that are taken together:"));
      document.working(std::move(fixed));
    }
    const Words each = say(written_.unknowns.size() == 1 ? "" : "each equation ",
                           "multiplied so that no fraction is left, and sorted:");
    document.paragraph(some_fixed ? say("With that put in, ", each) : each.capitalised());
    document.working(of(EquationOrigin::current_law, {}));
    for (const PointId unknown : written_.unknowns) {
      std::vector<Equation> lines = of(EquationOrigin::combined, unknown);
      if (lines.empty()) continue;
      document.paragraph(
          say("Eliminate ", symbol(unknown), " with the help of ", label(pivot_of(unknown)), ":"));
      document.working(std::move(lines));
    }
    document.paragraph(
        say(written_.unknowns.size() == 1 ? "So:" : "Back from the last equation to the first:"));
    document.working(of(EquationOrigin::solved, {}));
  }

  [[nodiscard]] bool are_short() const {
    return std::none_of(
        written_.equations.begin(), written_.equations.end(), [&](const PotentialEquation& one) {
          const Equation line = line_of(one);
          return has_unwritten_amount(line.left) ||
                 std::any_of(line.links.begin(), line.links.end(),
                             [](const Link& link) { return has_unwritten_amount(link.right); });
        });
  }

 private:
  [[nodiscard]] Run symbol(PointId point) const {
    return std::get<Symbol>(scene_.symbols.potential(point).node);
  }

  /// "(2')"
  [[nodiscard]] static std::string label(const PotentialEquation& equation) {
    return "(" + number(equation) + ")";
  }
  [[nodiscard]] static std::string number(const PotentialEquation& equation) {
    return std::to_string(equation.number) + std::string(equation.times, '\'');
  }

  [[nodiscard]] const PotentialEquation& pivot_of(PointId unknown) const {
    const auto at = std::find_if(
        written_.equations.begin(), written_.equations.end(), [&](const PotentialEquation& one) {
          return one.origin == EquationOrigin::combined && one.unknown == unknown;
        });
    return written_.equations[at->from.back().equation];
  }

  [[nodiscard]] std::vector<Equation> of(EquationOrigin origin, PointId unknown) const {
    std::vector<Equation> lines;
    for (const PotentialEquation& one : written_.equations) {
      const bool fits = !unknown.exists() || one.unknown == unknown;
      if (one.origin == origin && fits) lines.push_back(line_of(one));
    }
    return lines;
  }

  /// "V_B = V_A + 4 V" for each point whose potential ideal batteries fix against an unknown one.
  [[nodiscard]] std::vector<Equation> fixed_lines() const {
    std::vector<Equation> lines;
    for (const FixedPotential& fixed : written_.fixed) {
      if (fixed.base == written_.ground) continue;
      const Expression rise = scene_.put_in(Voltage{abs(fixed.rise.number)});
      const bool falls = fixed.rise.number.is_negative();
      Expression right = sum({scene_.symbols.potential(fixed.base), falls ? negative(rise) : rise});
      lines.push_back(
          {scene_.symbols.potential(fixed.point), {{Relation::equal, std::move(right)}}, {}});
    }
    return lines;
  }

  [[nodiscard]] Equation line_of(const PotentialEquation& equation) const {
    if (equation.origin == EquationOrigin::solved) return solved_line(equation);
    std::vector<Expression> terms;
    for (const PotentialTerm& term : equation.terms) {
      terms.push_back(times(term.coefficient, scene_.symbols.potential(term.point)));
    }
    Equation line{sum(std::move(terms)), {{Relation::equal, scene_.put_in(equation.constant)}}, {}};
    Words note = say(
        number(equation), ": ",
        equation.origin == EquationOrigin::current_law ? law_words(equation) : sum_words(equation));
    if (equation.divisor != Number(1)) note.add(", divided by " + equation.divisor.to_string());
    line.note = std::move(note);
    return line;
  }

  [[nodiscard]] static Expression times(const Number& factor, Expression of) {
    const Number size = abs(factor);
    Expression product_of =
        size == Number(1) ? std::move(of) : product({Count{size}}, std::move(of));
    return factor.is_negative() ? negative(std::move(product_of)) : product_of;
  }

  [[nodiscard]] Words law_words(const PotentialEquation& law) const {
    std::vector<Words> points;
    for (const PointId point : law.points) points.push_back(say(scene_.words.point(point)));
    return say("at ", listed(points), ", times ",
               scene_.amount({law.factor, Unit::ohm}, Form::exact));
  }

  /// "5 times (2) plus (1)"
  [[nodiscard]] Words sum_words(const PotentialEquation& equation) const {
    Words words;
    for (const EquationShare& share : equation.from) {
      const Number size = abs(share.factor);
      if (!words.empty()) words.add(share.factor.is_negative() ? " minus " : " plus ");
      if (size != Number(1)) words.add(size.to_string() + " times ");
      words.add(label(written_.equations[share.equation]));
    }
    return words;
  }

  /// "V_A = (72 V + 8 · 6 V) / 15 = 8 V"
  [[nodiscard]] Equation solved_line(const PotentialEquation& equation) const {
    Equation line{scene_.symbols.potential(equation.unknown), {}, {}};
    const PotentialEquation& solved = written_.equations[equation.from.front().equation];
    std::vector<Expression> terms;
    if (equation.from.size() == 1 || !solved.constant.is_zero()) {
      terms.push_back(scene_.put_in(solved.constant));
    }
    for (std::size_t i = 1; i < equation.from.size(); ++i) {
      const EquationShare& share = equation.from[i];
      terms.push_back(
          times(share.factor, scene_.put_in(written_.equations[share.equation].constant)));
    }
    const bool is_plain = terms.size() == 1 && equation.from.size() == 1;
    const bool is_divided = equation.divisor != Number(1);
    if (is_divided) {
      line.links.push_back(
          {Relation::equal, quotient(sum(std::move(terms)), {Count{equation.divisor}})});
    } else if (!is_plain) {
      line.links.push_back({Relation::equal, sum(std::move(terms))});
    }
    append_value(line, equation.constant, scene_.figures);
    line.note = say("from ", number(solved));
    return line;
  }

  const Scene& scene_;
  const NodeElimination& written_;
};

}  // namespace

bool is_written_out(const Scene& scene, const NodeElimination& elimination) {
  return !elimination.equations.empty() && Lines(scene, elimination).are_short();
}

void add_elimination(const Scene& scene, const NodeElimination& elimination, Document& document) {
  Lines(scene, elimination).add_to(document);
}

}  // namespace ohmfold::views
