// Names and their numbers, for a million of them: one flat array of hashes beside the names.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

namespace ohmfold {

/// Numbers names from 0 in the order in which they come. Refers to the bytes of the names, which
/// must outlive it.
class NameTable {
 public:
  struct Entry {
    std::uint32_t number;
    bool is_new;
  };

  /// The number of a name, a new one where it is not known yet.
  Entry add(std::string_view name);
  /// Gives the next number to something that no name finds.
  void add_nameless() { names_.emplace_back(); }

  [[nodiscard]] std::optional<std::uint32_t> find(std::string_view name) const;
  [[nodiscard]] bool contains(std::string_view name) const { return find(name).has_value(); }
  /// By number; empty for what is nameless.
  [[nodiscard]] const std::vector<std::string_view>& names() const { return names_; }

 private:
  struct Slot {
    std::uint32_t hash = 0;
    std::uint32_t number = kFree;
  };
  static constexpr std::uint32_t kFree = UINT32_MAX;

  /// The slot that holds the name, or the free one where it belongs. Requires slots.
  [[nodiscard]] std::size_t slot_of(std::string_view name, std::uint32_t hash) const;
  void grow();

  std::vector<std::string_view> names_;
  std::vector<Slot> slots_;  ///< a power of two of them, at most two thirds used
  std::size_t used_ = 0;
};

}  // namespace ohmfold
