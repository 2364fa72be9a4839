// The symbols that a text may use in its values, and what is known of them.
#pragma once

#include <optional>
#include <vector>

#include "language/name_table.h"
#include "ohmfold/source.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// What is known of a symbol so far.
struct DraftSymbol {
  Span where;            ///< its name, where it is declared first
  bool is_read = false;  ///< the statement that declares it has been read
  std::optional<Number> value;
  std::optional<Unit> unit;
  Span unit_where;  ///< what fixed the unit: its value or its first use
  bool is_used = false;
};

struct SymbolTable {
  NameTable names;
  std::vector<DraftSymbol> drafts;  ///< by number in `names`
};

}  // namespace ohmfold
