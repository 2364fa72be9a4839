// Stands in until figures are there.
#include "ohmfold/draw.h"
#include "views/pictures.h"

namespace ohmfold {
std::string draw_svg(const Trace&, std::size_t, std::size_t, const DrawOptions&) {
  return {};
}
std::string draw_tikz(const Trace&, std::size_t, std::size_t, const DrawOptions&) {
  return {};
}
std::string draw_text(const Trace&, std::size_t, std::size_t, const DrawOptions&, Letters, bool) {
  return {};
}
namespace views {
Pictures::Pictures(const Scene& scene, const CaseTrace&, const drawing::Sizes& sizes,
                   const PictureOptions& options)
    : scene_(scene), options_(options), figures_(scene.problem, scene.reduction, {}, sizes, {}) {}
Figure Pictures::after(std::size_t) const {
  return {};
}
}  // namespace views
}  // namespace ohmfold
