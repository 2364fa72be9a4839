// The one error that is our own fault: something the program promised does not hold.
#pragma once

#include <stdexcept>
#include <string>

namespace ohmfold {

/// Thrown when an invariant of the program fails. Never thrown for bad input:
/// that is a Diagnostic or a Contradiction. Caught once, in main (exit 70).
class InternalError : public std::logic_error {
 public:
  using std::logic_error::logic_error;
};

/// Does nothing where `condition` holds; throws InternalError with `what` otherwise.
inline void ensure(bool condition, const char* what) {
  if (!condition) throw InternalError(what);
}

/// As above, for a text that has to be put together first.
inline void ensure(bool condition, const std::string& what) {
  if (!condition) throw InternalError(what);
}

}  // namespace ohmfold
