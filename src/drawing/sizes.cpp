// How large things are on paper and on a terminal, and how wide text is there.
#include <algorithm>
#include <array>
#include <cstdint>

#include "drawing/characters.h"
#include "drawing/schematic.h"
#include "drawing/symbols.h"

namespace ohmfold::drawing {

namespace {

/// Characters from `first` to `last` that are at most so wide.
struct Range {
  std::uint32_t first, last;
  int width;
};

template <std::size_t N>
int width_in(const std::array<Range, N>& ranges, std::uint32_t character, int otherwise) {
  const auto* const after =
      std::upper_bound(ranges.begin(), ranges.end(), character,
                       [](std::uint32_t c, const Range& range) { return c < range.first; });
  if (after == ranges.begin()) return otherwise;
  const Range& range = *(after - 1);
  return character <= range.last ? range.width : otherwise;
}

constexpr int kEm = 1000;

/// Of ASCII from the space on, in thousandths of an em: in the wider one of two faces, Helvetica,
/// whose metrics many share, and DejaVu Sans, which often stands in where it is missing (both from
/// memory).
constexpr std::array<int, 95> kAscii{
    318,  401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361, 318, 337,  // to /
    636,  636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 556,  // to ?
    1015, 684, 686, 722, 770, 667, 611, 778, 752, 295, 500, 667, 557, 863, 748, 787,  // to O
    667,  787, 722, 667, 611, 732, 684, 989, 685, 667, 685, 390, 337, 390, 838, 556,  // to _
    500,  613, 635, 550, 635, 615, 352, 635, 634, 278, 278, 579, 278, 974, 634, 612,  // to o
    635,  635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636, 838};      // to ~

/// Where a range is left out, kWidest.
constexpr std::array<Range, 16> kOnPaper{{{0xA0, 0xA0, 278},
                                          {0xA1, 0x24F, kEm},
                                          {0x250, 0x2FF, 800},
                                          {0x300, 0x36F, 0},  // combining marks
                                          {0x370, 0x3FF, 850},
                                          {0x400, 0x52F, 1150},
                                          {0x530, 0x6FF, kEm},
                                          {0x1E00, 0x1FFF, 1050},
                                          {0x2000, 0x200A, kEm},
                                          {0x200B, 0x200F, 0},  // without width, and directions
                                          {0x2010, 0x2027, kEm},
                                          {0x20D0, 0x20FF, 0},
                                          {0x2126, 0x2126, 850},
                                          {0x2E80, 0xD7A3, 1050},   // East Asian
                                          {0xFDF0, 0xFDFD, 12000},  // phrases in one character
                                          {0x12000, 0x1254F, 6000}}};
constexpr int kWidest = 1400;

/// The pixels of an em in a label.
constexpr int kLetterSize = 13;

int paper_width(std::string_view text) {
  std::int64_t width = 0;
  for (std::size_t at = 0; at < text.size();) {
    const std::uint32_t character = next_character(text, at);
    const bool plain = character >= 0x20 && character < 0x7F;
    width += plain ? kAscii.at(character - 0x20) : width_in(kOnPaper, character, kWidest);
  }
  constexpr std::int64_t kLongest = 1'000'000;
  return static_cast<int>(std::min(kLongest, (width * kLetterSize + kEm - 1) / kEm));
}

int terminal_width(std::string_view text) {
  int width = 0;
  for (std::size_t at = 0; at < text.size();) {
    width += static_cast<int>(columns_of(next_character(text, at)));
  }
  return width;
}

}  // namespace

const Sizes& paper_sizes() {
  static constexpr Sizes kSizes{kBodyLength, kBodyLength, kBodyBreadth, 18,         kLineHeight,
                                6,           10,          true,         paper_width};
  return kSizes;
}

const Sizes& terminal_sizes() {
  static constexpr Sizes kSizes{5, 3, 3, 1, 1, 1, 1, false, terminal_width};
  return kSizes;
}

}  // namespace ohmfold::drawing
