// The known word that was probably meant, by edit distance.

#include "language/nearest.h"

#include <algorithm>
#include <array>
#include <numeric>

namespace ohmfold {
namespace {

constexpr std::size_t kMostCandidates = 10'000;
constexpr std::size_t kLongestWord = 30;
constexpr std::size_t kMostListed = 8;

char lower(char c) {
  return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Slips between two words of at most kLongestWord letters (Damerau and Levenshtein, in the
/// restricted form in which no stretch is edited twice).
std::size_t slips(std::string_view a, std::string_view b) {
  using Row = std::array<std::size_t, kLongestWord + 1>;
  Row before{};
  Row last{};
  Row row{};
  std::iota(last.begin(), last.end(), std::size_t{0});
  for (std::size_t i = 1; i <= a.size(); ++i) {
    row[0] = i;
    for (std::size_t j = 1; j <= b.size(); ++j) {
      const bool same = lower(a[i - 1]) == lower(b[j - 1]);
      row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + (same ? 0 : 1)});
      const bool swapped = i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) &&
                           lower(a[i - 2]) == lower(b[j - 1]);
      if (swapped) row[j] = std::min(row[j], before[j - 2] + 1);
    }
    before = last;
    last = row;
  }
  return last[b.size()];
}

}  // namespace

std::string_view nearest(std::string_view word, std::span<const std::string_view> candidates) {
  if (word.size() > kLongestWord) return {};
  std::string_view best;
  std::size_t fewest = word.size() / 3 + 1;
  for (const std::string_view candidate :
       candidates.first(std::min(candidates.size(), kMostCandidates))) {
    const std::size_t longer = std::max(word.size(), candidate.size());
    const std::size_t shorter = std::min(word.size(), candidate.size());
    if (candidate.size() > kLongestWord || longer - shorter >= fewest) continue;
    const std::size_t distance = slips(word, candidate);
    if (distance < fewest) {
      fewest = distance;
      best = candidate;
    }
  }
  return best;
}

std::string suggestion(std::string_view word, std::span<const std::string_view> candidates,
                       std::string_view those) {
  const std::string_view meant = nearest(word, candidates);
  if (!meant.empty()) return std::string("did you mean '").append(meant).append("'?");
  if (candidates.empty() || candidates.size() > kMostListed) return {};
  return std::string("the ").append(those).append(" are ").append(listed(candidates, kMostListed));
}

std::string listed(std::span<const std::string_view> words, std::size_t most) {
  const std::size_t named = std::min(words.size(), most);
  const std::size_t more = words.size() - named;
  std::string text;
  for (std::size_t i = 0; i < named; ++i) {
    const bool last = i + 1 == words.size();
    if (i > 0) text.append(last ? " and " : ", ");
    text.append(words[i]);
  }
  if (more > 0) text.append(" and ").append(std::to_string(more)).append(" more");
  return text;
}

}  // namespace ohmfold
