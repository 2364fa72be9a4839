// Names and their numbers: open addressing, so that a look-up touches one place of memory or two.

#include "language/name_table.h"

#include <functional>
#include <utility>

namespace ohmfold {
namespace {

std::uint32_t hash_of(std::string_view name) {
  return static_cast<std::uint32_t>(std::hash<std::string_view>{}(name));
}

}  // namespace

NameTable::Entry NameTable::add(std::string_view name) {
  if (3 * (used_ + 1) > 2 * slots_.size()) grow();
  const std::uint32_t hash = hash_of(name);
  Slot& slot = slots_[slot_of(name, hash)];
  if (slot.number != kFree) return {slot.number, false};
  slot = {hash, static_cast<std::uint32_t>(names_.size())};
  names_.push_back(name);
  ++used_;
  return {slot.number, true};
}

std::optional<std::uint32_t> NameTable::find(std::string_view name) const {
  if (slots_.empty()) return std::nullopt;
  const Slot& slot = slots_[slot_of(name, hash_of(name))];
  if (slot.number == kFree) return std::nullopt;
  return slot.number;
}

std::size_t NameTable::slot_of(std::string_view name, std::uint32_t hash) const {
  const std::size_t mask = slots_.size() - 1;
  std::size_t at = hash & mask;
  while (slots_[at].number != kFree &&
         (slots_[at].hash != hash || names_[slots_[at].number] != name)) {
    at = (at + 1) & mask;
  }
  return at;
}

void NameTable::grow() {
  const std::vector<Slot> old = std::exchange(slots_, {});
  slots_.resize(old.empty() ? 64 : 2 * old.size());
  const std::size_t mask = slots_.size() - 1;
  for (const Slot& slot : old) {
    if (slot.number == kFree) continue;
    std::size_t at = slot.hash & mask;
    while (slots_[at].number != kFree) at = (at + 1) & mask;
    slots_[at] = slot;
  }
}

}  // namespace ohmfold
