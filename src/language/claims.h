// The two ways to write a claim, in words and in short, one line each.
#pragma once

#include <optional>

#include "language/line_reader.h"
#include "language/work_names.h"
#include "ohmfold/work.h"

namespace ohmfold {

using Statement = decltype(Claim::says);

/// "current through E = 2 A", "no current through R5", "equivalent resistance = 4 ohm".
[[nodiscard]] bool begins_with_quantity(const LineReader& line);
std::optional<Statement> read_quantity_claim(LineReader& line, const WorkNames& names);

/// What begins with a list of names: "R1 and R2 in series make R12", "A and B at the same
/// potential", "R1 R2 R3 in delta make Ra Rb Rc".
std::optional<Statement> read_list_claim(LineReader& line, const WorkNames& names);

/// "R12 = R1 + R2 = 6 ohm", "V_AB = 3 V", "V_A = V_B", and lines that were meant so.
[[nodiscard]] bool is_short(const LineReader& line);
std::optional<Statement> read_short_claim(LineReader& line, const WorkNames& names);

/// "=", "≈" or "~".
[[nodiscard]] bool is_equals(const Token& token);
/// Takes one of them, and all that follows as a value.
std::optional<WrittenValue> expect_claimed_value(LineReader& line, const WorkNames& names,
                                                 Unit plain);
/// Adds the value to a combination if one follows; false after an error.
bool read_combined_value(LineReader& line, const WorkNames& names, CombineClaim& claim);
/// The claim of a value that follows; that exactly nothing flows is a claim of its own.
std::optional<Statement> expect_value_claim(LineReader& line, const WorkNames& names,
                                            const ShortMeaning& meaning);

}  // namespace ohmfold
