// A person's own solution of a problem, as a work file states it: claims, one a line.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "ohmfold/fact.h"
#include "ohmfold/source.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// A value as it was written: how far it is rounded shows in its digits.
struct WrittenValue {
  Number number;             ///< in the plain unit that is written, or that the claim expects
  std::string digits;        ///< "6.67", "20/3", "-0.5"; empty where symbols are in play
  int power = 0;             ///< of ten, that a prefix adds to the digits: 3 for "6.67 kohm"
  std::optional<Unit> unit;  ///< as written, or understood (kilo alone: ohm); none: not written
  Span where;
};

/// A name as it was written; what it names is known only when the claim is judged.
struct WrittenName {
  std::string text;
  Span where;
};

enum class Joining : std::uint8_t { series, parallel };

/// One combination within a claim. An operand is a name, or the result of an earlier combination of
/// the same claim: "R2 || (R3 + R4)" is {series: R3, R4}, {parallel: R2, the first}.
struct Combination {
  struct Operand {
    WrittenName name;
    std::optional<std::size_t> inner;  ///< index of an earlier combination; then there is no name
  };
  Joining how = Joining::series;
  std::vector<Operand> operands;  ///< two or more
};

/// "R1 and R2 in series make R12 = 6 ohm"; the last combination is the result.
struct CombineClaim {
  std::vector<Combination> combinations;  ///< one or more
  /// The name of the result. "R_eq" (see kWholeName) says besides that it is the whole network.
  WrittenName makes;
  std::optional<WrittenValue> value;  ///< none: only the step is judged
};

/// What the word R_eq stands for in short forms, where no part has that name.
inline constexpr const char* kWholeName = "R_eq";

/// What a claim gives a value of.
enum class Claimed : std::uint8_t {
  current,             ///< through the part `first`
  voltage,             ///< across the part `first`
  power,               ///< in the part `first`
  value,               ///< of the part `first`: "R5 = 8 ohm"
  voltage_between,     ///< from the point `first` to the point `second`
  potential,           ///< at the point `first`
  resistance_between,  ///< the points `first` and `second`
  resistance_seen_by,  ///< the source `first`
  whole_resistance     ///< "equivalent resistance": of the whole network on its one source
};

/// The unit of what is claimed; of the value of a part, that of a resistor.
[[nodiscard]] Unit unit_of(Claimed claimed);

struct ValueClaim {
  Claimed claimed{};
  WrittenName first, second;
  WrittenValue value;
};

/// "A and B at the same potential"
struct SamePotentialClaim {
  WrittenName first, second;
};

/// "no current through R5"
struct NoCurrentClaim {
  WrittenName part;
};

/// "no series or parallel pair left"
struct NoPairClaim {};

/// "R1 R2 R3 in delta make Ra Rb Rc = 2, 3, 1 ohm meeting at N", or "in star": RuleName::delta_star
/// or RuleName::star_delta. The k-th part made is the one that lies opposite the k-th part taken:
/// an arm does not touch the end of the side opposite it. Where the values fit only another order,
/// that one is meant.
struct RewriteClaim {
  RuleName rule{};
  std::vector<WrittenName> takes, makes;  ///< three each
  std::vector<WrittenValue> values;       ///< three, or none
  std::optional<WrittenName> middle;      ///< of the star that comes
};

/// `case "S open"`: the claims that follow are about this case.
struct CaseClaim {
  WrittenName label;
};

struct Claim {
  Span where;        ///< the whole of it
  std::string text;  ///< as written, without comment
  std::variant<CombineClaim, ValueClaim, SamePotentialClaim, NoCurrentClaim, NoPairClaim,
               RewriteClaim, CaseClaim>
      says;
};

struct Work {
  std::string source_name;  ///< name of the text it was read from
  std::vector<Claim> claims;
};

}  // namespace ohmfold
