// Known errors in the resistance of a whole network, and in the current that it lets through.
#include <algorithm>

#include "circuit/set_case.h"
#include "coach/errors_of_values.h"
#include "coach/forced_step.h"
#include "coach/main_port.h"
#include "solve/answers.h"
#include "solve/reduce.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostParts = 60;   // of a circuit that is looked at in so many ways
constexpr std::size_t kMostPoints = 14;  // each two of them
constexpr std::size_t kMostForced = 10;  // resistors, each two of them

class ResistanceErrors {
 public:
  ResistanceErrors(const CaseBook& book, const Target& target, Suspects& suspects)
      : book_(book), target_(target), suspects_(suspects) {}

  void run() {
    if (book_.problem().parts.size() > kMostParts || !book_.may_search()) return;
    last_step();
    each_part_otherwise();
    dead_ends();
    other_points();
    forced();
  }

 private:
  void try_resistance(const std::optional<Number>& resistance, const Diagnosis& error) {
    suspects_.try_number(resistance, error);
  }

  // What the question asks for, of the circuit in this setting.
  [[nodiscard]] std::optional<Number> resistance_in(const Case& setting) const {
    const Reading reading = seen_resistance(reduce(network_in(setting)));
    if (!reading.value) return std::nullopt;
    return reading.value->number;
  }

  [[nodiscard]] Network network_in(const Case& setting) const {
    if (target_.claimed == Claimed::resistance_between) {
      return resistors_between(book_.problem(), setting, target_.first, target_.second);
    }
    const PartId source =
        target_.claimed == Claimed::resistance_seen_by ? target_.part : book_.solved().main.source;
    if (source.exists() && book_.is_of_file(source)) {
      return seen_by(book_.problem(), setting, source);
    }
    const auto port = main_port(book_.solved());
    return port ? resistors_between(book_.problem(), setting, port->first, port->second)
                : Network(0);
  }

  [[nodiscard]] Case with(PartId part, SettingKind kind) const {
    Case setting = book_.setting();
    std::erase_if(setting.settings, [&](const Setting& one) { return one.part == part; });
    setting.settings.push_back({part, kind, Number(0)});
    return setting;
  }

  // Of a network that is one group from being done: errors of that last step.
  void last_step() {
    const Network& own = book_.networks.own();
    const std::vector<PartId> left = living_resistors(own);
    if (left.size() < 2 || left.size() > kMostForced) return;
    for (const Joining how : {Joining::series, Joining::parallel}) {
      if (!test_for(how).judge(own, {left, {}, {}}).allowed) continue;
      try_combination_errors(book_, how, left, suspects_);
    }
  }

  void each_part_otherwise() {
    const Network& start = book_.networks.original();
    for (std::uint32_t i = 0; i < book_.problem().parts.size(); ++i) {
      const PartId part{i};
      const ElementKind kind = start.kind(part);
      if (kind == ElementKind::resistor && book_.networks.left_out(part).empty()) {
        try_resistance(resistance_in(with(part, SettingKind::removed)),
                       {KnownError::part_forgotten, {part}, {}, {}});
        try_resistance(resistance_in(with(part, SettingKind::shorted)),
                       {KnownError::part_taken_for_wire, {part}, {}, {}});
      } else if (kind == ElementKind::ammeter || kind == ElementKind::voltmeter) {
        const bool wire = kind == ElementKind::ammeter;
        try_resistance(
            resistance_in(with(part, wire ? SettingKind::removed : SettingKind::shorted)),
            {KnownError::meter_taken_for_other, {part}, {}, {}});
      } else if (kind == ElementKind::open_switch) {
        try_resistance(resistance_in(with(part, SettingKind::closed)),
                       {KnownError::gap_taken_for_wire, {part}, {}, {}});
      } else if (is_wire(kind)) {
        const SettingKind cut =
            kind == ElementKind::closed_switch ? SettingKind::open : SettingKind::removed;
        try_resistance(resistance_in(with(part, cut)), error_of_cut(part));
      }
    }
  }

  // Without the wire, a part that it shorts would count.
  [[nodiscard]] Diagnosis error_of_cut(PartId wire) const {
    for (std::uint32_t i = 0; i < book_.problem().parts.size(); ++i) {
      for (const Fact& fact : book_.networks.left_out(PartId{i})) {
        const auto* shorted = std::get_if<BothEndsOn>(&fact);
        const bool resistor = book_.networks.original().kind(PartId{i}) == ElementKind::resistor;
        if (shorted != nullptr && resistor) {
          return {KnownError::shorted_part_counted, {PartId{i}}, {shorted->point}, {}};
        }
      }
    }
    return {KnownError::switch_taken_for_gap, {wire}, {}, {}};
  }

  void dead_ends() {
    const auto whole = resistance_in(book_.setting());
    if (!whole || !whole->is_positive()) return;
    for (std::uint32_t i = 0; i < book_.problem().parts.size(); ++i) {
      const PartId part{i};
      const auto& why = book_.networks.left_out(part);
      if (why.empty() || book_.networks.original().kind(part) != ElementKind::resistor) continue;
      const std::vector<Diagnosis> errors = errors_of_left_out(part, why);
      if (errors.empty() || errors.front().error != KnownError::dead_end_counted) continue;
      const Number own = book_.networks.original().resistance(part).lowest_terms();
      try_resistance(*whole + own, errors.front());
      try_resistance(*whole * own / (*whole + own), errors.front());
    }
  }

  void other_points() {
    const std::size_t count = book_.problem().points.size();
    if (count > kMostPoints) return;
    const Network asked = network_in(book_.setting());
    PointId first, second;
    for (std::uint32_t i = 0; i < asked.part_count(); ++i) {
      if (asked.kind(PartId{i}) != ElementKind::port) continue;
      first = asked.from(PartId{i});
      second = asked.to(PartId{i});
    }
    if (!first.exists()) return;
    for (std::uint32_t a = 0; a < count; ++a) {
      for (std::uint32_t b = a + 1; b < count; ++b) {
        const PointId one{a};
        const PointId two{b};
        if (std::minmax(one, two) == std::minmax(first, second)) continue;
        const Reading reading =
            seen_resistance(reduce(resistors_between(book_.problem(), book_.setting(), one, two)));
        if (!reading.value) continue;
        try_resistance(reading.value->number,
                       {KnownError::other_two_points, {}, {one, two, first, second}, {}});
      }
    }
  }

  // Two parts combined that must not be, and the rest done right.
  void forced() {
    const Network& own = book_.networks.own();
    const std::vector<PartId> left = living_resistors(own);
    if (left.size() > kMostForced || target_.claimed == Claimed::resistance_between) return;
    for (std::size_t i = 0; i < left.size(); ++i) {
      for (std::size_t k = i + 1; k < left.size(); ++k) {
        for (const Joining how : {Joining::series, Joining::parallel}) {
          forced_pair(own, how, {left[i], left[k]});
        }
      }
    }
  }

  void forced_pair(const Network& own, Joining how, const std::vector<PartId>& pair) {
    const Verdict verdict = test_for(how).judge(own, {pair, {}, {}});
    if (verdict.allowed) return;
    const std::vector<Diagnosis> errors = errors_of_step(own, how, pair, verdict.facts);
    if (errors.empty()) return;
    for (const Edit& edit : forced_steps(own, how, pair)) {
      Network wrong = own;
      wrong.commit(edit);
      const Reduction reduction = reduce(std::move(wrong));
      if (reduction.stop != Stop::reduced) continue;
      try_resistance(reduction.end.resistance(reduction.root).lowest_terms(), errors.front());
    }
  }

  const CaseBook& book_;
  const Target& target_;
  Suspects& suspects_;
};

}  // namespace

void try_resistance_errors(const CaseBook& book, const Target& target, Suspects& suspects) {
  ResistanceErrors(book, target, suspects).run();
}

}  // namespace ohmfold
