// The lines of a person's work on one battery that follow the reduction: the whole resistance, and
// every current, voltage and power.
#pragma once

#include <string>
#include <vector>

#include "ohmfold/coach.h"
#include "support/walk.h"

namespace ohmfold::support {

/// Writes the way back from the part that a reduction leaves to the parts of the file.
class WayBack {
 public:
  WayBack(const Exercise& exercise, std::size_t case_index, RandomCircuits& random, Notebook& book)
      : exercise_(exercise), case_index_(case_index), random_(random), book_(book) {}

  /// `root` is the part that is left on the battery.
  void add(const std::vector<Made>& all, const std::string& root, const Part& battery) {
    const std::string& source = battery.name;
    book_.given["E"] = battery.value;
    book_.given["r"] = battery.internal;
    add_line(random_.below(2) == 0 ? "equivalent resistance" : "R_eq", "R whole", Unit::ohm,
             Way::same, {"R " + root});
    add_line("resistance seen by " + source, "R seen", Unit::ohm, Way::same, {"R " + root});
    add_line("", "R all", Unit::ohm, Way::sum, {"R whole", "r"});
    add_line(claim_of("I", source), "I " + source, Unit::ampere, Way::quotient, {"E", "R all"});
    add_line("", "lost", Unit::volt, Way::product, {"I " + source, "r"});
    add_line(claim_of("V", source), "V " + source, Unit::volt, Way::difference, {"E", "lost"});
    add_line(claim_of("P", source), "P " + source, Unit::watt, Way::product,
             {"V " + source, "I " + source});
    add_line(claim_of("I", root), "I " + root, Unit::ampere, Way::same, {"I " + source});
    add_line(claim_of("V", root), "V " + root, Unit::volt, Way::same, {"V " + source});
    add_power(root);
    for (auto made = all.rbegin(); made != all.rend(); ++made) unfold(all, *made);
  }

 private:
  void unfold(const std::vector<Made>& all, const Made& made) {
    for (const std::string& operand : made.operands) {
      const bool within = std::any_of(all.begin(), all.end(), [&](const Made& one) {
        return one.within && one.name == operand;
      });
      const auto claim = [&](const char* what) { return within ? "" : claim_of(what, operand); };
      if (made.how == Joining::series) {
        add_line(claim("I"), "I " + operand, Unit::ampere, Way::same, {"I " + made.name});
        add_line(claim("V"), "V " + operand, Unit::volt, Way::product,
                 {"I " + operand, "R " + operand});
      } else {
        add_line(claim("V"), "V " + operand, Unit::volt, Way::same, {"V " + made.name});
        add_line(claim("I"), "I " + operand, Unit::ampere, Way::quotient,
                 {"V " + operand, "R " + operand});
      }
      if (!within) add_power(operand);
    }
  }

  void add_power(const std::string& name) {
    add_line(claim_of("P", name), "P " + name, Unit::watt, Way::product,
             {"V " + name, "I " + name});
  }

  std::string claim_of(const std::string& what, const std::string& name) {
    if (random_.below(2) == 0) return what + "_" + name;
    const std::string words = what == "I"   ? "current through "
                              : what == "V" ? "voltage across "
                                            : "power in ";
    return words + name;
  }

  // Currents and voltages of parts of the file have the sign that their direction gives.
  [[nodiscard]] bool is_negative(const std::string& key) const {
    const CaseTrace& solved = exercise_.trace.cases[case_index_];
    const std::vector<Part>& parts = exercise_.problem->parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
      if (key.substr(2) != parts[i].name) continue;
      const BranchResult& branch = solved.branches.at(i);
      const Reading& reading = key.front() == 'I'   ? branch.current
                               : key.front() == 'V' ? branch.voltage
                                                    : branch.power;
      return reading.value && reading.value->number.is_negative();
    }
    return false;
  }

  void add_line(std::string claim, std::string key, Unit unit, Way way,
                std::vector<std::string> from) {
    const bool negative = key.front() != 'R' && is_negative(key);
    book_.lines.push_back({std::move(claim), std::move(key), unit, way, std::move(from), negative});
  }

  const Exercise& exercise_;
  std::size_t case_index_;
  RandomCircuits& random_;
  Notebook& book_;
};

/// A random series-parallel problem, and a right work on it.
struct RandomWork {
  Exercise exercise;
  std::vector<Made> made;
  Notebook book;
};

/// `within`: some combinations stand within others, which leaves what is inside of them nameless.
inline RandomWork random_work(RandomCircuits& random, std::size_t resistors, bool within = true) {
  Problem problem = random.series_parallel(resistors);
  if (random.below(3) == 0) problem.parts.front().internal = random.resistance();
  RandomWork work;
  work.exercise = prepare(problem);
  const Problem& solved = *work.exercise.problem;
  std::vector<std::string> names;
  for (const Part& part : solved.parts) {
    names.push_back(part.name);
    if (!is_source(part.kind)) work.book.given["R " + part.name] = part.value;
  }
  work.made = Walk(random, network_of(solved), names).run();
  if (!within) {
    for (Made& made : work.made) made.within = false;
  }
  add_reduction(work.made, random, 5, work.book);
  const std::string root = work.made.empty() ? solved.parts.at(1).name : work.made.back().name;
  WayBack(work.exercise, 0, random, work.book).add(work.made, root, solved.parts.front());
  return work;
}

}  // namespace ohmfold::support
