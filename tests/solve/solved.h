// A circuit in the circuit language, solved, with its values by name.
#pragma once

#include <string>

#include "ohmfold/solve.h"
#include "support/circuit.h"

namespace ohmfold::test {

class Solved {
 public:
  explicit Solved(const std::string& text, const SolveOptions& options = {})
      : problem_(problem_of(text)), trace_(solve(problem_, options)) {}

  [[nodiscard]] const CaseTrace& only() const { return trace_.cases.front(); }
  [[nodiscard]] const CaseTrace& at(std::size_t i) const { return trace_.cases.at(i); }
  [[nodiscard]] const Problem& problem() const { return problem_; }
  [[nodiscard]] const BranchResult& branch(const std::string& name, std::size_t i = 0) const {
    return at(i).branches.at(part(problem_, name).index);
  }
  [[nodiscard]] Number current(const std::string& name, std::size_t i = 0) const {
    return branch(name, i).current.value.value().number;
  }
  [[nodiscard]] Number voltage(const std::string& name, std::size_t i = 0) const {
    return branch(name, i).voltage.value.value().number;
  }
  [[nodiscard]] Number power(const std::string& name, std::size_t i = 0) const {
    return branch(name, i).power.value.value().number;
  }
  [[nodiscard]] Reading potential(const std::string& name) const {
    return only().nodes.at(point(problem_, name).index).potential;
  }
  [[nodiscard]] Reading answer(std::size_t k, std::size_t i = 0) const {
    return at(i).answers.at(k).value;
  }

 private:
  Problem problem_;
  Trace trace_;
};

}  // namespace ohmfold::test
