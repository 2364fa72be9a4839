// The arithmetic of a reduction, replayed without the graph.
#pragma once

#include <cln/rational.h>

#include "shapes.h"

namespace ohmfold::bench {

/// The resistance of the tree in rationals in lowest terms; parallel as 1/(1/a + 1/b), the fast
/// form. Values are let go when used, as nobody asks for them again.
inline cln::cl_RA replay_rationals(const Tree& tree) {
  std::vector<cln::cl_RA> value(tree.ohm.begin(), tree.ohm.end());
  value.reserve(tree.ohm.size() + tree.joins.size());
  for (const Tree::Join& join : tree.joins) {
    cln::cl_RA& a = value[join.first];
    cln::cl_RA& b = value[join.second];
    cln::cl_RA made = join.series ? a + b : cln::recip(cln::recip(a) + cln::recip(b));
    a = 0;
    b = 0;
    value.push_back(std::move(made));
  }
  return value.back();
}

/// The same in pairs P/Q that are not in lowest terms.
inline Ratio replay_ratios(const Tree& tree) {
  std::vector<Ratio> value;
  value.reserve(tree.ohm.size() + tree.joins.size());
  for (const int ohm : tree.ohm) value.emplace_back(Number(ohm));
  for (const Tree::Join& join : tree.joins) {
    Ratio& a = value[join.first];
    Ratio& b = value[join.second];
    Ratio made = join.series ? Ratio::series(a, b) : Ratio::parallel(a, b);
    a = b = Ratio();
    value.push_back(std::move(made));
  }
  return value.back();
}

}  // namespace ohmfold::bench
