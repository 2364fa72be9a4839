// The table from a pair of points to a part that joins them: open addressing in one flat array.
#include <utility>

#include "ohmfold/network.h"

namespace ohmfold {
namespace {

// Neighbouring points have neighbouring numbers: spread them (the finishing step of a 64-bit
// mix, after Stafford's variant 13).
constexpr std::uint64_t spread(std::uint64_t key) {
  key = (key ^ (key >> 30)) * 0xbf58476d1ce4e5b9ULL;
  key = (key ^ (key >> 27)) * 0x94d049bb133111ebULL;
  return key ^ (key >> 31);
}

}  // namespace

std::size_t Network::PairTable::slot_of(std::uint64_t key) const {
  const std::size_t mask = slots_.size() - 1;
  std::size_t at = spread(key) & mask;
  while (slots_[at].key != key && slots_[at].key != kFree) at = (at + 1) & mask;
  return at;
}

void Network::PairTable::grow(std::size_t slots) {
  std::vector<Slot> old(slots);
  old.swap(slots_);
  for (const Slot& slot : old) {
    if (slot.key != kFree) slots_[slot_of(slot.key)] = slot;
  }
}

PartId Network::PairTable::find_or_insert(std::uint64_t key, PartId part) {
  if ((used_ + 1) * 3 > slots_.size() * 2) grow(slots_.empty() ? 16 : slots_.size() * 2);
  Slot& slot = slots_[slot_of(key)];
  if (slot.key != kFree) return slot.part;
  ++used_;
  slot = {key, part};
  return part;
}

void Network::PairTable::replace(std::uint64_t key, PartId before, PartId now) {
  Slot& slot = slots_[slot_of(key)];
  if (slot.part == before) slot.part = now;
}

void Network::PairTable::expect(std::uint64_t key) const {
  __builtin_prefetch(&slots_[spread(key) & (slots_.size() - 1)]);
}

void Network::PairTable::erase(std::uint64_t key) {
  const std::size_t mask = slots_.size() - 1;
  std::size_t hole = slot_of(key);
  if (slots_[hole].key == kFree) return;
  --used_;
  // Close the gap: move back each later entry of the run that may stand at the hole.
  for (std::size_t at = (hole + 1) & mask; slots_[at].key != kFree; at = (at + 1) & mask) {
    const std::size_t home = spread(slots_[at].key) & mask;
    if (((at - home) & mask) >= ((at - hole) & mask)) {
      slots_[hole] = slots_[at];
      hole = at;
    }
  }
  slots_[hole] = Slot{};
}

}  // namespace ohmfold
