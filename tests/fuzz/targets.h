// What is tried with any bytes at all: each function must come back, and throws where something
// that we promise does not hold.
#pragma once

#include <string_view>

namespace ohmfold::fuzz {

void number(std::string_view bytes);
void expression(std::string_view bytes);
void circuit(std::string_view bytes);
/// Reading, solving and writing; texts whose answers would take long are only read.
void pipeline(std::string_view bytes);
/// Reading claims about a few fixed problems, at once and one by one.
void work(std::string_view bytes);
/// Drawing and writing handouts, which are read again.
void handout(std::string_view bytes);

}  // namespace ohmfold::fuzz
