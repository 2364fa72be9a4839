// With which sign each current stands in the current law at a point.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "ohmfold/network.h"

namespace ohmfold::views {

/// The current of `part` as a sum of the currents of `others`, all of which meet it at one of its
/// ends: for each of them, is it subtracted? Nothing where they share no end with it.
[[nodiscard]] std::optional<std::vector<bool>> cut_signs(const Network& network, PartId part,
                                                         std::span<const PartId> others);

}  // namespace ohmfold::views
