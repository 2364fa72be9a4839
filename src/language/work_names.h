// The names that a work can use, and what short forms such as V_AB mean by them.
#pragma once

#include <deque>
#include <string>
#include <string_view>
#include <vector>

#include "language/name_table.h"
#include "language/scanner.h"
#include "ohmfold/problem.h"
#include "ohmfold/work.h"

namespace ohmfold {

/// What a short form says that a value is given of; `second` is a point where there are two.
struct ShortMeaning {
  Claimed claimed{};
  Token first, second;
};

class WorkNames {
 public:
  /// The problem must outlive it.
  explicit WorkNames(const Problem& problem);

  /// Takes in the names that a claim brings into being.
  void add(const Claim& claim);

  /// Of the problem, or made by a claim.
  [[nodiscard]] bool is_part(std::string_view name) const { return parts_.contains(name); }
  /// The part of the problem, or none.
  [[nodiscard]] const Part* problem_part(std::string_view name) const;

  /// All that the word in front of "=" can mean, one or more: a part goes before a point, a point
  /// before two that run together. A name that is not known is taken for a part.
  [[nodiscard]] std::vector<ShortMeaning> meanings(const Token& word) const;

  /// The symbols of the problem.
  [[nodiscard]] const NameTable& symbols() const { return symbols_; }

 private:
  void add_part(const WrittenName& name);
  [[nodiscard]] std::vector<ShortMeaning> voltages(const Token& name) const;
  [[nodiscard]] std::vector<ShortMeaning> cuts(const Token& run, Claimed claimed) const;

  const Problem& problem_;
  std::deque<std::string> made_;
  NameTable parts_;  ///< those of the problem by PartId, then those of claims
  NameTable points_;
  NameTable symbols_;
};

/// The meaning in words: "voltage from A to B".
[[nodiscard]] std::string in_words(const ShortMeaning& meaning);

/// The unit of a value that is written without one.
[[nodiscard]] Unit plain_unit(Claimed claimed, std::string_view name, const WorkNames& names);

[[nodiscard]] WrittenName written_name(const Token& token);

}  // namespace ohmfold
