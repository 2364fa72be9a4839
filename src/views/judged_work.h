// A judged work with the names that its cases have, and what can be said of one of its lines.
#pragma once

#include <deque>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "ohmfold/coach.h"
#include "views/names.h"
#include "views/network_words.h"
#include "views/words.h"

namespace ohmfold::views {

/// One case as the person's own steps have left it, with its names. Refers to problem and standing,
/// which must outlive it; stays where it was made, since its members refer to one another.
class CaseWords {
 public:
  CaseWords(const Problem& the_problem, const CaseStanding& the_standing, int the_figures)
      : problem(the_problem),
        standing(the_standing),
        figures(the_figures),
        names(problem, standing.part_names, standing.point_names),
        words(problem, standing.network, names) {}
  CaseWords(const CaseWords&) = delete;
  CaseWords& operator=(const CaseWords&) = delete;

  const Problem& problem;
  const CaseStanding& standing;
  const int figures;
  const PartNames names;
  const NetworkWords words;

  /// "20/3 Ω ≈ 6.67 Ω"
  [[nodiscard]] Words value(const Quantity& quantity) const {
    return value_words(quantity, figures);
  }
  /// What the person takes a resistor to be worth, where that is known.
  [[nodiscard]] std::optional<Quantity> resistance(PartId part) const;
  /// "the current through R2", "the equivalent resistance", …
  [[nodiscard]] Words quantity(Claimed claimed, PartId of, PointId at, PointId to) const;
};

/// A work with its judgement. Refers to all three, which must outlive it.
class JudgedWork {
 public:
  JudgedWork(const Exercise& the_exercise, const Work& the_work, const WorkJudgement& the_judged,
             int the_figures = 0);
  JudgedWork(const JudgedWork&) = delete;
  JudgedWork& operator=(const JudgedWork&) = delete;

  const Exercise& exercise;
  const Work& work;
  const WorkJudgement& judged;
  const int figures;

  [[nodiscard]] const Problem& problem() const { return *exercise.problem; }
  [[nodiscard]] const CaseWords& of_case(std::size_t index) const { return cases_.at(index); }
  /// The number of the line that a claim stands in.
  [[nodiscard]] std::size_t line_number(std::size_t claim) const;
  /// "line 3", "lines 2 and 3"
  [[nodiscard]] Words lines(std::span<const std::size_t> claims) const;

 private:
  std::deque<CaseWords> cases_;
};

/// One claim with what was found about it. Refers to the judged work.
class JudgedLine {
 public:
  /// Requires a claim of the work.
  JudgedLine(const JudgedWork& the_judged, std::size_t index)
      : judged(the_judged),
        judgement(the_judged.judged.lines.at(index)),
        claim(the_judged.work.claims.at(judgement.claim)),
        words(the_judged.of_case(judgement.case_index)) {}

  const JudgedWork& judged;
  const Judgement& judgement;
  const Claim& claim;
  const CaseWords& words;

  [[nodiscard]] std::size_t number() const { return judged.line_number(judgement.claim); }
  /// The value as it was written: "18.0 Ω"; empty where none is.
  [[nodiscard]] Words stated() const;
  /// The figures of the value as it was written; none of a fraction, or where symbols are in play.
  [[nodiscard]] std::optional<int> stated_figures() const;
  /// The true value in the form of the stated one: so many figures, the same prefix.
  [[nodiscard]] Words right_as_stated() const;
  /// What should stand there, on the person's own numbers; nothing where that is not known.
  [[nodiscard]] std::optional<Quantity> target() const;
  /// "R2 and R34"
  [[nodiscard]] Words operands() const { return words.words.parts(judgement.operands, 6); }
  /// "the current through R2"; of a combination what it makes, "R234".
  [[nodiscard]] Words subject() const;

 private:
  [[nodiscard]] const WrittenValue* written() const;
};

/// A value as a person wrote it: "6.67 kΩ", "20/3 Ω", "6.67" without a unit.
[[nodiscard]] Words written_words(const WrittenValue& value, int figures);

/// The significant figures of digits as they were written: 3 of "18.0" and "0.0180"; none of "20/3"
/// and of a whole number that ends in 0, which may be rounded or not.
[[nodiscard]] std::optional<int> figures_of(std::string_view digits);

}  // namespace ohmfold::views
