// Sentences in typed pieces, so that every writer can set names, symbols and values in its own way.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "ohmfold/decimal.h"
#include "ohmfold/value.h"

namespace ohmfold::views {

struct Plain {
  std::string text;
};
struct PartName {
  std::string text;
};
struct PointName {
  std::string text;
};

/// A letter with what it is of: I and "R1" for the current through R1. A part's own name stands for
/// its value (R12, E) and has no subscript.
struct Symbol {
  std::string letter;
  std::string subscript;
};

/// How an amount is shown.
enum class Form {
  given,    ///< as a decimal wherever it ends: 4.7 Ω
  compact,  ///< as a decimal where it ends within the figures, otherwise as a fraction
  exact,    ///< whole number or fraction: 18/5 Ω
  decimal   ///< rounded, with an SI prefix; without trailing zeros where it is exact
};

struct Amount {
  Quantity quantity;
  Form form = Form::exact;
  int figures = 3;
};

using Run = std::variant<Plain, PartName, PointName, Symbol, Amount>;

/// A phrase, a sentence or a paragraph.
class Words {
 public:
  Words() = default;

  void add(std::string_view text);
  void add(const Run& run) { runs_.push_back(run); }
  void add(const Words& words);

  [[nodiscard]] bool empty() const { return runs_.empty(); }
  [[nodiscard]] const std::vector<Run>& runs() const { return runs_; }
  /// The same with its first letter in upper case, where it begins with plain text.
  [[nodiscard]] Words capitalised() const;

 private:
  std::vector<Run> runs_;
};

/// The pieces one after the other: say("only ", part, " is left").
template <class... Pieces>
[[nodiscard]] Words say(const Pieces&... pieces) {
  Words words;
  (words.add(pieces), ...);
  return words;
}

/// A phrase as a sentence: first letter in upper case, full stop at the end.
[[nodiscard]] Words sentence(const Words& phrase);

/// "a", "a and b", "a, b and c"; of more than `most` phrases the middle ones are left out ("…").
[[nodiscard]] Words listed(const std::vector<Words>& phrases, std::size_t most = 12);

/// The name of a symbol on one line: "I_R1", "R12".
[[nodiscard]] std::string symbol_text(const Symbol& symbol);

/// An amount on one line. The space between number and unit is U+00A0, so that no line breaks
/// there.
[[nodiscard]] std::string amount_text(const Amount& amount, Letters letters);

/// "three", …; from ten on in digits. Requires a count of 0 or more.
[[nodiscard]] std::string count_word(int count);

/// The exact value, and the decimal where that says more: "15/8 A ≈ 1.88 A", "6 Ω".
[[nodiscard]] Words value_words(const Quantity& quantity, int figures);

/// The words on one line, still with U+00A0 inside amounts.
[[nodiscard]] std::string line_text(const Words& words, Letters letters);

/// The words as plain text for other programs: ordinary spaces only.
[[nodiscard]] std::string plain_text(const Words& words, Letters letters = Letters::unicode);

}  // namespace ohmfold::views
