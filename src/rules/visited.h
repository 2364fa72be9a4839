// A set of ids for one search: flat, and made for asking "have I been here?".
#pragma once

#include <cstdint>
#include <vector>

namespace ohmfold {

/// A growing set of 32-bit ids. Cost: constant for each call, on average.
class Visited {
 public:
  explicit Visited(std::size_t expected) {
    std::size_t slots = 16;
    while (slots < 2 * expected) slots *= 2;
    slots_.assign(slots, kFree);
  }

  /// Puts the id in; true where it was not in before.
  bool insert(std::uint32_t id) {
    if (2 * (used_ + 1) > slots_.size()) grow();
    std::uint32_t& slot = slots_[slot_of(id)];
    if (slot == id) return false;
    slot = id;
    ++used_;
    return true;
  }

 private:
  static constexpr std::uint32_t kFree = UINT32_MAX;

  [[nodiscard]] std::size_t slot_of(std::uint32_t id) const {
    const std::size_t mask = slots_.size() - 1;
    std::size_t at = (id * 0x9e3779b9U) & mask;  // Knuth's multiplicative hash
    while (slots_[at] != id && slots_[at] != kFree) at = (at + 1) & mask;
    return at;
  }

  void grow() {
    std::vector<std::uint32_t> old(2 * slots_.size(), kFree);
    old.swap(slots_);
    for (const std::uint32_t id : old) {
      if (id != kFree) slots_[slot_of(id)] = id;
    }
  }

  std::vector<std::uint32_t> slots_;
  std::size_t used_ = 0;
};

}  // namespace ohmfold
