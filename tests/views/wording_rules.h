// What every wording for a person keeps to: short, named, without blame and jargon.
#pragma once

#include <algorithm>
#include <array>
#include <iterator>
#include <regex>
#include <string>

namespace ohmfold::test {

/// What a wording has to keep to beyond what all do.
struct Kept {
  bool names_something = false;  ///< a part or a point
  bool holds_no_value = false;
};

/// Words that judge the person, and words of no first-year course.
inline constexpr std::array kUnwanted{
    "you forgot", "you should",  "you did",   "wrong",        "mistake", "fail",      "bad ",
    "careless",   "obvious",     "simply",    "just ",        "stupid",  "of course", "must not",
    "topology",   "admittance",  "impedance", "degenerate",   "matrix",  "merge",     "invalid",
    "operand",    "contraction", "incidence", "terminal pair"};

inline std::size_t letters_in(const std::string& text) {
  return static_cast<std::size_t>(std::count_if(text.begin(), text.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
  }));
}

inline std::size_t sentences_in(const std::string& text) {
  static const std::regex kEnd("[.?](?= |$)");
  return static_cast<std::size_t>(
      std::distance(std::sregex_iterator(text.begin(), text.end(), kEnd), std::sregex_iterator()));
}

/// What is wrong with a wording; empty where it keeps to all.
inline std::string objection(const std::string& text, const Kept& kept) {
  constexpr std::size_t kMostLetters = 240;
  if (text.empty()) return "nothing is said";
  if (!text.ends_with('.') && !text.ends_with('?')) return "no full stop";
  if (text.front() >= 'a' && text.front() <= 'z') return "begins with a small letter";
  if (letters_in(text) > kMostLetters) return "too long: " + std::to_string(letters_in(text));
  const std::size_t sentences = sentences_in(text);
  if (sentences < 1 || sentences > 3) return std::to_string(sentences) + " sentences";
  if (text.find("  ") != std::string::npos || text.find("..") != std::string::npos ||
      text.find(" .") != std::string::npos || text.find(":.") != std::string::npos) {
    return "spaces or stops";
  }
  if (text.find("this part") != std::string::npos && kept.names_something) return "an unnamed part";
  for (const char* word : kUnwanted) {
    if (text.find(word) != std::string::npos) return std::string("says ") + word;
  }
  static const std::regex kName("\\b([RESNM][0-9]*|R[0-9]+|[A-G]|[Ll]ines? [0-9]+)\\b");
  if (kept.names_something && !std::regex_search(text, kName)) return "names nothing";
  static const std::regex kValue("[0-9] ([kmM]?Ω|[kmM]?[VAW]\\b)|= *[0-9]");
  if (kept.holds_no_value && std::regex_search(text, kValue)) return "holds a value";
  return "";
}

}  // namespace ohmfold::test
