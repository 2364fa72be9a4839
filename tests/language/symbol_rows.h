// What is said of symbols and of values with symbols, to the last character.
#pragma once

#include <string>
#include <vector>

#include "ohmfold/source.h"

namespace ohmfold {

struct SymbolRow {
  DiagnosticKind kind;
  std::string input;  ///< after the two good lines of a circuit
  std::string expected;
};

inline const std::vector<SymbolRow>& symbol_rows() {
  using enum DiagnosticKind;
  static const std::vector<SymbolRow> kRows{
      {bad_symbol_name,
       "symbol k\n"
       "symbol R47\n"
       "symbol V\n"
       "symbol e3\n"
       "resistor R2 = 2 k from T to G\n",
       "a.circuit:3:8: error: 'k' cannot be a symbol: it reads as a prefix; choose another name\n"
       "    symbol k\n"
       "           ^\n"
       "a.circuit:4:8: error: 'R47' cannot be a symbol: it reads as a letter code for a "
       "resistance; choose another name\n"
       "    symbol R47\n"
       "           ^~~\n"
       "a.circuit:5:8: error: 'V' cannot be a symbol: it reads as a unit; choose another name\n"
       "    symbol V\n"
       "           ^\n"
       "a.circuit:6:8: error: 'e3' cannot be a symbol: it reads as the exponent of a number; "
       "choose another name\n"
       "    symbol e3\n"
       "           ^~\n"},
      {name_taken,
       "symbol R1\n"
       "resistor R2 = 2 R1 from T to G\n",
       "a.circuit:2:10: error: the name 'R1' is already taken; a part and a symbol need names of "
       "their own\n"
       "    resistor R1 = 4 ohm from T to G\n"
       "             ^~\n"
       "a.circuit:3:8: note: first here\n"
       "    symbol R1\n"
       "           ^~\n"},
      {given_twice,
       "symbol r\n"
       "symbol r\n"
       "resistor R2 = r from T to G\n",
       "a.circuit:4:8: error: the symbol 'r' is given a second time; once is enough\n"
       "    symbol r\n"
       "           ^\n"
       "a.circuit:3:8: note: first here\n"
       "    symbol r\n"
       "           ^\n"},
      {unknown_symbol,
       "symbol rho\n"
       "resistor R2 = 2 rhp from T to G\n"
       "resistor R3 = q from T to G\n"
       "resistor R4 = 4 ohmm from T to G\n"
       "resistor R5 = rho from T to G\n",
       "a.circuit:4:17: error: there is no symbol 'rhp'; did you mean 'rho'?\n"
       "    resistor R2 = 2 rhp from T to G\n"
       "                    ^~~\n"
       "a.circuit:5:15: error: there is no symbol 'q'; the only symbol is rho\n"
       "    resistor R3 = q from T to G\n"
       "                  ^\n"
       "a.circuit:6:17: error: 'ohmm' is not a unit; did you mean 'ohm'?\n"
       "    resistor R4 = 4 ohmm from T to G\n"
       "                    ^~~~\n"},
      {symbol_not_positive,
       "symbol r = 0 ohm\n"
       "symbol v = -3 V\n"
       "battery F = v internal r from T to G\n",
       "a.circuit:3:12: error: the value of 'r' is not positive; a symbol stands for a positive "
       "number\n"
       "    symbol r = 0 ohm\n"
       "               ^\n"
       "a.circuit:4:12: error: the value of 'v' is not positive; a symbol stands for a positive "
       "number\n"
       "    symbol v = -3 V\n"
       "               ^~\n"},
      {wrong_unit,
       "symbol r = 4 W\n"
       "resistor R2 = r from T to G\n",
       "a.circuit:3:14: error: 'W' is no unit of a resistance, voltage or current; the unit here "
       "is ohm, V or A\n"
       "    symbol r = 4 W\n"
       "                 ^\n"},
      {two_dimensions,
       "symbol r\n"
       "resistor R2 = r from T to G\n"
       "battery F = 2 r from G to T\n",
       "a.circuit:5:15: error: 'r' is a voltage here and a resistance elsewhere; declare a symbol "
       "for each of the two\n"
       "    battery F = 2 r from G to T\n"
       "                  ^\n"
       "a.circuit:4:15: note: first here\n"
       "    resistor R2 = r from T to G\n"
       "                  ^\n"},
      {two_dimensions,
       "symbol r = 4 V\n"
       "case \"a\": R1 = 2 r\n",
       "a.circuit:4:18: error: 'r' is a resistance here and a voltage elsewhere; declare a symbol "
       "for each of the two\n"
       "    case \"a\": R1 = 2 r\n"
       "                     ^\n"
       "a.circuit:3:12: note: first here\n"
       "    symbol r = 4 V\n"
       "               ^\n"},
      {product_of_symbols,
       "symbol r\n"
       "symbol s\n"
       "resistor R2 = r s from T to G\n"
       "resistor R3 = 2 r^2 from T to G\n"
       "resistor R4 = 3/r from T to G\n"
       "resistor R5 = r/s from T to G\n",
       "a.circuit:5:17: error: a value is a sum of multiples such as 2 r, without products, powers "
       "or quotients of symbols\n"
       "    resistor R2 = r s from T to G\n"
       "                    ^\n"
       "a.circuit:6:18: error: a value is a sum of multiples such as 2 r, without products, powers "
       "or quotients of symbols\n"
       "    resistor R3 = 2 r^2 from T to G\n"
       "                     ^\n"
       "a.circuit:7:16: error: a value is a sum of multiples such as 2 r, without products, powers "
       "or quotients of symbols\n"
       "    resistor R4 = 3/r from T to G\n"
       "                   ^\n"
       "a.circuit:8:17: error: a value is a sum of multiples such as 2 r, without products, powers "
       "or quotients of symbols\n"
       "    resistor R5 = r/s from T to G\n"
       "                    ^\n"},
      {too_many_symbols,
       "symbol r1\n"
       "symbol r2\n"
       "symbol r3\n"
       "symbol r4\n"
       "symbol r5\n"
       "symbol r6\n"
       "symbol r7\n"
       "symbol r8\n"
       "symbol r9\n"
       "symbol r10\n"
       "symbol r11\n"
       "symbol r12\n"
       "symbol r13\n"
       "resistor R2 = r1 + r2 + r3 + r4 + r5 + r6 + r7 + r8 + r9 + r10 + r11 + r12 + r13 from T to "
       "G\n",
       "a.circuit:16:78: error: this value has more than 12 symbols\n"
       "    ...6 + r7 + r8 + r9 + r10 + r11 + r12 + r13 from T to G\n"
       "                                            ^~~\n"},
      {value_not_positive,
       "symbol r\n"
       "resistor R2 = r - r from T to G\n"
       "resistor R3 = -2 r from T to G\n"
       "resistor R4 = r - 3 ohm from T to G\n",
       "a.circuit:4:15: error: this value is not positive for every positive r\n"
       "    resistor R2 = r - r from T to G\n"
       "                  ^~~~~\n"
       "a.circuit:5:15: error: this value is not positive for every positive r\n"
       "    resistor R3 = -2 r from T to G\n"
       "                  ^~~~\n"
       "a.circuit:6:15: error: this value is not positive for every positive r\n"
       "    resistor R4 = r - 3 ohm from T to G\n"
       "                  ^~~~~~~~~\n"},
      {division_by_zero,
       "symbol r\n"
       "resistor R2 = r/0 from T to G\n",
       "a.circuit:4:17: error: 'r/0' divides by zero\n"
       "    resistor R2 = r/0 from T to G\n"
       "                    ^\n"},
      {trailing_words,
       "symbol r\n"
       "resistor R2 = 2 r ohm from T to G\n",
       "a.circuit:4:19: error: 'ohm' is left over at the end of the statement; a symbol brings its "
       "unit with it\n"
       "    resistor R2 = 2 r ohm from T to G\n"
       "                      ^~~\n"},
      {expected,
       "symbol r\n"
       "resistor R2 = r + from T to G\n"
       "resistor R3 = (r + 3) from T to G\n",
       "a.circuit:4:18: error: expected a number or a symbol, found the end of the line\n"
       "    resistor R2 = r + from T to G\n"
       "                     ^\n"
       "a.circuit:5:15: error: expected a number or a symbol, found '('\n"
       "    resistor R3 = (r + 3) from T to G\n"
       "                  ^\n"},
      {unused_symbol, "symbol r\n",
       "a.circuit:3:8: warning: no value uses the symbol 'r'\n"
       "    symbol r\n"
       "           ^\n"},
  };
  return kRows;
}

}  // namespace ohmfold
