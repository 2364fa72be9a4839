// Stages of series and parallel, then the way on.
#include "solve/reduce.h"

#include "solve/reducer.h"
#include "solve/ways.h"

namespace ohmfold {

Reduction reduce(Network start, bool pairs) {
  Reducer reducer(std::move(start), pairs);
  reducer.run();
  return std::move(reducer).finish();
}

Reduction reduce(Network start, const SolveOptions& options) {
  Reducer reducer(std::move(start), options.pairs);
  reducer.run();
  const Stop stop = reducer.stop();
  const bool ends = stop == Stop::several_sources && options.method == Method::series_parallel;
  if (stop != Stop::bridge && !ends) return std::move(reducer).finish();
  Choice choice = go_on(reducer, options);
  Reduction reduction = std::move(reducer).finish();
  reduction.choice = std::move(choice);
  return reduction;
}

Kind kind_of(const Reduction& driven) {
  switch (driven.stop) {
    case Stop::reduced:
    case Stop::short_circuit:
      return driven.choice.made ? Kind::bridge : Kind::series_parallel;
    case Stop::bridge:
      return Kind::bridge;
    case Stop::several_sources:
      return Kind::several_sources;
    case Stop::open:
      return Kind::open_circuit;
    case Stop::no_source:
      return Kind::no_source;
  }
  return Kind::no_source;
}

}  // namespace ohmfold
