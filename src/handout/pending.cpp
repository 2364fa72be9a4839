// Stands in until the writers are there.
#include "ohmfold/handout.h"

namespace ohmfold {
std::string render_latex(std::span<const Trace>, const HandoutOptions&) {
  return {};
}
std::string latex_preamble() {
  return {};
}
Markdown render_markdown(std::span<const Trace>, const std::string&, const HandoutOptions&) {
  return {};
}
}  // namespace ohmfold
