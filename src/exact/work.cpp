// The limit of work in force in a thread.
#include "exact/work.h"

#include "ohmfold/symbolic.h"

namespace ohmfold {
namespace {

// Arithmetic operators take no further argument, so that the limit has to lie beside them. It is
// changed only here, and each thread has its own.
std::uint64_t& left() {
  thread_local std::uint64_t units = UINT64_MAX;
  return units;
}

}  // namespace

void charge(std::uint64_t units) {
  std::uint64_t& rest = left();
  if (rest == UINT64_MAX) return;
  if (units > rest) throw BeyondBudget("the values with symbols become too long to work with");
  rest -= units;
}

WorkLimit::WorkLimit(std::uint64_t units) : outside_(left()), granted_(units) {
  if (units < outside_) left() = units;
  granted_ = left();
}

WorkLimit::~WorkLimit() {
  const std::uint64_t used = granted_ - left();
  left() = outside_ == UINT64_MAX ? outside_ : outside_ - used;
}

}  // namespace ohmfold
