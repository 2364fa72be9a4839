// Takes a polynomial apart, symbol after symbol.
#include "exact/terms.h"

#include <algorithm>
#include <numeric>
#include <utility>

#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

std::size_t degree(const Term& term) {
  return std::accumulate(term.powers.begin(), term.powers.end(), std::size_t{0});
}

}  // namespace

std::vector<Term> terms_of(const Number& polynomial, std::span<const std::string> symbols) {
  std::vector<Term> terms{{polynomial, {}}};
  for (const std::string& symbol : symbols) {
    std::vector<Term> split;
    for (const Term& term : terms) {
      const std::vector<Number> parts = coefficients(term.coefficient, symbol);
      for (std::size_t power = 0; power < parts.size(); ++power) {
        if (parts[power].is_zero()) continue;
        split.push_back({parts[power], term.powers});
        split.back().powers.push_back(power);
      }
    }
    terms = std::move(split);
  }
  if (terms.empty()) return {{Number(0), std::vector<std::size_t>(symbols.size())}};
  std::sort(terms.begin(), terms.end(), [](const Term& a, const Term& b) {
    return std::pair(degree(a), a.powers) > std::pair(degree(b), b.powers);
  });
  return terms;
}

}  // namespace ohmfold
