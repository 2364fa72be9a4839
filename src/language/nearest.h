// The known word that was probably meant.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ohmfold {

/// The candidate that takes the fewest slips to turn into `word` (a letter too many, missing,
/// wrong, or two letters swapped; capitals cost nothing), empty where all are too far: one slip is
/// allowed for every three letters. The first of several equally near ones. Only the first ten
/// thousand candidates are looked at.
[[nodiscard]] std::string_view nearest(std::string_view word,
                                       std::span<const std::string_view> candidates);

/// "did you mean 'R1'?", or where nothing is near and there are few, "the parts are E, R1 and R2".
/// `those` is the plural of what the candidates are.
[[nodiscard]] std::string suggestion(std::string_view word,
                                     std::span<const std::string_view> candidates,
                                     std::string_view those);

/// "A", "A and B", "A, B and C"; of more than `most` the first ones "and 7 more".
[[nodiscard]] std::string listed(std::span<const std::string_view> words, std::size_t most);

}  // namespace ohmfold
