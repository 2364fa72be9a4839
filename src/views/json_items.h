// The entries of a trace as JSON, one function each.
#pragma once

#include <span>

#include "views/chapter.h"
#include "views/json_values.h"

namespace ohmfold::views {

/// Entries of one case. Keeps references to problem and trace.
class JsonItems {
 public:
  JsonItems(const Problem& problem, const CaseTrace& trace, int figures);

  [[nodiscard]] Json step(const Step& step) const { return step_of(scene_, step); }
  [[nodiscard]] Json equivalent() const;
  [[nodiscard]] Json returned(const Return& item) const;
  [[nodiscard]] Json branch(const BranchResult& branch) const;
  [[nodiscard]] Json node(const NodeResult& node) const;
  [[nodiscard]] Json answer(const Answer& answer) const;
  [[nodiscard]] Json check(const Check& check) const;
  [[nodiscard]] Json caution(const Caution& caution) const;
  [[nodiscard]] Json condition(const SignCondition& found) const;
  [[nodiscard]] Json condition(const CurrentCondition& found) const;
  [[nodiscard]] Json contradiction(const Contradiction& found) const;

 private:
  [[nodiscard]] Json step_of(const Scene& scene, const Step& step) const;
  [[nodiscard]] Json made_value(const Scene& scene, PartId made) const;
  [[nodiscard]] Json points(std::span<const PointId> ids) const;

  const Problem& problem_;
  const CaseTrace& trace_;
  int figures_;
  Scene scene_;
};

}  // namespace ohmfold::views
