// Known errors in a power, and the catalogue for a value of any kind.
#include <utility>

#include "coach/errors_of_values.h"

namespace ohmfold {
namespace {

void try_formulas(const Surroundings& around, PartId part, Suspects& suspects) {
  const Diagnosis error{KnownError::power_formula, {part}, {}, {}};
  const auto v = around.size(Claimed::voltage, part);
  const auto i = around.size(Claimed::current, part);
  if (!v || !i) return;
  suspects.try_number(*v * *i / 2, error);
  if (!i->is_zero()) suspects.try_number(*v / *i, error);
  if (!v->is_zero()) suspects.try_number(*i / *v, error);
  const auto r = around.resistance(part);
  if (!r) return;
  suspects.try_number(*i * *r, error);
  suspects.try_number(*i * *i / *r, error);
  suspects.try_number(*v * *v * *r, error);
  suspects.try_number(*v / *r, error);
}

}  // namespace

void try_power_errors(const Surroundings& around, const Target& target, Suspects& suspects) {
  const PartId part = target.part;
  try_formulas(around, part, suspects);
  const auto v = around.size(Claimed::voltage, part);
  const auto i = around.size(Claimed::current, part);
  const auto r = around.resistance(part);
  const PartId battery = around.battery();
  if (const auto emf = around.emf(); emf && battery != part) {
    const Diagnosis error{KnownError::power_of_the_whole, {part, battery}, {}, {}};
    const auto whole = around.size(Claimed::current, battery);
    if (r) suspects.try_number(*emf * *emf / *r, error);
    if (r && whole) suspects.try_number(*whole * *whole * *r, error);
    if (whole) suspects.try_number(*emf * *whole, error);
    if (i) suspects.try_number(*emf * *i, error);
    if (v && whole) suspects.try_number(*v * *whole, error);
  }
  for (const PartId other : around.resistors()) {
    const auto other_v = around.size(Claimed::voltage, other);
    const auto other_i = around.size(Claimed::current, other);
    if (other == part || !other_v || !other_i) continue;
    const Diagnosis error{KnownError::values_of_two_parts, {part, other}, {}, {}};
    if (i) suspects.try_number(*i * *other_v, error);
    if (v) suspects.try_number(*v * *other_i, error);
  }
}

void try_carrying_errors(const Surroundings& around, PartId part, Suspects& suspects) {
  if (!around.book().is_of_file(part) || suspects.written().number.is_zero()) return;
  for (Diagnosis& error : errors_of_left_out(part, around.book().networks.left_out(part))) {
    const bool shorted = error.error == KnownError::shorted_part_counted;
    error.error = shorted ? KnownError::shorted_part_carries : KnownError::dead_end_carries;
    suspects.try_number(suspects.written().number, error);
  }
}

std::vector<Diagnosis> errors_in(const TargetPlace& place) {
  const CaseBook& book = place.book;
  const Target& target = place.target;
  // Laws give sizes: only these are compared. The wrong sign of the right size goes first.
  const bool sized = target.claimed == Claimed::current || target.claimed == Claimed::voltage ||
                     target.claimed == Claimed::power;
  Suspects suspects(place.written, place.right, sized);
  if (place.right && !place.right->is_zero() && book.has_direction(target) && sized) {
    Diagnosis error{KnownError::wrong_sign, {target.part}, {}, {}};
    if (target.part.exists()) {
      const Network& start = book.networks.original();
      error.points = {start.from(target.part), start.to(target.part)};
    }
    if (agrees(place.written, -*place.right)) return {error};
  }
  const Surroundings around(book, target.part);
  Unit unit = Unit::ohm;
  switch (target.claimed) {
    case Claimed::current:
      unit = Unit::ampere;
      try_current_errors(around, target, suspects);
      break;
    case Claimed::voltage:
    case Claimed::voltage_between:
    case Claimed::potential:
      unit = Unit::volt;
      try_voltage_errors(around, target, suspects);
      break;
    case Claimed::power:
      unit = Unit::watt;
      try_power_errors(around, target, suspects);
      break;
    case Claimed::value:
      break;
    case Claimed::resistance_between:
    case Claimed::resistance_seen_by:
    case Claimed::whole_resistance:
      try_resistance_errors(book, target, suspects);
      break;
  }
  try_slips(suspects, unit);
  return std::move(suspects).take();
}

}  // namespace ohmfold
