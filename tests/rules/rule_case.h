// A network in the circuit language and a place in it, to ask a rule about.
#pragma once

#include <sstream>
#include <string>
#include <vector>

#include "ohmfold/rule.h"
#include "support/circuit.h"

namespace ohmfold::test {

class RuleCase {
 public:
  explicit RuleCase(const std::string& text)
      : problem_(problem_of(text)), network_(set_case(problem_, problem_.cases.front())) {}

  [[nodiscard]] const Problem& problem() const { return problem_; }
  [[nodiscard]] Network& network() { return network_; }

  /// The place made of the parts named, with spaces between them.
  [[nodiscard]] Place place(const std::string& names) const {
    Place place;
    std::istringstream words(names);
    for (std::string name; words >> name;) place.parts.push_back(part(problem_, name));
    return place;
  }

  [[nodiscard]] Verdict judge(RuleName name, const std::string& names) const {
    return rule(name).judge(network_, place(names));
  }

  /// The places that the rule finds, each as its parts in the order of the place.
  [[nodiscard]] std::vector<std::string> find(RuleName name) const {
    std::vector<std::string> found;
    for (const Place& place : rule(name).find(network_, whole(network_))) {
      std::string names;
      for (const PartId id : place.parts)
        names += (names.empty() ? "" : " ") + problem_.part(id).name;
      found.push_back(names);
    }
    return found;
  }

  /// Applies a rule at a place that it allows, and commits the edit. The id of the part made, if
  /// any.
  PartId apply(RuleName name, const std::string& names) {
    return network_.commit(rule(name).apply(network_, place(names)));
  }

  [[nodiscard]] PartId id(const std::string& name) const { return part(problem_, name); }
  [[nodiscard]] PointId at(const std::string& name) const { return point(problem_, name); }

 private:
  Problem problem_;
  Network network_;
};

/// The only fact of a verdict, as the kind expected. Fails the test where it is another.
template <class FactKind>
FactKind only_fact(const Verdict& verdict) {
  EXPECT_EQ(verdict.facts.size(), 1U);
  const bool is_kind = !verdict.facts.empty() && std::holds_alternative<FactKind>(verdict.facts[0]);
  EXPECT_TRUE(is_kind);
  return is_kind ? std::get<FactKind>(verdict.facts[0]) : FactKind{};
}

}  // namespace ohmfold::test
