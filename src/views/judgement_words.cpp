// The closed sets of a judgement as other programs read them.
#include "views/judgement_words.h"

#include "ohmfold/error.h"

namespace ohmfold::views {

std::string_view step_verdict_word(StepVerdict verdict) {
  switch (verdict) {
    case StepVerdict::none:
      return "none";
    case StepVerdict::right:
      return "right";
    case StepVerdict::right_on_own:
      return "right-on-own";
    case StepVerdict::refused:
      return "refused";
    case StepVerdict::cannot_tell:
      return "cannot-tell";
  }
  throw InternalError("a StepVerdict outside its enumeration");
}

std::string_view hindrance_word(Hindrance hindrance) {
  switch (hindrance) {
    case Hindrance::none:
      return "none";
    case Hindrance::unknown_name:
      return "unknown-name";
    case Hindrance::made_later:
      return "made-later";
    case Hindrance::name_taken:
      return "name-taken";
    case Hindrance::named_twice:
      return "named-twice";
    case Hindrance::used_already:
      return "used-already";
    case Hindrance::left_out:
      return "left-out";
    case Hindrance::not_a_resistor:
      return "not-a-resistor";
    case Hindrance::no_values:
      return "no-values";
    case Hindrance::lost_track:
      return "lost-track";
    case Hindrance::not_determined:
      return "not-determined";
    case Hindrance::too_large:
      return "too-large";
    case Hindrance::several_sources:
      return "several-sources";
  }
  throw InternalError("a Hindrance outside its enumeration");
}

std::string_view value_verdict_word(ValueVerdict verdict) {
  switch (verdict) {
    case ValueVerdict::none:
      return "none";
    case ValueVerdict::exact:
      return "exact";
    case ValueVerdict::rounded:
      return "rounded";
    case ValueVerdict::within_rounding:
      return "within-rounding";
    case ValueVerdict::rounded_early:
      return "rounded-early";
    case ValueVerdict::on_own:
      return "on-own";
    case ValueVerdict::cut_off:
      return "cut-off";
    case ValueVerdict::wrong:
      return "wrong";
    case ValueVerdict::cannot_tell:
      return "cannot-tell";
  }
  throw InternalError("a ValueVerdict outside its enumeration");
}

std::string_view unit_verdict_word(UnitVerdict verdict) {
  switch (verdict) {
    case UnitVerdict::none:
      return "none";
    case UnitVerdict::right:
      return "right";
    case UnitVerdict::missing:
      return "missing";
    case UnitVerdict::wrong:
      return "wrong";
  }
  throw InternalError("a UnitVerdict outside its enumeration");
}

std::string_view figures_verdict_word(FiguresVerdict verdict) {
  switch (verdict) {
    case FiguresVerdict::fine:
      return "fine";
    case FiguresVerdict::too_few:
      return "too-few";
    case FiguresVerdict::too_many:
      return "too-many";
  }
  throw InternalError("a FiguresVerdict outside its enumeration");
}

std::string_view mark_word(Mark mark) {
  switch (mark) {
    case Mark::none:
      return "none";
    case Mark::earned:
      return "earned";
    case Mark::lost:
      return "lost";
  }
  throw InternalError("a Mark outside its enumeration");
}

std::string_view claimed_word(Claimed claimed) {
  switch (claimed) {
    case Claimed::current:
      return "current";
    case Claimed::voltage:
      return "voltage";
    case Claimed::power:
      return "power";
    case Claimed::value:
      return "value";
    case Claimed::voltage_between:
      return "voltage-between";
    case Claimed::potential:
      return "potential";
    case Claimed::resistance_between:
      return "resistance-between";
    case Claimed::resistance_seen_by:
      return "resistance-seen-by";
    case Claimed::whole_resistance:
      return "whole-resistance";
  }
  throw InternalError("a Claimed outside its enumeration");
}

}  // namespace ohmfold::views
