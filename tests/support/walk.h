// Right reductions of series-parallel networks in any order, and the way back, as lines of a
// person's work.
#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <utility>
#include <vector>

#include "ohmfold/rule.h"
#include "ohmfold/trace.h"
#include "support/notebook.h"
#include "support/random_network.h"

namespace ohmfold::support {

/// A step of a reduction: parts by name.
struct Made {
  Joining how = Joining::series;
  std::vector<std::string> operands;
  std::string name;
  bool within = false;  ///< written only within the step that uses it: it has no name there
};

/// Do all these parts carry one current? Without the first of them, no closed path runs through any
/// of the others. Found by looking for the ends of each from the other, for small networks only.
inline bool carry_one_current(const Network& network, PartId first, PartId second) {
  const auto joined = [&](bool without_first) {
    std::vector<PointId> reached{network.from(second)};
    for (std::size_t i = 0; i < reached.size(); ++i) {
      network.for_each_at(reached[i], [&](PartId part) {
        if (part == second || (without_first && part == first)) return;
        const PointId next = network.across(part, reached[i]);
        if (std::find(reached.begin(), reached.end(), next) == reached.end()) {
          reached.push_back(next);
        }
      });
    }
    return std::find(reached.begin(), reached.end(), network.to(second)) != reached.end();
  };
  return joined(false) && !joined(true);
}

/// Reduces a network step by step, each drawn at random from all that may be done.
class Walk {
 public:
  Walk(RandomCircuits& random, Network network, std::vector<std::string> names)
      : random_(random), network_(std::move(network)), names_(std::move(names)) {
    names_.resize(std::max(names_.size(), network_.part_count()));
  }

  /// Until nothing can be combined.
  std::vector<Made> run() && {
    while (step()) {
    }
    for (std::size_t i = 0; i + 1 < made_.size(); ++i) made_[i].within = random_.below(5) == 0;
    return std::move(made_);
  }

 private:
  bool step() {
    if (random_.below(4) == 0 && step_apart()) return true;
    std::vector<std::pair<Joining, Place>> places;
    for (const auto& [how, name] : {std::pair(Joining::series, RuleName::series),
                                    std::pair(Joining::parallel, RuleName::parallel)}) {
      for (Place& place : rule(name).find(network_, whole(network_))) {
        places.emplace_back(how, std::move(place));
      }
    }
    if (places.empty()) return false;
    auto& [how, place] = places[random_.below(places.size())];
    std::vector<PartId> parts = place.parts;
    if (random_.below(2) == 0) {
      const std::size_t first = random_.below(parts.size() - 1);
      const std::size_t count = 2 + random_.below(parts.size() - first - 1);
      parts = {parts.begin() + static_cast<std::ptrdiff_t>(first),
               parts.begin() + static_cast<std::ptrdiff_t>(first + count)};
    }
    const RuleName name = how == Joining::series ? RuleName::series : RuleName::parallel;
    commit(how, parts, rule(name).apply(network_, {parts, {}, {}}));
    return true;
  }

  // Two parts in series with something between them.
  bool step_apart() {
    std::vector<PartId> living;
    for (std::uint32_t i = 0; i < network_.part_count(); ++i) {
      const bool resistor = network_.kind(PartId{i}) == ElementKind::resistor;
      if (resistor && network_.is_alive(PartId{i})) living.push_back(PartId{i});
    }
    if (living.size() < 3) return false;
    const PartId first = living[random_.below(living.size())];
    const PartId second = living[random_.below(living.size())];
    if (first == second || !carry_one_current(network_, first, second)) return false;
    Edit edit;
    edit.removes = {first, second};
    edit.merges = {network_.from(second), network_.to(second)};
    std::sort(edit.merges.begin(), edit.merges.end());
    edit.adds.push_back({network_.from(first), network_.to(first),
                         Ratio::series(network_.resistance(first), network_.resistance(second))});
    commit(Joining::series, {first, second}, edit);
    return true;
  }

  void commit(Joining how, const std::vector<PartId>& parts, const Edit& edit) {
    Made made;
    made.how = how;
    for (const PartId part : parts) made.operands.push_back(names_.at(part.index));
    static constexpr std::array<const char*, 4> kStems{"Q", "n_", "Block", "z9"};
    made.name = kStems.at(random_.below(kStems.size())) + std::to_string(++count_);
    for (std::size_t i = made.operands.size(); i > 1; --i) {
      std::swap(made.operands[i - 1], made.operands[random_.below(i)]);
    }
    const PartId part = network_.commit(edit);
    names_.resize(network_.part_count());
    names_[part.index] = made.name;
    made_.push_back(std::move(made));
  }

  RandomCircuits& random_;
  Network network_;
  std::vector<std::string> names_;
  std::vector<Made> made_;
  std::size_t count_ = 0;
};

/// A network as right steps have left it, with names by PartId; those of parts that are gone are
/// empty.
struct Standing {
  Network network;
  std::vector<std::string> names;

  [[nodiscard]] PartId part(const std::string& name) const {
    const auto found = std::find(names.begin(), names.end(), name);
    return PartId{static_cast<std::uint32_t>(found - names.begin())};
  }
  /// May these be combined? Found without the rules.
  [[nodiscard]] bool may_combine(Joining how, const std::vector<std::string>& operands) const {
    const PartId first = part(operands.front());
    return std::all_of(operands.begin() + 1, operands.end(), [&](const std::string& name) {
      const PartId other = part(name);
      if (how == Joining::series) return carry_one_current(network, first, other);
      return std::minmax(network.from(first), network.to(first)) ==
             std::minmax(network.from(other), network.to(other));
    });
  }
  /// Requires that they may be combined: the first gets the value, of the others in series wires
  /// are left, in parallel nothing.
  void combine(const Made& made) {
    Edit edit;
    edit.merging = Merging::by_twos;
    Ratio value = network.resistance(part(made.operands.front()));
    for (const std::string& name : made.operands) {
      edit.removes.push_back(part(name));
      if (name == made.operands.front()) continue;
      const Ratio& other = network.resistance(part(name));
      const bool series = made.how == Joining::series;
      value = series ? Ratio::series(value, other) : Ratio::parallel(value, other);
      if (series)
        edit.merges.insert(edit.merges.end(), {network.from(part(name)), network.to(part(name))});
    }
    const PartId first = part(made.operands.front());
    edit.adds.push_back({network.from(first), network.to(first), value});
    const PartId makes = network.commit(edit);
    for (const PartId gone : edit.removes) names[gone.index].clear();
    names.resize(network.part_count());
    names[makes.index] = made.name;
  }
};

/// The steps of series and parallel that the engine took.
inline std::vector<Made> steps_of(const Reduction& reduction, std::vector<std::string> names,
                                  const std::string& stem) {
  std::vector<Made> all;
  names.resize(reduction.end.part_count());
  for (std::size_t i = 0; i < reduction.steps.size(); ++i) {
    const Step step = reduction.steps[i];
    if (!step.makes.exists()) continue;
    Made made;
    made.how = step.rule == RuleName::series ? Joining::series : Joining::parallel;
    for (const PartId part : step.takes) made.operands.push_back(names.at(part.index));
    made.name = stem + std::to_string(all.size() + 1);
    names.at(step.makes.index) = made.name;
    if (step.rule != RuleName::series && step.rule != RuleName::parallel) continue;
    all.push_back(std::move(made));
  }
  return all;
}

/// "R1 + R2"; what is within is written out.
inline std::string formula_of(const Made& made, const std::vector<Made>& all) {
  std::string text;
  for (const std::string& operand : made.operands) {
    if (!text.empty()) text += made.how == Joining::series ? " + " : " || ";
    const auto inner = std::find_if(
        all.begin(), all.end(), [&](const Made& one) { return one.within && one.name == operand; });
    text += inner == all.end() ? operand : "(" + formula_of(*inner, all) + ")";
  }
  return text;
}

/// The lines of a reduction; `words` of ten lines that can be are in words.
inline void add_reduction(const std::vector<Made>& all, RandomCircuits& random, std::size_t words,
                          Notebook& book) {
  for (const Made& made : all) {
    NoteLine line;
    line.key = "R " + made.name;
    line.way = made.how == Joining::series ? Way::sum : Way::reciprocal_sum;
    bool nested = false;
    std::string list;
    for (const std::string& operand : made.operands) {
      line.from.push_back("R " + operand);
      list += (list.empty() ? "" : ", ") + operand;
      nested = nested || std::any_of(all.begin(), all.end(), [&](const Made& one) {
                 return one.within && one.name == operand;
               });
    }
    if (!made.within && !nested && random.below(10) < words) {
      line.claim = list + (made.how == Joining::series ? " in series" : " in parallel") + " make " +
                   made.name;
    } else if (!made.within) {
      line.claim = made.name + " = " + formula_of(made, all);
    }
    book.lines.push_back(std::move(line));
  }
}

}  // namespace ohmfold::support
