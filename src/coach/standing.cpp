// Where a person stands in a case.
#include "coach/standing.h"

#include "coach/main_port.h"

namespace ohmfold {
namespace {

// Which value of a question a line gives: two for a Thevenin equivalent, otherwise one.
enum class Gives { nothing, first, second };

class WhatItGives {
 public:
  WhatItGives(const Judgement& line, const CaseTrace& solved) : line_(line), solved_(solved) {}

  Gives operator()(const CurrentThrough& asked) const { return of(Claimed::current, asked.part); }
  Gives operator()(const VoltageAcross& asked) const { return of(Claimed::voltage, asked.part); }
  Gives operator()(const PowerIn& asked) const { return of(Claimed::power, asked.part); }
  Gives operator()(const ValueOf& asked) const { return of(Claimed::value, asked.part); }
  Gives operator()(const PotentialAt& asked) const {
    return when(line_.claimed == Claimed::potential && line_.at == asked.point);
  }
  Gives operator()(const VoltageBetween& asked) const {
    return when(is_between(Claimed::voltage_between, asked.from, asked.to));
  }
  Gives operator()(const ResistanceBetween& asked) const {
    const bool same = is_between(Claimed::resistance_between, asked.from, asked.to) ||
                      is_between(Claimed::resistance_between, asked.to, asked.from);
    return when(same || is_whole(asked));
  }
  Gives operator()(const ResistanceSeenBy& asked) const {
    const bool seen = line_.claimed == Claimed::resistance_seen_by && line_.of == asked.battery;
    return when(seen || is_whole(asked));
  }
  Gives operator()(const TheveninBetween& asked) const {
    if (is_between(Claimed::voltage_between, asked.from, asked.to)) return Gives::first;
    const bool resistance = is_between(Claimed::resistance_between, asked.from, asked.to) ||
                            is_between(Claimed::resistance_between, asked.to, asked.from);
    return resistance ? Gives::second : Gives::nothing;
  }

 private:
  static Gives when(bool condition) { return condition ? Gives::first : Gives::nothing; }
  [[nodiscard]] Gives of(Claimed claimed, PartId part) const {
    return when(line_.claimed == claimed && line_.of == part);
  }
  [[nodiscard]] bool is_between(Claimed claimed, PointId from, PointId to) const {
    return line_.claimed == claimed && line_.at == from && line_.to == to;
  }
  // Is the line about the whole network, and the question, too?
  [[nodiscard]] bool is_whole(const Question& question) const {
    return line_.claimed == Claimed::whole_resistance &&
           is_main_resistance(solved_, target_of(question));
  }

  const Judgement& line_;
  const CaseTrace& solved_;
};

Gives given_by(const Judgement& line, const Question& question, const CaseTrace& solved) {
  return std::visit(WhatItGives(line, solved), question);
}

// What follows from wrong numbers is no answer yet.
bool is_good(const Judgement& line) {
  return line.holds() && line.value != ValueVerdict::none && line.value != ValueVerdict::on_own;
}

}  // namespace

bool answers(const Judgement& line, const Question& question, const CaseTrace& solved) {
  return given_by(line, question, solved) != Gives::nothing;
}

int values_asked_by(const Question& question) {
  return std::holds_alternative<TheveninBetween>(question) ? 2 : 1;
}

CaseStanding standing_in(const CaseBook& book, const std::vector<Judgement>& lines, bool is_begun) {
  CaseStanding standing;
  standing.network = book.networks.own();
  standing.part_names = book.names_by_part();
  standing.point_names = book.names_by_point();
  standing.is_begun = is_begun;
  standing.is_own = book.networks.has_diverged();
  standing.own_resistance.resize(standing.network.part_count());
  for (std::uint32_t i = 0; i < standing.network.part_count(); ++i) {
    const auto own = book.own_resistance(PartId{i});
    if (own && standing.network.is_alive(PartId{i})) standing.own_resistance[i] = own->number;
  }
  const CaseTrace& solved = book.solved();
  for (std::size_t i = 0; i < solved.answers.size(); ++i) {
    const Question& question = solved.answers[i].question;
    if (!solved.answers[i].value.value && !solved.answers[i].irrational) continue;
    bool first = false;
    bool second = values_asked_by(question) == 1;
    bool tried = false;
    for (const Judgement& line : lines) {
      if (line.case_index != book.case_index()) continue;
      const Gives given = given_by(line, question, solved);
      if (given == Gives::nothing) continue;
      tried = true;
      if (!is_good(line)) continue;
      (given == Gives::first ? first : second) = true;
    }
    (first && second ? standing.answered : tried ? standing.attempted : standing.open).push_back(i);
  }
  return standing;
}

}  // namespace ohmfold
