// What a person tried in one session, so that they can be told what was sure and what was not.
#include "cli/attempts.h"

#include <algorithm>
#include <utility>

namespace ohmfold {

std::size_t Attempts::add_wrong(const Topic& topic) {
  return ++about(topic).wrong;
}

void Attempts::add_hint(const Topic& topic) {
  ++about(topic).hints;
}

void Attempts::settle(const Topic& topic, Attempt::End end) {
  Attempt& attempt = about(topic);
  attempt.hints += std::exchange(hints_, 0);
  attempt.end = end;
}

void Attempts::reopen(const Topic& topic) {
  about(topic).end = Attempt::End::open;
}

Attempt& Attempts::about(const Topic& topic) {
  const auto known = std::ranges::find(attempts_, topic, &Attempt::topic);
  if (known != attempts_.end()) return *known;
  attempts_.push_back({.topic = topic});
  return attempts_.back();
}

}  // namespace ohmfold
