// Resistances in the letter code of IEC 60062.
#include "views/letter_code.h"

#include "ohmfold/decimal.h"

namespace ohmfold::views {

namespace {

constexpr int kMostFigures = 4;

struct Letter {
  char letter;
  Number ohms;
};

/// The letter that stands for the decimal point; values below an ohm begin with theirs.
Letter letter_for(const Number& ohms) {
  const Number thousand(1000);
  Letter found{'R', Number(1)};
  for (const char letter : {'K', 'M', 'G', 'T'}) {
    if (ohms < found.ohms * thousand) break;
    found = {letter, found.ohms * thousand};
  }
  return found;
}

}  // namespace

std::optional<std::string> letter_code(const Number& ohms) {
  if (ohms.is_symbolic() || ohms * Number(1000) < Number(1)) return std::nullopt;
  const Letter unit = letter_for(ohms);
  const auto decimal = terminating_decimal(ohms / unit.ohms, kMostFigures);
  if (!decimal || decimal->find('e') != std::string::npos) return std::nullopt;
  std::string code = *decimal;
  const std::size_t point = code.find('.');
  if (point == std::string::npos) return code + unit.letter;
  code[point] = unit.letter;
  if (!code.starts_with('0')) return code;
  // R1 would read as the name of a part.
  constexpr std::size_t kShortest = 3;
  code.erase(0, 1);
  return code.size() < kShortest ? code + '0' : code;
}

Words resistance_words(const Number& ohms, int figures, Notation notation) {
  if (notation == Notation::letters) {
    if (const auto code = letter_code(ohms)) return say(*code);
  }
  return say(Amount{{ohms, Unit::ohm}, Form::given, figures});
}

}  // namespace ohmfold::views
