// What the numbers of SVG mean: transforms, shapes, and how wide a text is.
#pragma once

#include <cmath>
#include <cstdlib>
#include <numbers>
#include <string>
#include <string_view>
#include <vector>

#include "support/plane.h"
#include "support/xml.h"

namespace ohmfold::support {

/// The least width of a letter in em, in a wide sans-serif face. A letter is told by its first byte
/// in UTF-8, or by its code where that matters.
inline double letter_width(std::string_view letter) {
  const auto first = static_cast<unsigned char>(letter.front());
  if ((first == 0xCC || first == 0xCD) && letter.size() == 2) return 0;  // combining, U+0300 …
  if (letter.size() >= 3 && first >= 0xE3) return 1;                     // as wide as high
  if (letter == "Ω" || letter == "m" || letter == "M" || letter == "W" || letter == "w") return 0.8;
  if (std::string_view(" .,:;'|ilj").find(letter) != std::string_view::npos) return 0.28;
  return 0.56;
}
inline double text_width(std::string_view text) {
  double width = 0;
  for (std::size_t at = 0; at < text.size();) {
    std::size_t end = at + 1;
    while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) ++end;
    width += letter_width(text.substr(at, end - at));
    at = end;
  }
  return width;
}

inline std::vector<double> numbers(std::string_view text) {
  std::vector<double> found;
  const std::string ended(text);
  for (const char* at = ended.c_str(); *at != 0;) {
    char* end = nullptr;
    const double value = std::strtod(at, &end);
    if (end == at) {
      ++at;
    } else {
      found.push_back(value);
      at = end;
    }
  }
  return found;
}

struct PathCommand {
  char letter;
  std::vector<double> numbers;
};
inline std::vector<PathCommand> commands_of(std::string_view data) {
  constexpr std::string_view kLetters = "MmLlHhVvCcSsQqTtAaZz";
  std::vector<PathCommand> commands;
  std::size_t at = data.find_first_of(kLetters);
  while (at != std::string_view::npos) {
    const std::size_t next = data.find_first_of(kLetters, at + 1);
    commands.push_back({data[at], numbers(data.substr(at + 1, next - at - 1))});
    at = next;
  }
  return commands;
}

inline double number(const XmlNode& node, std::string_view key, double missing = 0) {
  const std::vector<double> found = numbers(node[key]);
  return found.empty() ? missing : found.front();
}

/// As SVG writes a matrix: x' = a x + c y + e, y' = b x + d y + f.
struct SvgMatrix {
  double a = 1, b = 0, c = 0, d = 1, e = 0, f = 0;

  [[nodiscard]] Vec of(Vec v) const { return {a * v.x + c * v.y + e, b * v.x + d * v.y + f}; }
  friend SvgMatrix operator*(const SvgMatrix& m, const SvgMatrix& n) {
    return {m.a * n.a + m.c * n.b, m.b * n.a + m.d * n.b,       m.a * n.c + m.c * n.d,
            m.b * n.c + m.d * n.d, m.a * n.e + m.c * n.f + m.e, m.b * n.e + m.d * n.f + m.f};
  }
};
inline SvgMatrix matrix_of(std::string_view text) {
  SvgMatrix all;
  for (std::size_t at = text.find_first_not_of(" ,"); at != std::string_view::npos;
       at = text.find_first_not_of(" ,", at)) {
    const std::size_t open = text.find('(', at);
    const std::size_t close = text.find(')', at);
    if (open > close || close == std::string_view::npos) throw XmlFault("an unknown transform");
    const std::string name(text.substr(at, open - at));
    std::vector<double> n = numbers(text.substr(open + 1, close - open - 1));
    at = close + 1;
    n.resize(6);
    if (name == "matrix") {
      all = all * SvgMatrix{n[0], n[1], n[2], n[3], n[4], n[5]};
    } else if (name == "translate") {
      all = all * SvgMatrix{1, 0, 0, 1, n[0], n[1]};
    } else if (name == "scale") {
      all = all * SvgMatrix{n[0], 0, 0, n[1] == 0 ? n[0] : n[1], 0, 0};
    } else if (name == "rotate") {
      const double angle = n[0] * std::numbers::pi / 180;
      const double c = std::cos(angle);
      const double s = std::sin(angle);
      all = all * SvgMatrix{1, 0, 0, 1, n[1], n[2]} * SvgMatrix{c, s, -s, c, 0, 0} *
            SvgMatrix{1, 0, 0, 1, -n[1], -n[2]};
    } else {
      throw XmlFault("an unknown transform " + name);
    }
  }
  return all;
}

inline std::vector<Vec> spots_of_path(const std::string& data) {
  std::vector<Vec> spots;
  Vec at;
  for (const auto& [command, n] : commands_of(data)) {
    const bool relative = command >= 'a';
    const char kind = static_cast<char>(relative ? command - 'a' + 'A' : command);
    const std::size_t each = kind == 'H' || kind == 'V'   ? 1
                             : kind == 'C'                ? 6
                             : kind == 'S' || kind == 'Q' ? 4
                             : kind == 'A'                ? 7
                                                          : 2;
    for (std::size_t k = 0; kind != 'Z' && k + each <= n.size(); k += each) {
      const Vec base = relative ? at : Vec{};
      if (kind == 'H') {
        at.x = base.x + n[k];
      } else if (kind == 'V') {
        at.y = base.y + n[k];
      } else {
        for (std::size_t i = kind == 'A' ? 5 : 0; i + 2 < each; i += 2) {
          spots.push_back(base + Vec{n[k + i], n[k + i + 1]});
        }
        at = base + Vec{n[k + each - 2], n[k + each - 1]};
      }
      spots.push_back(at);
    }
  }
  return spots;
}

/// Corners of a box round any shape, as far as they can be told; in its own coordinates.
inline std::vector<Vec> spots_of(const XmlNode& node) {
  const auto value = [&node](std::string_view key) { return number(node, key); };
  const auto box = [](double x, double y, double across, double down) {
    return std::vector<Vec>{{x, y}, {x + across, y}, {x + across, y + down}, {x, y + down}};
  };
  if (node.name == "rect") return box(value("x"), value("y"), value("width"), value("height"));
  if (node.name == "line") return {{value("x1"), value("y1")}, {value("x2"), value("y2")}};
  if (node.name == "circle" || node.name == "ellipse") {
    const double rx = node.name == "circle" ? value("r") : value("rx");
    const double ry = node.name == "circle" ? value("r") : value("ry");
    return box(value("cx") - rx, value("cy") - ry, 2 * rx, 2 * ry);
  }
  std::vector<Vec> spots;
  if (node.name == "polyline" || node.name == "polygon") {
    const std::vector<double> n = numbers(node["points"]);
    for (std::size_t i = 0; i + 1 < n.size(); i += 2) spots.push_back({n[i], n[i + 1]});
  }
  if (node.name == "path") return spots_of_path(node["d"]);
  return spots;
}

}  // namespace ohmfold::support
