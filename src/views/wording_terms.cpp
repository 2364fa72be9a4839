// The words for the engine's enumerations: rules, laws, checks, kinds and reasons for no value.
#include "ohmfold/error.h"
#include "views/wording.h"

namespace ohmfold::views {

namespace {

[[noreturn]] void unknown(const char* what) {
  throw InternalError(std::string("a value outside its enumeration: ") + what);
}

}  // namespace

std::string_view rule_word(RuleName rule) {
  switch (rule) {
    case RuleName::gap:
      return "gap";
    case RuleName::ideal_wire:
      return "ideal-wire";
    case RuleName::shorted:
      return "shorted";
    case RuleName::dead_end:
      return "dead-end";
    case RuleName::series:
      return "series";
    case RuleName::parallel:
      return "parallel";
    case RuleName::equal_potentials:
      return "equal-potentials";
    case RuleName::delta_star:
      return "delta-star";
    case RuleName::star_delta:
      return "star-delta";
    case RuleName::node_elimination:
      return "node-elimination";
    case RuleName::batteries:
      return "batteries";
  }
  unknown("RuleName");
}

std::string_view law_title(Law law) {
  switch (law) {
    case Law::same_current:
      return "same current";
    case Law::same_voltage:
      return "same voltage";
    case Law::ohm_current:
    case Law::ohm_voltage:
      return "Ohm's law";
    case Law::current_cut:
      return "current law";
    case Law::voltage_loop:
      return "voltage law";
    case Law::zero_current:
      return "no closed path";
    case Law::zero_voltage:
      return "both ends on one point";
    case Law::not_determined:
      return "not determined";
    case Law::source:
      return "Ohm's law";
    case Law::node_voltage:
      return "potentials";
    case Law::power:
      return "power";
    case Law::terminal:
      return "terminal voltage";
    case Law::two_arms:
      return "along two arms";
    case Law::sides_at_end:
      return "current law at its end";
    case Law::equal_potentials:
      return "equal potentials";
    case Law::given_current:
      return "given";
    case Law::superposition:
      return "superposition";
  }
  unknown("Law");
}

std::string_view law_word(Law law) {
  switch (law) {
    case Law::same_current:
      return "same-current";
    case Law::same_voltage:
      return "same-voltage";
    case Law::ohm_current:
    case Law::ohm_voltage:
      return "ohm";
    case Law::current_cut:
      return "current-law";
    case Law::voltage_loop:
      return "voltage-law";
    case Law::zero_current:
      return "zero-current";
    case Law::zero_voltage:
      return "zero-voltage";
    case Law::not_determined:
      return "not-determined";
    case Law::source:
      return "source";
    case Law::node_voltage:
      return "node-voltage";
    case Law::power:
      return "power";
    case Law::terminal:
      return "terminal";
    case Law::two_arms:
      return "two-arms";
    case Law::sides_at_end:
      return "sides-at-end";
    case Law::equal_potentials:
      return "equal-potentials";
    case Law::given_current:
      return "given-current";
    case Law::superposition:
      return "superposition";
  }
  unknown("Law");
}

std::string_view check_title(CheckLaw law) {
  switch (law) {
    case CheckLaw::step:
      return "every step";
    case CheckLaw::current:
      return "current law (currents in = currents out)";
    case CheckLaw::voltage:
      return "voltage law (voltages round a loop sum to zero)";
    case CheckLaw::ohm:
      return "Ohm's law (V = I · R)";
    case CheckLaw::power:
      return "power balance (power delivered = power taken up)";
    case CheckLaw::node_voltage:
      return "node-voltage analysis";
    case CheckLaw::resistance:
      return "equivalent resistance";
    case CheckLaw::elimination:
      return "elimination of unknown potentials";
    case CheckLaw::short_circuit:
      return "short-circuit current";
  }
  unknown("CheckLaw");
}

std::string_view check_word(CheckLaw law) {
  switch (law) {
    case CheckLaw::step:
      return "step";
    case CheckLaw::current:
      return "current";
    case CheckLaw::voltage:
      return "voltage";
    case CheckLaw::ohm:
      return "ohm";
    case CheckLaw::power:
      return "power";
    case CheckLaw::node_voltage:
      return "node-voltage";
    case CheckLaw::resistance:
      return "resistance";
    case CheckLaw::elimination:
      return "elimination";
    case CheckLaw::short_circuit:
      return "short-circuit";
  }
  unknown("CheckLaw");
}

std::string_view subject_word(Subject subject) {
  switch (subject) {
    case Subject::current:
      return "current";
    case Subject::voltage:
      return "voltage";
    case Subject::power:
      return "power";
    case Subject::potential:
      return "potential";
    case Subject::resistance:
      return "resistance";
  }
  unknown("Subject");
}

std::string_view kind_word(Kind kind) {
  switch (kind) {
    case Kind::series_parallel:
      return "series-parallel";
    case Kind::bridge:
      return "bridge";
    case Kind::several_sources:
      return "several-sources";
    case Kind::no_source:
      return "no-source";
    case Kind::open_circuit:
      return "open-circuit";
  }
  unknown("Kind");
}

std::string_view why_undetermined(Undetermined why) {
  switch (why) {
    case Undetermined::ideal_loop:
      return "ideal wires form a loop, and any current round that loop fits the ideal model";
    case Undetermined::floating:
      return "it is joined to nothing whose potential is known";
    case Undetermined::no_path:
      return "no path of resistors joins the two points";
    case Undetermined::taken_out:
      return "the part is taken out in this case";
    case Undetermined::too_long:
      return "its exact value is too long to find for every part of so large a network; ask for it "
             "with a find statement";
    case Undetermined::beyond_method:
      return "series and parallel alone do not suffice, and no other way was allowed";
    case Undetermined::unlimited:
      return "no resistance limits the current";
    case Undetermined::irrational:
      return "it is no rational number";
    case Undetermined::any_value:
      return "it depends on an unknown, and what is given fits every value of that";
  }
  unknown("Undetermined");
}

}  // namespace ohmfold::views
