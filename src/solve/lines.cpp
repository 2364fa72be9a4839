// Counting lines.
#include "solve/lines.h"

#include <algorithm>

namespace ohmfold {
namespace {

// On the way back, for each part taken: one of current and voltage is that of the part made, or
// zero; of a rewritten delta, star or mesh, both are worked out.
std::size_t lines_back(const Step& step) {
  switch (step.formula) {
    case Formula::none:
    case Formula::sum:
    case Formula::reciprocal_sum:
      return step.takes.size();
    case Formula::star_arm:
    case Formula::delta_side:
    case Formula::mesh_side:
      return 2 * step.takes.size();
  }
  return 0;
}

}  // namespace

Cost cost_of_steps(const StepLog& log, const Network& network, bool drives) {
  Cost cost;
  for (std::size_t i = 0; i < log.size(); ++i) {
    const Step step = log[i];
    const std::size_t made = step.makes.exists() ? std::max<std::size_t>(1, step.adds.size()) : 0;
    cost.lines += std::max<std::size_t>(1, made);
    if (drives) cost.lines += lines_back(step);
    for (std::uint32_t k = 0; k < made; ++k) {
      cost.bits += network.resistance(PartId{step.makes.index + k}).lowest_terms().bits();
    }
  }
  if (drives) ++cost.lines;  // the current of the battery
  return cost;
}

std::size_t lines_of_analysis(std::size_t unknowns, std::size_t parts, std::size_t at_terminal,
                              bool drives) {
  const std::size_t equations = 2 * unknowns + unknowns * (unknowns - 1) / 2;
  return equations + (drives ? 2 * parts + 1 : at_terminal + 2);
}

}  // namespace ohmfold
