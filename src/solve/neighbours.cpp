// Joints sorted by their nodes, those between the same two added up.
#include "solve/neighbours.h"

#include <algorithm>
#include <tuple>

namespace ohmfold {

Neighbours::Neighbours(std::size_t nodes, const std::vector<Joint>& joints) : begin_(nodes + 1) {
  struct End {
    std::uint32_t node, other, joint;
  };
  std::vector<End> ends;
  ends.reserve(2 * joints.size());
  for (std::uint32_t i = 0; i < joints.size(); ++i) {
    if (joints[i].a == joints[i].b) continue;
    ends.push_back({joints[i].a, joints[i].b, i});
    ends.push_back({joints[i].b, joints[i].a, i});
  }
  std::sort(ends.begin(), ends.end(), [](const End& x, const End& y) {
    return std::tie(x.node, x.other, x.joint) < std::tie(y.node, y.other, y.joint);
  });
  entries_.reserve(ends.size());
  std::size_t at = 0;
  for (std::size_t node = 0; node < nodes; ++node) {
    begin_[node] = entries_.size();
    for (; at < ends.size() && ends[at].node == node; ++at) {
      const Number& conductance = joints[ends[at].joint].conductance.number;
      if (entries_.size() > begin_[node] && entries_.back().node == ends[at].other) {
        entries_.back().conductance += conductance;
      } else {
        entries_.push_back({ends[at].other, conductance});
      }
    }
  }
  begin_[nodes] = entries_.size();
}

}  // namespace ohmfold
