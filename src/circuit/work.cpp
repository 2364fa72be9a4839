// What claims are counted in.
#include "ohmfold/work.h"

#include "ohmfold/error.h"

namespace ohmfold {

Unit unit_of(Claimed claimed) {
  switch (claimed) {
    case Claimed::current:
      return Unit::ampere;
    case Claimed::voltage:
    case Claimed::voltage_between:
    case Claimed::potential:
      return Unit::volt;
    case Claimed::power:
      return Unit::watt;
    case Claimed::value:
    case Claimed::resistance_between:
    case Claimed::resistance_seen_by:
    case Claimed::whole_resistance:
      return Unit::ohm;
  }
  throw InternalError("a claim of an unknown quantity");
}

}  // namespace ohmfold
