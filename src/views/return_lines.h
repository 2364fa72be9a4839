// The results of the way back as lines of working.
#pragma once

#include <optional>
#include <unordered_map>

#include "views/chapter.h"

namespace ohmfold::views {

/// Reads returns in their order and remembers their values, so that later lines can put them in.
class ReturnLines {
 public:
  ReturnLines(const Scene& scene, const CaseTrace& trace);

  /// "V_R1 = I_R1 · R1 = 3 A · 4 Ω = 12 V", with its law in the margin. Requires a value.
  Equation line(const Return& item);
  /// Have all currents been found that the current law sums up for it?
  [[nodiscard]] bool is_ready(const Return& item) const;
  /// The symbol of what the return is about.
  [[nodiscard]] Expression left_side(const Return& item) const;
  /// Remembers the value without a line.
  void pass(const Return& item);
  /// Remembers a potential that was found in another way.
  void know(const NodeResult& node);

 private:
  /// How a value follows, in symbols and with values put in.
  struct Derivation {
    Expression formula;
    std::optional<Expression> values;
  };

  [[nodiscard]] bool is_turned(const Return& item) const;
  [[nodiscard]] Words margin(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> derivation(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> from_made(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> ohm(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> source(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> terminal(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> power(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> potential(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> difference(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> cut(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> along_two_arms(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> from_sides(const Return& item) const;
  [[nodiscard]] std::optional<Derivation> signed_sum(
      Subject subject, const std::vector<std::pair<PartId, bool>>& terms) const;

  [[nodiscard]] std::vector<PartId> beside(PartId part) const;
  [[nodiscard]] std::optional<Quantity> known(Subject subject, std::uint32_t index) const;
  [[nodiscard]] std::optional<Expression> known_value(Subject subject, std::uint32_t index) const;
  [[nodiscard]] Expression symbol(Subject subject, PartId part) const;

  const Scene& scene_;
  const CaseTrace& trace_;
  std::unordered_map<std::uint64_t, Quantity> known_;
};

}  // namespace ohmfold::views
