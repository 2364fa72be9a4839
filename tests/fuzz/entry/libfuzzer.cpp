// Where libFuzzer enters; OHMFOLD_FUZZ_TARGET names the function of targets.h that is tried.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "fuzz/targets.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
  ohmfold::fuzz::OHMFOLD_FUZZ_TARGET({reinterpret_cast<const char*>(bytes), size});
  return 0;
}
