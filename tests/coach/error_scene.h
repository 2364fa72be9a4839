// Works that a known error produces, each worked out by the error's own formula.
#pragma once

#include <algorithm>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "ohmfold/known_error.h"
#include "ohmfold/read.h"
#include "support/way_back.h"

namespace ohmfold::test {

using support::Made;
using support::RandomCircuits;
using support::RandomWork;
using Numbers = std::vector<Number>;

/// A work whose last line is what the error makes of it.
struct ErrorWork {
  Exercise exercise;
  std::string text;
  /// Where the last line states a wrong number: what it says it is of, and the random work with
  /// exact values to check other errors by. Otherwise empty.
  std::string key;
  std::optional<Number> number;
  std::optional<RandomWork> scene;
};

/// Makes one from random numbers; nothing where these do not suit, as where right and wrong agree.
using Maker = std::function<std::optional<ErrorWork>(RandomCircuits&)>;

struct ErrorRow {
  KnownError error{};
  Maker make;
};

/// The rows for errors of structure, of arithmetic, and of the way back.
[[nodiscard]] std::vector<ErrorRow> structure_rows();
[[nodiscard]] std::vector<ErrorRow> whole_network_rows();
[[nodiscard]] std::vector<ErrorRow> arithmetic_rows();
[[nodiscard]] std::vector<ErrorRow> current_rows();
[[nodiscard]] std::vector<ErrorRow> voltage_rows();

/// Written so that it is taken as exact, even where it is whole.
inline std::string exactly_written(const Number& number) {
  const std::string text = number.to_string();
  return text.find('/') == std::string::npos ? text + "/1" : text;
}

/// A random series-parallel problem with all its lines, none of them within another.
struct Scene {
  RandomWork work;
  std::map<std::string, Number> exact;

  explicit Scene(RandomCircuits& random, std::size_t least = 3)
      : work(random_work(random, least + random.below(5), false)),
        exact(support::exact_values(work.book)) {}

  [[nodiscard]] const Number& operator[](const std::string& key) const { return exact.at(key); }
  [[nodiscard]] Numbers values(const std::string& what, const std::vector<std::string>& of) const {
    Numbers numbers;
    for (const std::string& name : of) numbers.push_back(exact.at(what + " " + name));
    return numbers;
  }
  [[nodiscard]] const Made& any_made(RandomCircuits& random) const {
    return work.made[random.below(work.made.size())];
  }
  /// The combinations up to the one called `last`, without its value.
  [[nodiscard]] std::string up_to(const std::string& last) const {
    std::string text;
    for (const Made& made : work.made) {
      text += made.name + " = " + formula_of(made, work.made);
      if (made.name == last) return text;
      text += " = " + exact.at("R " + made.name).to_string() + " ohm\n";
    }
    return text;
  }
  [[nodiscard]] std::string whole_reduction() const { return up_to(""); }

  /// Nothing where the wrong number is the right one.
  [[nodiscard]] std::optional<ErrorWork> with_value(const std::string& before,
                                                    const std::string& claim,
                                                    const std::string& key, const Number& wrong,
                                                    const char* unit) const {
    if (wrong == exact.at(key) || wrong == -exact.at(key) || wrong.is_zero()) return std::nullopt;
    return ErrorWork{work.exercise,
                     before + claim + " = " + exactly_written(wrong) + " " + unit + "\n", key,
                     wrong, work};
  }
};

/// A problem in the circuit language, solved, and a work on it.
inline ErrorWork on_circuit(const std::string& circuit, std::string work) {
  const Outcome<Problem> problem = read_circuit({"error.circuit", circuit});
  ensure(problem.value.has_value(), "a circuit for a known error can be read: " + circuit);
  return {prepare(*problem.value), std::move(work), "", std::nullopt, std::nullopt};
}

/// "resistor R1 = 5 ohm from A to B\n" with a random value.
inline std::string resistor(RandomCircuits& random, const std::string& name,
                            const std::string& from, const std::string& to) {
  return "resistor " + name + " = " + random.resistance().to_string() + " ohm from " + from +
         " to " + to + "\n";
}

inline std::string battery(RandomCircuits& random, const std::string& internal = "") {
  return "battery E = " + std::to_string(5 + random.below(40)) + " V " + internal +
         " from G to T\n";
}

}  // namespace ohmfold::test
