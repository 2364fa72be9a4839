// How many random networks a property is tried on.
#pragma once

#include <cstdint>
#include <cstdlib>

namespace ohmfold::test {

/// `usual` rounds, times the number in the environment variable OHMFOLD_ROUNDS where it is set.
inline std::uint64_t rounds(std::uint64_t usual) {
  const char* factor = std::getenv("OHMFOLD_ROUNDS");
  const long times = factor == nullptr ? 1 : std::strtol(factor, nullptr, 10);
  return usual * static_cast<std::uint64_t>(times < 1 ? 1 : times);
}

}  // namespace ohmfold::test
