// The findings of one text while it is read: the first hundred errors and warnings, and how many
// more there are, so that a million bad lines stay bounded.
#pragma once

#include <cstddef>

#include "ohmfold/source.h"

namespace ohmfold {

class Findings {
 public:
  /// In any order of places.
  void add(Diagnostic diagnostic);

  [[nodiscard]] bool has_error() const { return errors_.count > 0; }
  /// Errors beyond the hundredth are hardly ever seen: a remedy for them is not worth a search.
  [[nodiscard]] bool is_full() const { return errors_.count >= kMost; }

  /// All that was kept in the order of places, and a last entry each that counts the others.
  [[nodiscard]] Diagnostics sorted() const;

 private:
  static constexpr std::size_t kMost = 100;
  /// The first kMost by place, as a heap with the last of them on top.
  struct Kept {
    std::vector<Diagnostic> heap;
    std::size_t count = 0;
  };
  Kept errors_, warnings_;
};

}  // namespace ohmfold
