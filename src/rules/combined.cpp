// Values of combined parts.
#include "rules/combined.h"

#include "exact/combine.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

Ratio value(const Network& network, const std::vector<PartId>& parts, bool sum) {
  if (parts.size() == 2) {  // by far the most frequent
    const Ratio& a = network.resistance(parts[0]);
    const Ratio& b = network.resistance(parts[1]);
    return sum ? Ratio::series(a, b) : Ratio::parallel(a, b);
  }
  std::vector<Ratio> resistances;
  resistances.reserve(parts.size());
  for (const PartId part : parts) resistances.push_back(network.resistance(part));
  return sum ? combine_series(std::move(resistances)) : combine_parallel(std::move(resistances));
}

}  // namespace

Edit combined(const Network& network, std::vector<PartId> parts, PointId first, PointId second,
              Formula formula) {
  ensure(parts.size() >= 2 && formula != Formula::none, "a combination of nothing");
  const bool sum = formula == Formula::sum;
  Edit edit;
  edit.adds.push_back({first, second, value(network, parts, sum)});
  edit.removes = std::move(parts);
  edit.formula = formula;
  edit.back = sum ? std::array{Law::same_current, Law::ohm_voltage}
                  : std::array{Law::same_voltage, Law::ohm_current};
  return edit;
}

}  // namespace ohmfold
