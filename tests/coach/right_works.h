// Right works on solved problems: combinations in the engine's order or in another, then values.
#pragma once

#include <algorithm>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "coach/problem_files.h"
#include "support/walk.h"

namespace ohmfold::test {

/// In which order the work combines.
enum class Order { of_the_engine, from_the_end_in_pairs, at_random };

/// Writes what a person could write who makes no mistake, for one case.
class RightWork {
 public:
  RightWork(const Exercise& exercise, std::size_t case_index, Order order, std::uint64_t seed)
      : problem_(*exercise.problem),
        solved_(exercise.trace.cases[case_index]),
        order_(order),
        random_(seed) {
    add_family(solved_.main);
    for (const Reduction& further : solved_.further) add_family(further);
  }

  std::string run() && {
    if (order_ == Order::of_the_engine) follow_engine();
    for (std::size_t i = order_ == Order::of_the_engine ? 1 : 0; i < families_.size(); ++i) {
      walk(i);
    }
    if (order_ != Order::of_the_engine && is_left_with_several(families_.front().network)) {
      lines_.push_back("no series or parallel pair left");
    }
    std::vector<std::string> values = values_of_branches();
    for (const Answer& answer : solved_.answers) add_answer(answer, values);
    if (order_ != Order::of_the_engine) {
      for (std::size_t i = values.size(); i > 1; --i) {
        std::swap(values[i - 1], values[random_.below(i)]);
      }
    }
    lines_.insert(lines_.end(), values.begin(), values.end());
    std::string text;
    for (const std::string& line : lines_) text += line + "\n";
    return text;
  }

 private:
  struct Family {
    Network network;
    std::vector<std::string> names;  // by PartId
  };

  void add_family(const Reduction& reduction) {
    if (reduction.start.point_count() == 0) return;
    Family family{cleaned(reduction), {}};
    family.names.resize(family.network.part_count());
    for (std::size_t i = 0; i < problem_.parts.size(); ++i) {
      family.names[i] = problem_.parts[i].name;
    }
    families_.push_back(std::move(family));
  }

  static std::string text_of(const Number& value, const char* unit) {
    return value.to_string() + " " + unit;
  }

  // --- reducing ----------------------------------------------------------------------------------
  // Makes the step wherever it may be made, and writes it down.
  void combine(Joining how, const std::vector<std::string>& operands) {
    const Rule& law = rule(how == Joining::series ? RuleName::series : RuleName::parallel);
    const std::string name = "Y" + std::to_string(++made_);
    std::optional<Number> value;
    for (Family& family : families_) {
      Place place;
      for (const std::string& operand : operands) {
        for (std::uint32_t i = 0; i < family.names.size(); ++i) {
          const bool lives = family.network.is_alive(PartId{i});
          if (family.names[i] == operand && lives) place.parts.push_back(PartId{i});
        }
      }
      if (place.parts.size() != operands.size() || !law.judge(family.network, place).allowed) {
        continue;
      }
      const PartId part = family.network.commit(law.apply(family.network, place));
      family.names.resize(family.network.part_count());
      family.names[part.index] = name;
      value = family.network.resistance(part).lowest_terms();
    }
    ASSERT_TRUE(value.has_value());
    std::string line = name + " =";
    for (const std::string& operand : operands) {
      if (&operand != &operands.front()) line += how == Joining::series ? " +" : " ||";
      line += " " + operand;
    }
    lines_.push_back(line + " = " + text_of(*value, "ohm"));
  }

  [[nodiscard]] std::vector<std::string> names_of(const Family& family,
                                                  const std::vector<PartId>& parts) const {
    std::vector<std::string> names;
    for (const PartId part : parts) names.push_back(family.names.at(part.index));
    return names;
  }

  void walk(std::size_t index) {
    while (true) {
      const Family& family = families_[index];
      std::vector<std::pair<Joining, Place>> places;
      for (const auto& [how, name] : {std::pair(Joining::series, RuleName::series),
                                      std::pair(Joining::parallel, RuleName::parallel)}) {
        for (Place& place : rule(name).find(family.network, whole(family.network))) {
          places.emplace_back(how, std::move(place));
        }
      }
      if (places.empty()) return;
      const bool random = order_ == Order::at_random;
      const auto& [how, place] = places[random ? random_.below(places.size()) : places.size() - 1];
      std::vector<PartId> parts = place.parts;
      if (order_ != Order::of_the_engine) {
        parts.erase(parts.begin(), parts.end() - 2);
        std::reverse(parts.begin(), parts.end());
      }
      combine(how, names_of(family, parts));
    }
  }

  // The engine's own steps, as far as a work can say them.
  void follow_engine() {
    if (families_.empty()) return;
    const Reduction& main = solved_.main;
    std::vector<std::string> names = families_.front().names;
    names.resize(main.end.part_count());
    std::vector<std::string> points = problem_.points;
    points.resize(main.end.point_count());
    for (std::size_t i = 0; i < main.steps.size(); ++i) {
      const Step step = main.steps[i];
      if (main.choice.made && i == main.choice.after && main.left.size() != 2) {
        lines_.push_back("no series or parallel pair left");
      }
      if (rule(step.rule).tier == Tier::clean_up) continue;
      if (step.rule == RuleName::series || step.rule == RuleName::parallel) {
        std::vector<std::string> operands;
        for (const PartId part : step.takes) operands.push_back(names.at(part.index));
        if (std::count(operands.begin(), operands.end(), "") > 0) return;
        combine(step.rule == RuleName::series ? Joining::series : Joining::parallel, operands);
        names.at(step.makes.index) = "Y" + std::to_string(made_);
      } else if (step.rule == RuleName::equal_potentials) {
        for (const PointId point : step.merges) {
          if (point == step.merges.front()) continue;
          lines_.push_back(points.at(step.merges.front().index) + " and " + points.at(point.index) +
                           " at the same potential");
        }
        for (const PartId part : step.takes) {
          lines_.push_back("no current through " + names.at(part.index));
        }
        families_.front().network = replay(main, i + 1);
      } else if (step.rule == RuleName::delta_star || step.rule == RuleName::star_delta) {
        rewrite(step, replay(main, i), names, points);
        families_.front() = {replay(main, i + 1), names};
        families_.front().names.resize(families_.front().network.part_count());
      } else {
        return;
      }
    }
  }

  // The k-th part that comes is the one that does not meet the k-th that goes; for an arm, its
  // outer end.
  void rewrite(const Step& step, const Network& before, std::vector<std::string>& names,
               std::vector<std::string>& points) {
    const bool to_star = step.rule == RuleName::delta_star;
    std::string takes, makes, values;
    for (const PartId taken : step.takes) {
      takes += names.at(taken.index) + " ";
      for (std::uint32_t k = 0; k < step.adds.size(); ++k) {
        const NewPart& added = step.adds[k];
        const PointId outer = to_star ? PointId{} : before.across(taken, step.first);
        const auto meets = [&](PointId end) {
          return to_star ? before.from(taken) == end || before.to(taken) == end : outer == end;
        };
        if (meets(added.from) || meets(added.to)) continue;
        std::string& name = names.at(step.makes.index + k);
        name = "Y" + std::to_string(++made_);
        makes += name + " ";
        values += (values.empty() ? "" : ", ") + added.resistance.lowest_terms().to_string();
      }
    }
    std::string line =
        takes + (to_star ? "in delta" : "in star") + " make " + makes + "= " + values + " ohm";
    if (to_star) {
      const std::size_t middle = before.point_count();
      points.at(middle) = "M" + std::to_string(middle);
      line += " meeting at " + points.at(middle);
    }
    lines_.push_back(line);
  }

  static bool is_left_with_several(const Network& network) {
    std::size_t resistors = 0;
    for (std::uint32_t i = 0; i < network.part_count(); ++i) {
      if (network.is_alive(PartId{i}) && network.kind(PartId{i}) == ElementKind::resistor) {
        ++resistors;
      }
    }
    return resistors > 1;
  }

  // --- values ------------------------------------------------------------------------------------
  static void add_value(const std::string& claim, const Reading& reading, const char* unit,
                        std::vector<std::string>& values) {
    if (reading.value) values.push_back(claim + " = " + text_of(reading.value->number, unit));
  }

  [[nodiscard]] std::vector<std::string> values_of_branches() const {
    std::vector<std::string> values;
    for (std::size_t i = 0; i < solved_.branches.size() && i < problem_.parts.size(); ++i) {
      const std::string& name = problem_.parts[i].name;
      if (!can_be_named(name)) continue;
      add_value("current through " + name, solved_.branches[i].current, "A", values);
      add_value("voltage across " + name, solved_.branches[i].voltage, "V", values);
      add_value("power in " + name, solved_.branches[i].power, "W", values);
    }
    for (std::size_t i = 0; i < solved_.nodes.size() && i < problem_.points.size(); ++i) {
      add_value("potential at " + problem_.points[i], solved_.nodes[i].potential, "V", values);
    }
    return values;
  }

  void add_answer(const Answer& answer, std::vector<std::string>& values) const {
    std::string claim = to_string(answer.question, problem_);
    const std::string unit(symbol(unit_of(answer.question, problem_), Letters::ascii));
    if (const auto* asked = std::get_if<TheveninBetween>(&answer.question)) {
      const std::string ends = problem_.point(asked->from) + (answer.thevenin ? " to " : " and ") +
                               problem_.point(asked->to);
      if (!answer.thevenin) return;
      add_value("voltage from " + ends, answer.thevenin->voltage, "V", values);
      add_value(
          "resistance between " + problem_.point(asked->from) + " and " + problem_.point(asked->to),
          answer.thevenin->resistance, "ohm", values);
      return;
    }
    if (answer.irrational) {
      const Number near = rounding_like(*answer.irrational, 6);
      values.push_back(claim + " = " + round_to_figures(near, 6) + " " + unit);
      return;
    }
    if (!can_be_named(claim.substr(claim.rfind(' ') + 1)) || claim.find("wire ") < claim.size()) {
      return;
    }
    add_value(claim, answer.value, unit.c_str(), values);
  }

  const Problem& problem_;
  const CaseTrace& solved_;
  Order order_;
  support::RandomCircuits random_;
  std::vector<Family> families_;
  std::vector<std::string> lines_;
  std::size_t made_ = 0;
};

/// A right work on all cases of the problem.
inline std::string right_work(const Exercise& exercise, Order order, std::uint64_t seed = 1) {
  std::string text;
  for (std::size_t i = 0; i < exercise.trace.cases.size(); ++i) {
    const CaseTrace& solved = exercise.trace.cases[i];
    if (!solved.name.empty()) text += "case \"" + solved.name + "\"\n";
    if (!solved.contradiction) text += RightWork(exercise, i, order, seed + i).run();
  }
  return text;
}

}  // namespace ohmfold::test
