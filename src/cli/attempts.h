// What a person tried in one session, so that they can be told what was sure and what was not.
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "ohmfold/class_report.h"

namespace ohmfold {

/// How one thing went that the person claimed something about.
struct Attempt {
  enum class End { open, right, kept };
  Topic topic;
  std::size_t wrong = 0;  ///< claims that were not right
  std::size_t hints = 0;  ///< asked for before it was right
  End end = End::open;
};

class Attempts {
 public:
  /// A claim that is not right; how many there were now about the same.
  std::size_t add_wrong(const Topic& topic);
  /// A hint at what comes next.
  void add_hint() { ++hints_; }
  /// A hint at a claim that is not right.
  void add_hint(const Topic& topic);
  /// The claim stays: right, or kept although it is not. Hints at what comes
  /// next, since the last one, belong to it.
  void settle(const Topic& topic, Attempt::End end);
  /// The claim was taken back.
  void reopen(const Topic& topic);

  /// In the order of the first claims about them.
  [[nodiscard]] const std::vector<Attempt>& all() const { return attempts_; }

 private:
  Attempt& about(const Topic& topic);

  std::vector<Attempt> attempts_;
  std::size_t hints_ = 0;
};

}  // namespace ohmfold
