// A program that does nothing, linked with the same libraries: what it costs to start at all.
#include <ginac/ginac.h>

#include <cstdio>

int main() {
  // Enough to keep the libraries from being left out.
  return GiNaC::numeric(0).is_zero() ? 0 : 1;
}
