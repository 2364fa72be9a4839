// The sentences of the program: facts, laws, rules, reasons and cautions in words for a first-year
// student. The only place where the engine's closed sets become English.
#pragma once

#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "ohmfold/problem.h"
#include "ohmfold/trace.h"
#include "views/names.h"
#include "views/network_words.h"
#include "views/words.h"

namespace ohmfold::views {

/// "series", "dead-end", …: the rule as other programs read it.
[[nodiscard]] std::string_view rule_word(RuleName rule);
/// "same current", "Ohm's law", …: the law in the margin of a line.
[[nodiscard]] std::string_view law_title(Law law);
/// "same-current", "ohm", …: the law as other programs read it.
[[nodiscard]] std::string_view law_word(Law law);
/// "Kirchhoff's current law", "power balance", …
[[nodiscard]] std::string_view check_title(CheckLaw law);
/// "current", "node-voltage", …: the check as other programs read it.
[[nodiscard]] std::string_view check_word(CheckLaw law);
/// "current", "voltage", "power", "potential", "resistance".
[[nodiscard]] std::string_view subject_word(Subject subject);
/// "series-parallel", "bridge", …: the kind of a case as other programs read it.
[[nodiscard]] std::string_view kind_word(Kind kind);
/// Why a quantity has no value, as a phrase that follows "not determined: ".
[[nodiscard]] std::string_view why_undetermined(Undetermined why);

/// Words about one reduction of a problem. Keeps references to all three: they must outlive it.
class Wording {
 public:
  Wording(const Problem& problem, const Reduction& reduction, const PartNames& names)
      : problem_(problem), reduction_(reduction), network_(problem, reduction.end, names) {}

  [[nodiscard]] Run part(PartId id) const { return network_.part(id); }
  [[nodiscard]] Run point(PointId id) const { return network_.point(id); }
  [[nodiscard]] Words parts(std::span<const PartId> ids, std::size_t most = 12) const {
    return network_.parts(ids, most);
  }
  [[nodiscard]] Words points(std::span<const PointId> ids, std::size_t most = 12) const {
    return network_.points(ids, most);
  }
  [[nodiscard]] Words described(PartId id) const { return network_.described(id); }
  [[nodiscard]] Words fact(const Fact& fact) const { return network_.fact(fact); }
  /// The parts that a step makes.
  [[nodiscard]] Words made(const Step& step) const;

  /// What a step does: "R1 and R2 are in series", "leave out R5".
  [[nodiscard]] Words action(const Step& step) const;
  /// Why it may: its facts and what follows from them, as one or two sentences.
  [[nodiscard]] Words reason(const Step& step) const;
  /// Why the law of a return holds, as a sentence.
  [[nodiscard]] Words reason(const Return& item) const;
  [[nodiscard]] Words caution(const Caution& caution) const;
  [[nodiscard]] Words remark(const Remark& remark) const;
  /// A contradiction as one phrase with its parts, points and remainder.
  [[nodiscard]] Words contradiction(const Contradiction& contradiction) const;

 private:
  [[nodiscard]] Words dead_end_reason(const Step& step) const;
  [[nodiscard]] Words batteries_reason(const Step& step) const;
  [[nodiscard]] Words blocked_current(const Contradiction& contradiction) const;
  [[nodiscard]] Words loop_reason(const Return& item) const;
  [[nodiscard]] Words rewriting(const Step& step) const;
  [[nodiscard]] Words rewriting_reason(const Step& step) const;
  [[nodiscard]] Words equal_potentials_reason(const Step& step) const;

  const Problem& problem_;
  const Reduction& reduction_;
  const NetworkWords network_;
};

}  // namespace ohmfold::views
