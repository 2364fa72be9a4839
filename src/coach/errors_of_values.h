// The parts of the catalogue that are about values of the way back and of whole networks.
#pragma once

#include <vector>

#include "coach/errors.h"
#include "coach/surroundings.h"
#include "coach/suspects.h"

namespace ohmfold {

/// Errors in how the network was seen: parts left out or taken for something else, other points,
/// parts combined that must not be. Only of circuits of some tens of parts.
void try_resistance_errors(const CaseBook& book, const Target& target, Suspects& suspects);

/// A part of the file that carries nothing in the case, claimed to carry something or to have a
/// voltage.
void try_carrying_errors(const Surroundings& around, PartId part, Suspects& suspects);

void try_current_errors(const Surroundings& around, const Target& target, Suspects& suspects);
void try_voltage_errors(const Surroundings& around, const Target& target, Suspects& suspects);
void try_power_errors(const Surroundings& around, const Target& target, Suspects& suspects);

/// Errors of arithmetic in one combination, with the person's own values of its operands.
void try_combination_errors(const CaseBook& book, Joining how, const std::vector<PartId>& operands,
                            Suspects& suspects);

}  // namespace ohmfold
