// The symbols of parts in character cells, row by row.
#include "drawing/box_symbols.h"

namespace ohmfold::drawing {

namespace {

/// Which way the second point is.
enum class Way { up, right, down, left };

Way way_of(Spot direction) {
  if (direction.y == 0) return direction.x < 0 ? Way::left : Way::right;
  return direction.y < 0 ? Way::up : Way::down;
}

struct Look {
  Way way{};
  bool unicode = true;
  bool doubled = false;

  [[nodiscard]] bool lies() const { return way == Way::left || way == Way::right; }
};

using Rows = std::vector<CellRow>;

Rows box(const Look& look) {
  if (look.unicode && look.lies()) {
    return look.doubled ? Rows{{-2, -1, "╔═══╗"}, {-2, 0, "╢___╟"}, {-2, 1, "╚═══╝"}}
                        : Rows{{-2, -1, "┌───┐"}, {-2, 0, "┤___├"}, {-2, 1, "└───┘"}};
  }
  if (look.unicode) {
    return look.doubled ? Rows{{-1, -1, "╔╧╗"}, {-1, 0, "║_║"}, {-1, 1, "╚╤╝"}}
                        : Rows{{-1, -1, "┌┴┐"}, {-1, 0, "│_│"}, {-1, 1, "└┬┘"}};
  }
  if (look.lies()) return {{-2, 0, look.doubled ? "[###]" : "[===]"}};
  return look.doubled ? Rows{{-1, -1, "###"}, {-1, 0, "#_#"}, {-1, 1, "###"}}
                      : Rows{{-1, -1, ".-."}, {-1, 0, "|_|"}, {-1, 1, "'-'"}};
}

/// Doubled, two lines beside each other.
Rows zigzag(const Look& look) {
  if (look.lies()) {
    return look.doubled ? Rows{{-2, 0, R"(\/\/\)"}, {-2, 1, R"(\/\/\)"}} : Rows{{-2, 0, "/\\/\\/"}};
  }
  return look.doubled ? Rows{{-1, -1, ">>"}, {-1, 0, "<<"}, {-1, 1, ">>"}}
                      : Rows{{0, -1, ">"}, {0, 0, "<"}, {0, 1, ">"}};
}

/// A letter in a circle, which is as wide as the double line of one that has come.
Rows round(std::string_view once, std::string_view boxed, std::string_view hashed,
           const Look& look) {
  if (!look.doubled) return {{-1, 0, once}};
  return {{-1, 0, look.unicode ? boxed : hashed}};
}

Rows current_source(const Look& look) {
  switch (look.way) {
    case Way::up:
      return round(look.unicode ? "(↑)" : "(^)", "║↑║", "#^#", look);
    case Way::down:
      return round(look.unicode ? "(↓)" : "(v)", "║↓║", "#v#", look);
    case Way::left:
      return round(look.unicode ? "(←)" : "(<)", "║←║", "#<#", look);
    case Way::right:
      break;
  }
  return round(look.unicode ? "(→)" : "(>)", "║→║", "#>#", look);
}

/// The long plate is the positive one, at the second point; both plates have a sign beside them.
Rows box_battery(const Look& look) {
  const bool doubled = look.doubled;
  switch (look.way) {
    case Way::up:
      return {{1, -2, "+"},
              {-1, -1, doubled ? "═╧═" : "─┴─"},
              {-1, 0, doubled ? " ╤ " : "╺┯╸"},
              {1, 1, "−"}};
    case Way::down:
      return {{1, -2, "−"},
              {-1, -1, doubled ? " ╧ " : "╺┷╸"},
              {-1, 0, doubled ? "═╤═" : "─┬─"},
              {1, 1, "+"}};
    case Way::left:
      return {{-1, -1, doubled ? "+║ −" : "+│ −"},
              {0, 0, doubled ? "╢╟" : "┤┠"},
              {0, 1, doubled ? "║" : "│"}};
    case Way::right:
      break;
  }
  return {{-2, -1, doubled ? "− ║+" : "− │+"},
          {-1, 0, doubled ? "╢╟" : "┨├"},
          {0, 1, doubled ? "║" : "│"}};
}

Rows plain_battery(const Look& look) {
  const std::string_view lying = look.doubled ? "###" : "---";
  const std::string_view upright = look.doubled ? "#" : "|";
  switch (look.way) {
    case Way::up:
      return {{1, -2, "+"}, {-1, -1, lying}, {0, 0, "="}, {1, 1, "-"}};
    case Way::down:
      return {{1, -2, "-"}, {0, -1, "="}, {-1, 0, lying}, {1, 1, "+"}};
    case Way::left:
      return {{-1, -1, "+"},   {0, -1, upright}, {2, -1, "-"},
              {0, 0, upright}, {1, 0, "I"},      {0, 1, upright}};
    case Way::right:
      break;
  }
  return {{-2, -1, "-"}, {0, -1, upright}, {1, -1, "+"},
          {-1, 0, "I"},  {0, 0, upright},  {0, 1, upright}};
}

/// The blade of an open one is lifted off the gap.
Rows contacts(const Look& look, bool is_open) {
  if (look.lies()) {
    if (!is_open) return {{-2, 0, look.unicode ? "○───○" : "o---o"}};
    if (look.way == Way::right) return {{-2, 0, look.unicode ? "○/__○" : "o/__o"}};
    return {{-2, 0, look.unicode ? "○__\\○" : "o__\\o"}};
  }
  const std::string_view ring = look.unicode ? "○" : "o";
  if (!is_open) return {{0, -1, ring}, {0, 0, look.unicode ? "│" : "|"}, {0, 1, ring}};
  return {{0, -1, ring}, {0, 0, look.way == Way::up ? "_/" : "_\\"}, {0, 1, ring}};
}

}  // namespace

std::vector<CellRow> cell_symbol(SymbolKind kind, Spot direction, SymbolSet set, Letters letters,
                                 bool doubled) {
  const Look look{way_of(direction), letters == Letters::unicode, doubled};
  switch (kind) {
    case SymbolKind::resistor:
      return set == SymbolSet::rectangle ? box(look) : zigzag(look);
    case SymbolKind::lamp:
      return round("(X)", "║X║", "#X#", look);
    case SymbolKind::ammeter:
      return round("(A)", "║A║", "#A#", look);
    case SymbolKind::voltmeter:
      return round("(V)", "║V║", "#V#", look);
    case SymbolKind::battery:
      return look.unicode ? box_battery(look) : plain_battery(look);
    case SymbolKind::current_source:
      return current_source(look);
    case SymbolKind::open_switch:
      return contacts(look, true);
    case SymbolKind::closed_switch:
      return contacts(look, false);
    case SymbolKind::plain:
      break;
  }
  return {};
}

}  // namespace ohmfold::drawing
