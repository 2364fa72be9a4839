// A sheet of character cells.
#include "drawing/box_canvas.h"

#include <algorithm>
#include <array>
#include <utility>

#include "drawing/characters.h"

namespace ohmfold::drawing {

namespace {

constexpr std::uint8_t kUp = 1;
constexpr std::uint8_t kRight = 2;
constexpr std::uint8_t kDown = 4;
constexpr std::uint8_t kLeft = 8;
constexpr std::uint8_t kPassing = 16;
constexpr std::uint32_t kSecondHalf = 1;

/// What stands for a character beyond ASCII; the same as in running text.
std::string_view ascii_for(std::uint32_t character) {
  using Pair = std::pair<std::uint32_t, std::string_view>;
  constexpr std::array<Pair, 22> kPairs{
      {{0x3A9, "ohm"},  {0x2126, "ohm"}, {0xB5, "u"},   {0x3BC, "u"},  {0x2225, "||"},
       {0x2248, "~"},   {0x2212, "-"},   {0xB7, "*"},   {0xD7, "x"},   {0x2192, "->"},
       {0x2026, "..."}, {0x2013, "-"},   {0x2014, "-"}, {0x2018, "'"}, {0x2019, "'"},
       {0x201C, "\""},  {0x201D, "\""},  {0xB2, "^2"},  {0xB1, "+-"},  {0x221A, "sqrt "},
       {0xA0, " "},     {0xBD, "1/2"}}};
  const auto* const found = std::find_if(kPairs.begin(), kPairs.end(),
                                         [&](const Pair& p) { return p.first == character; });
  return found == kPairs.end() ? "?" : found->second;
}

/// One character as it is written, with its columns; marks without a width stand by themselves.
struct Written {
  std::string text;
  int columns = 0;
};

std::vector<Written> written_characters(std::string_view text, Letters letters) {
  std::vector<Written> found;
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = at;
    const std::uint32_t character = next_character(text, at);
    if (is_control(character)) {
      found.push_back({"?", 1});
    } else if (character == 0xA0) {
      found.push_back({" ", 1});
    } else if (letters == Letters::ascii && character >= 0x80) {
      for (const char c : ascii_for(character)) found.push_back({std::string(1, c), 1});
    } else if (character == 0xFFFD) {
      found.push_back({"\uFFFD", 1});
    } else {
      found.push_back(
          {std::string(text.substr(begin, at - begin)), static_cast<int>(columns_of(character))});
    }
  }
  return found;
}

std::string_view colour_of(Mark mark) {
  switch (mark) {
    case Mark::next:
      return "\033[1;34m";
    case Mark::came:
      return "\033[1;31m";
    case Mark::none:
      break;
  }
  return "\033[0m";
}

}  // namespace

BoxCanvas::BoxCanvas(int columns, int lines, Letters letters)
    : columns_(columns),
      lines_(lines),
      letters_(letters),
      cells_(static_cast<std::size_t>(columns) * static_cast<std::size_t>(lines)),
      texts_(2) {}

BoxCanvas::Cell* BoxCanvas::cell(Spot at) {
  if (at.x < 0 || at.y < 0 || at.x >= columns_ || at.y >= lines_) return nullptr;
  return &cells_[static_cast<std::size_t>(at.y) * static_cast<std::size_t>(columns_) +
                 static_cast<std::size_t>(at.x)];
}

void BoxCanvas::line(Spot from, Spot to) {
  if (from.x != to.x && from.y != to.y) return;
  if (to < from) std::swap(from, to);
  const bool lies = from.y == to.y;
  const Spot step = lies ? Spot{1, 0} : Spot{0, 1};
  for (Spot at = from; at != to; at = at + step) {
    if (Cell* here = cell(at)) here->sides |= lies ? kRight : kDown;
    if (Cell* next = cell(at + step)) next->sides |= lies ? kLeft : kUp;
  }
}

void BoxCanvas::pass(Spot at) {
  if (Cell* here = cell(at)) here->sides |= kPassing;
}

void BoxCanvas::clear(Spot at) {
  if (Cell* here = cell(at)) *here = {};
}

void BoxCanvas::write(Spot at, std::string_view text, Mark mark) {
  Cell* last = nullptr;
  for (Written& character : written_characters(text, letters_)) {
    if (character.columns == 0) {
      if (last != nullptr) texts_[last->text] += character.text;
      continue;
    }
    last = cell(at);
    if (last != nullptr) {
      texts_.push_back(std::move(character.text));
      last->text = static_cast<std::uint32_t>(texts_.size() - 1);
      last->mark = mark;
    }
    if (character.columns == 2) {
      if (Cell* second = cell(at + Spot{1, 0})) second->text = kSecondHalf;
    }
    at.x += character.columns;
  }
}

std::string_view BoxCanvas::joint(std::uint8_t sides) const {
  constexpr std::array<std::string_view, 16> kBox{" ", "│", "─", "└", "│", "│", "┌", "├",
                                                  "─", "┘", "─", "┴", "┐", "┤", "┬", "┼"};
  constexpr std::array<std::string_view, 16> kAscii{" ", "|", "-", "+", "|", "|", "+", "+",
                                                    "-", "+", "-", "+", "+", "+", "+", "+"};
  if ((sides & kPassing) != 0) return ")";
  return letters_ == Letters::unicode ? kBox[sides] : kAscii[sides];
}

std::string BoxCanvas::row(std::size_t index, bool colour) const {
  std::string written;
  std::size_t spaces = 0;
  Mark mark = Mark::none;
  const auto change = [&](Mark to) {
    if (colour && mark != to) written += colour_of(to);
    mark = to;
  };
  for (std::size_t column = 0; column < static_cast<std::size_t>(columns_); ++column) {
    const Cell& here = cells_[index * static_cast<std::size_t>(columns_) + column];
    if (here.text == kSecondHalf) continue;
    const std::string_view text =
        here.text != 0 ? std::string_view(texts_[here.text]) : joint(here.sides);
    if (text == " ") {
      ++spaces;
      continue;
    }
    // Spaces are written plain, and only once something follows them.
    if (spaces > 0) change(Mark::none);
    written.append(std::exchange(spaces, 0), ' ');
    change(here.mark);
    written += text;
  }
  change(Mark::none);
  return written;
}

std::string BoxCanvas::rows(bool colour) const {
  std::string written;
  std::size_t empty = 0;
  for (std::size_t index = 0; index < static_cast<std::size_t>(lines_); ++index) {
    const std::string next = row(index, colour);
    if (next.empty()) {
      ++empty;
      continue;
    }
    if (!written.empty()) written.append(empty, '\n');
    empty = 0;
    written += next + '\n';
  }
  return written;
}

int columns_written(std::string_view text, Letters letters) {
  int columns = 0;
  for (const Written& character : written_characters(text, letters)) columns += character.columns;
  return columns;
}

}  // namespace ohmfold::drawing
