// Balanced folding of many ratios into one.
#include "exact/combine.h"

#include "ohmfold/error.h"

namespace ohmfold {
namespace {

Ratio fold(std::vector<Ratio> parts, Ratio (*join)(const Ratio&, const Ratio&)) {
  ensure(!parts.empty(), "nothing to combine");
  while (parts.size() > 1) {
    const std::size_t pairs = parts.size() / 2;
    for (std::size_t i = 0; i < pairs; ++i) parts[i] = join(parts[2 * i], parts[2 * i + 1]);
    if (parts.size() % 2 == 1) parts[pairs] = parts.back();
    parts.resize((parts.size() + 1) / 2);
  }
  return parts.front();
}

// Where many are joined, like denominators are kept: a long chain of decimals stays short.
Ratio sum(const Ratio& a, const Ratio& b) {
  if (a.is_symbolic() || b.is_symbolic()) return Ratio::series(a, b);
  if (cln::equal(a.q(), b.q())) return {a.p() + b.p(), a.q()};
  return Ratio::series(a, b);
}

Ratio reciprocal_sum(const Ratio& a, const Ratio& b) {
  if (a.is_symbolic() || b.is_symbolic()) return Ratio::parallel(a, b);
  if (cln::equal(a.p(), b.p())) return {a.p(), a.q() + b.q()};
  return Ratio::parallel(a, b);
}

}  // namespace

Ratio combine_series(std::vector<Ratio> parts) {
  if (parts.size() == 2) return Ratio::series(parts[0], parts[1]);
  return fold(std::move(parts), sum);
}

Ratio combine_parallel(std::vector<Ratio> parts) {
  if (parts.size() == 2) return Ratio::parallel(parts[0], parts[1]);
  return fold(std::move(parts), reciprocal_sum);
}

}  // namespace ohmfold
