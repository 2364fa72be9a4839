// Ways in words.
#include "views/ways_words.h"

#include <algorithm>
#include <array>

#include "ohmfold/error.h"
#include "views/amounts.h"

namespace ohmfold::views {

namespace {

constexpr std::size_t kMostPoints = 8;

Words counted(std::size_t count, std::string_view one, std::string_view many) {
  return say(count_text(count), " ", count == 1 ? one : many);
}

Words unknowns(std::size_t count) {
  return counted(count, "unknown potential", "unknown potentials");
}

/// "turning the delta between A, B and C into a star"
Words first_step(const Scene& scene, const Way& way) {
  const Words points = scene.words.points(way.at, kMostPoints);
  switch (way.first) {
    case RuleName::delta_star:
      return say("turning the delta between ", points, " into a star first");
    case RuleName::star_delta:
      return say("turning the star at ", points, " into a delta first");
    case RuleName::node_elimination:
      return say("turning the star at ", points, " into a mesh first");
    case RuleName::equal_potentials:
      if (way.at.empty()) {
        return say("leaving out ", scene.words.parts(way.parts, kMostPoints),
                   " between equal potentials");
      }
      return say("joining the equal potentials of ", points, " first");
    case RuleName::gap:
    case RuleName::ideal_wire:
    case RuleName::shorted:
    case RuleName::dead_end:
    case RuleName::series:
    case RuleName::parallel:
    case RuleName::batteries:
      break;
  }
  throw InternalError("a way that begins with an ordinary step");
}

Words name_of(const Scene& scene, const Way& way) {
  if (way.method == Method::node_voltage) {
    return say("node-voltage analysis with ", unknowns(way.unknowns));
  }
  Words words = first_step(scene, way);
  if (way.then == way.method) return words;
  if (way.then == Method::node_voltage) {
    return say(words, " and then node-voltage analysis with ", unknowns(way.unknowns));
  }
  return say(words, " and then deltas and stars");
}

const Way& taken(const Choice& choice) {
  return *std::find_if(choice.ways.begin(), choice.ways.end(),
                       [&](const Way& way) { return way.method == choice.method; });
}

Words wish(Method asked) {
  switch (asked) {
    case Method::equal_potentials:
      return say("Equal potentials are");
    case Method::delta_star:
      return say("Delta and star are");
    case Method::node_voltage:
      return say("Node-voltage analysis is");
    case Method::superposition:
      return say("Superposition is");
    case Method::automatic:
    case Method::series_parallel:
      break;
  }
  return {};
}

Words refusal(const Choice& choice) {
  switch (choice.refusal) {
    case Refusal::no_equal_potentials:
      return say(wish(choice.asked),
                 " asked for, but no bridge here is balanced, and no symmetry that keeps the two "
                 "terminals moves a point. ");
    case Refusal::too_large:
      return say(wish(choice.asked),
                 " asked for, but too many parts are left to rewrite them one by one. ");
    case Refusal::one_source:
      return say(wish(choice.asked), " asked for, but there is one source alone. ");
    case Refusal::none:
      break;
  }
  return {};
}

Words comparison(const Scene& scene, const Choice& choice) {
  constexpr std::array<std::string_view, 3> kOrdinals{"first", "second", "third"};
  const Way& best = taken(choice);
  Words words = say(choice.ways.size() == 2 ? "Two" : "Three", " ways lead on: ");
  std::size_t shortest = 0;
  bool is_alone = true;
  for (std::size_t i = 0; i < choice.ways.size(); ++i) {
    const Way& way = choice.ways[i];
    if (i > 0) words.add("; ");
    words.add(say(name_of(scene, way), " takes ", count_text(way.lines)));
    if (i == 0) words.add(way.lines == 1 ? " line of working" : " lines of working, all in all");
    if (way.method == best.method) shortest = i;
    is_alone = is_alone && (way.method == best.method || way.lines > best.lines);
  }
  return say(words, ". The ", kOrdinals.at(shortest),
             !is_alone                 ? " is taken: none is shorter."
             : choice.ways.size() == 2 ? " is shorter, so it is taken."
                                       : " is the shortest, so it is taken.");
}

}  // namespace

Words choice_words(const Scene& scene) {
  const Choice& choice = scene.reduction.choice;
  if (choice.method == Method::series_parallel) {
    return say("Series and parallel do not suffice here, and no other way is allowed.");
  }
  if (choice.asked != Method::automatic && choice.refusal == Refusal::none) {
    return say(wish(choice.asked), " asked for: ", name_of(scene, taken(choice)), ".");
  }
  Words words = refusal(choice);
  if (choice.ways.size() > 1) return say(words, comparison(scene, choice));
  if (!choice.looked_at_delta) {
    words.add("So many parts are left that turning deltas and stars one by one would be longer. ");
  }
  return say(words, "This leads on: ", name_of(scene, taken(choice)), ".");
}

Words way_taken(const Reduction& reduction) {
  const Choice& choice = reduction.choice;
  if (choice.method == Method::series_parallel) {
    return say("with these two rules alone it goes no further");
  }
  const Way& way = taken(choice);
  Words words;
  if (way.method == Method::equal_potentials) {
    words.add("use points at equal potentials");
    if (way.then == way.method) return words;
    words.add(", then ");
  }
  return say(words, way.then == Method::delta_star ? "turn deltas into stars, or stars into deltas"
                    : reduction.source.exists() &&
                            reduction.end.kind(reduction.source) == ElementKind::port
                        ? "find the resistance by node-voltage analysis"
                        : "find the potentials by node-voltage analysis");
}

std::string_view method_word(Method method) {
  switch (method) {
    case Method::automatic:
      return "automatic";
    case Method::series_parallel:
      return "series-parallel";
    case Method::equal_potentials:
      return "equal-potentials";
    case Method::delta_star:
      return "delta-star";
    case Method::node_voltage:
      return "node-voltage";
    case Method::superposition:
      return "superposition";
  }
  throw InternalError("a method outside its enumeration");
}

}  // namespace ohmfold::views
