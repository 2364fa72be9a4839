// Text within LaTeX: what would be read as a command, a ligature or a fault becomes what it looks
// like.
#include "drawing/latex.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "drawing/characters.h"
#include "drawing/names.h"

namespace ohmfold::drawing {

namespace {

struct Spelling {
  std::uint32_t character;
  std::string_view latex;
};

// The typewriter face has an upright double quote in every encoding; the usual one has none. '[',
// ']' and '*' are hidden from commands that look for an optional argument or a star.
constexpr std::array<Spelling, 19> kPlain{{{'\\', R"(\textbackslash{})"},
                                           {'{', R"(\{)"},
                                           {'}', R"(\})"},
                                           {'$', R"(\$)"},
                                           {'&', R"(\&)"},
                                           {'#', R"(\#)"},
                                           {'%', R"(\%)"},
                                           {'_', R"(\_)"},
                                           {'^', R"(\textasciicircum{})"},
                                           {'~', R"(\textasciitilde{})"},
                                           {'<', R"(\textless{})"},
                                           {'>', R"(\textgreater{})"},
                                           {'|', R"(\textbar{})"},
                                           {'"', R"({\ttfamily\char34})"},
                                           {'`', R"(\textasciigrave{})"},
                                           {'[', R"({[})"},
                                           {']', R"({]})"},
                                           {'*', R"({*})"},
                                           {0xA0, "~"}}};

constexpr std::array<Spelling, 75> kBeyondAscii{{{0xAB, R"(\ensuremath{\ll})"},
                                                 {0xB5, R"(\textmu{})"},
                                                 {0xBB, R"(\ensuremath{\gg})"},
                                                 {0xB7, R"(\textperiodcentered{})"},
                                                 {0xD7, R"(\texttimes{})"},
                                                 {0x393, R"(\ensuremath{\Gamma})"},
                                                 {0x394, R"(\ensuremath{\Delta})"},
                                                 {0x398, R"(\ensuremath{\Theta})"},
                                                 {0x39B, R"(\ensuremath{\Lambda})"},
                                                 {0x39E, R"(\ensuremath{\Xi})"},
                                                 {0x3A0, R"(\ensuremath{\Pi})"},
                                                 {0x3A3, R"(\ensuremath{\Sigma})"},
                                                 {0x3A6, R"(\ensuremath{\Phi})"},
                                                 {0x3A8, R"(\ensuremath{\Psi})"},
                                                 {0x3A9, R"(\ensuremath{\Omega})"},
                                                 {0x3B1, R"(\ensuremath{\alpha})"},
                                                 {0x3B2, R"(\ensuremath{\beta})"},
                                                 {0x3B3, R"(\ensuremath{\gamma})"},
                                                 {0x3B4, R"(\ensuremath{\delta})"},
                                                 {0x3B5, R"(\ensuremath{\varepsilon})"},
                                                 {0x3B6, R"(\ensuremath{\zeta})"},
                                                 {0x3B7, R"(\ensuremath{\eta})"},
                                                 {0x3B8, R"(\ensuremath{\theta})"},
                                                 {0x3B9, R"(\ensuremath{\iota})"},
                                                 {0x3BA, R"(\ensuremath{\kappa})"},
                                                 {0x3BB, R"(\ensuremath{\lambda})"},
                                                 {0x3BC, R"(\textmu{})"},
                                                 {0x3BD, R"(\ensuremath{\nu})"},
                                                 {0x3BE, R"(\ensuremath{\xi})"},
                                                 {0x3C0, R"(\ensuremath{\pi})"},
                                                 {0x3C1, R"(\ensuremath{\rho})"},
                                                 {0x3C3, R"(\ensuremath{\sigma})"},
                                                 {0x3C4, R"(\ensuremath{\tau})"},
                                                 {0x3C5, R"(\ensuremath{\upsilon})"},
                                                 {0x3C6, R"(\ensuremath{\varphi})"},
                                                 {0x3C7, R"(\ensuremath{\chi})"},
                                                 {0x3C8, R"(\ensuremath{\psi})"},
                                                 {0x3C9, R"(\ensuremath{\omega})"},
                                                 {0x2070, R"(\textsuperscript{0})"},
                                                 {0x2074, R"(\textsuperscript{4})"},
                                                 {0x2075, R"(\textsuperscript{5})"},
                                                 {0x2076, R"(\textsuperscript{6})"},
                                                 {0x2077, R"(\textsuperscript{7})"},
                                                 {0x2078, R"(\textsuperscript{8})"},
                                                 {0x2079, R"(\textsuperscript{9})"},
                                                 {0x207B, R"(\textsuperscript{\ensuremath{-}})"},
                                                 {0x2080, R"(\textsubscript{0})"},
                                                 {0x2081, R"(\textsubscript{1})"},
                                                 {0x2082, R"(\textsubscript{2})"},
                                                 {0x2083, R"(\textsubscript{3})"},
                                                 {0x2084, R"(\textsubscript{4})"},
                                                 {0x2085, R"(\textsubscript{5})"},
                                                 {0x2086, R"(\textsubscript{6})"},
                                                 {0x2087, R"(\textsubscript{7})"},
                                                 {0x2088, R"(\textsubscript{8})"},
                                                 {0x2089, R"(\textsubscript{9})"},
                                                 {0x2126, R"(\ensuremath{\Omega})"},
                                                 {0x2190, R"(\ensuremath{\leftarrow})"},
                                                 {0x2191, R"(\ensuremath{\uparrow})"},
                                                 {0x2192, R"(\ensuremath{\rightarrow})"},
                                                 {0x2193, R"(\ensuremath{\downarrow})"},
                                                 {0x21D2, R"(\ensuremath{\Rightarrow})"},
                                                 {0x2208, R"(\ensuremath{\in})"},
                                                 {0x2211, R"(\ensuremath{\sum})"},
                                                 {0x2212, R"(\ensuremath{-})"},
                                                 {0x221A, R"(\ensuremath{\surd})"},
                                                 {0x221E, R"(\ensuremath{\infty})"},
                                                 {0x2220, R"(\ensuremath{\angle})"},
                                                 {0x2225, R"(\ensuremath{\parallel})"},
                                                 {0x2248, R"(\ensuremath{\approx})"},
                                                 {0x2260, R"(\ensuremath{\neq})"},
                                                 {0x2261, R"(\ensuremath{\equiv})"},
                                                 {0x2264, R"(\ensuremath{\leq})"},
                                                 {0x2265, R"(\ensuremath{\geq})"},
                                                 {0x22C5, R"(\ensuremath{\cdot})"}}};

struct Range {
  std::uint32_t first, last;
};

// What pdfLaTeX of TeX Live 2022 sets as UTF-8 without any package, in its old and its newer
// encoding of fonts alike; found by trying each up to U+017F and from U+2010 to U+205F.
constexpr std::array<Range, 24> kPassing{
    {{0xA1, 0xAA},     {0xAC, 0xAC},     {0xAE, 0xBA},     {0xBC, 0xCF},     {0xD1, 0xDD},
     {0xDF, 0xEF},     {0xF1, 0xFD},     {0xFF, 0x103},    {0x106, 0x10F},   {0x112, 0x117},
     {0x11A, 0x125},   {0x128, 0x12D},   {0x130, 0x137},   {0x139, 0x13E},   {0x141, 0x148},
     {0x14C, 0x165},   {0x168, 0x171},   {0x174, 0x17E},   {0x2010, 0x2016}, {0x2018, 0x2019},
     {0x201C, 0x201D}, {0x2020, 0x2022}, {0x2026, 0x2026}, {0x2030, 0x2031}}};

template <std::size_t N>
std::string_view spelling(std::uint32_t character, const std::array<Spelling, N>& spellings) {
  const auto found = std::find_if(spellings.begin(), spellings.end(),
                                  [&](const Spelling& s) { return s.character == character; });
  return found == spellings.end() ? std::string_view() : found->latex;
}

bool passes(std::uint32_t character) {
  if (character >= 0x20 && character < 0x7F) return true;
  return std::any_of(kPassing.begin(), kPassing.end(), [&](const Range& range) {
    return character >= range.first && character <= range.last;
  });
}

std::string stand_in(std::uint32_t character) {
  constexpr std::string_view kDigits = "0123456789ABCDEF";
  std::string digits;
  for (std::uint32_t rest = character; rest > 0 || digits.size() < 4; rest /= 16) {
    digits.insert(digits.begin(), kDigits[rest % 16]);
  }
  return "{[}U+" + digits + "{]}";
}

/// Two of these beside each other would be set as another character.
bool joins(char c) {
  return c == '-' || c == '\'' || c == ',';
}

}  // namespace

std::string latex_text(std::string_view text) {
  std::string written;
  written.reserve(text.size() + text.size() / 4);
  for (std::size_t at = 0; at < text.size();) {
    const std::size_t begin = at;
    const std::uint32_t character = next_character(text, at);
    if (character == '\n' || character == '\t' || character == '\r') {
      written += ' ';
      continue;
    }
    std::string_view latex = spelling(character, kPlain);
    if (latex.empty() && character >= 0x80) latex = spelling(character, kBeyondAscii);
    if (!latex.empty()) {
      written += latex;
    } else if (!passes(character)) {
      written += stand_in(character);
    } else {
      if (character < 0x80 && joins(text[begin]) && written.ends_with(text[begin])) written += "{}";
      written += text.substr(begin, at - begin);
    }
  }
  return written;
}

std::string latex_name(std::string_view name) {
  const auto [stem, digits] = split_name(name);
  std::string written = latex_text(stem);
  if (!digits.empty()) written += "\\textsubscript{" + latex_text(digits) + "}";
  return written;
}

}  // namespace ohmfold::drawing
