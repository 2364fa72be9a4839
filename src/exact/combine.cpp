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

}  // namespace

Ratio combine_series(std::vector<Ratio> parts) {
  return fold(std::move(parts), Ratio::series);
}

Ratio combine_parallel(std::vector<Ratio> parts) {
  return fold(std::move(parts), Ratio::parallel);
}

}  // namespace ohmfold
