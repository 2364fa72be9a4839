// Collects the known errors that give just the number that was written.
#pragma once

#include <functional>
#include <optional>
#include <utility>
#include <vector>

#include "coach/written.h"
#include "ohmfold/known_error.h"

namespace ohmfold {

class Suspects {
 public:
  /// From the number that an error gives to the one that would be written for it.
  using Through = std::function<std::optional<Number>(const Number&)>;

  /// `any_sign`: the direction of what is written is nobody's choice.
  Suspects(const WrittenValue& written, std::optional<Number> right, bool any_sign = false);

  /// As long as it is set, what is tried goes through the function first; nothing takes it away.
  void go_through(Through through) { through_ = std::move(through); }

  /// Names the error where its number is the written one and the right one is not. Each error is
  /// named once, for the first place that fits.
  void try_number(const Number& given, const Diagnosis& error);
  void try_number(const std::optional<Number>& number, const Diagnosis& error) {
    if (number) try_number(*number, error);
  }
  /// The same for a formula whose unit is wrong, so that its number depends on the unit that the
  /// person worked in: `power` is the dimension of the result in ohm (-1 for siemens). Ohm, kilohm
  /// and megohm are tried.
  void try_in_units(const Number& number, int power, const Diagnosis& error);

  [[nodiscard]] bool empty() const { return found_.empty(); }
  [[nodiscard]] std::vector<Diagnosis> take() && { return std::move(found_); }
  [[nodiscard]] const WrittenValue& written() const { return written_; }
  [[nodiscard]] const std::optional<Number>& right() const { return right_; }

 private:
  [[nodiscard]] bool fits(const Number& number) const;

  WrittenValue written_;
  std::optional<Number> right_;
  bool any_sign_;
  Through through_;
  std::vector<Diagnosis> found_;
};

/// The errors that are no wrong law but a slip with the right value: a prefix, a decimal point, a
/// preferred value, an impossible sign.
void try_slips(Suspects& suspects, Unit unit);

}  // namespace ohmfold
