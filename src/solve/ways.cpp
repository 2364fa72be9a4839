// Trying, counting, choosing, doing.
#include "solve/ways.h"

#include <algorithm>
#include <optional>

#include "solve/core.h"
#include "solve/delta_way.h"
#include "solve/equal_way.h"
#include "solve/lines.h"

namespace ohmfold {
namespace {

constexpr std::size_t kMostMade = 3'000;

struct Option {
  Way way;
  Plan plan;  // on the core
};

// Fewer lines; of as many, simpler fractions, where both ways make resistances.
bool is_shorter(const Way& a, const Way& b) {
  if (a.lines != b.lines) return a.lines < b.lines;
  return a.bits != 0 && b.bits != 0 && a.bits < b.bits;
}

// Of equal ones the first. Requires at least one.
Option shortest(const std::vector<Option>& options) {
  const Option* best = &options.front();
  for (const Option& option : options) {
    if (is_shorter(option.way, best->way)) best = &option;
  }
  return *best;
}

class Chooser {
 public:
  Chooser(Reducer& reducer, const SolveOptions& options)
      : reducer_(reducer),
        core_(reducer.network()),
        stuck_(core_.network(), options.pairs),
        drives_(reducer.network().has_source()) {
    choice_.asked = options.method;
    choice_.after = reducer.steps().size();
    choice_.made = true;
    stuck_.run();
  }

  Choice run() {
    switch (choice_.asked) {
      case Method::node_voltage:
        take(by_node_voltage({stuck_, {}}, Method::node_voltage));
        break;
      case Method::delta_star:
        take_or_refuse(by_deltas({stuck_, {}}, Method::delta_star, kMostRewritten),
                       Refusal::too_large);
        break;
      case Method::equal_potentials:
        take_or_refuse(by_equal_potentials(), Refusal::no_equal_potentials);
        break;
      case Method::automatic:
      case Method::series_parallel:
      case Method::superposition:
        take_shortest();
        break;
    }
    return std::move(choice_);
  }

 private:
  void take_or_refuse(std::optional<Option> option, Refusal refusal) {
    if (option) {
      take(std::move(*option));
    } else {
      choice_.refusal = refusal;
      take_shortest();
    }
  }

  void take_shortest() {
    std::vector<Option> options;
    const auto add = [&](std::optional<Option> option) {
      if (option) options.push_back(std::move(*option));
    };
    add(by_equal_potentials());
    add(by_deltas({stuck_, {}}, Method::delta_star, kMostTried));
    add(by_node_voltage({stuck_, {}}, Method::node_voltage));
    for (const Option& option : options) choice_.ways.push_back(option.way);
    do_as(shortest(options));
  }

  void take(Option option) {
    choice_.ways.push_back(option.way);
    do_as(option);
  }

  void do_as(const Option& option) {
    choice_.method = option.way.method;
    for (const std::vector<Reducer::Move>& stage : option.plan) {
      std::vector<Reducer::Move> moves;
      moves.reserve(stage.size());
      for (const Reducer::Move& move : stage) {
        moves.push_back({move.rule, core_.in_whole(move.place)});
      }
      reducer_.transform(moves);
    }
  }

  // Equal potentials as far as they lead, by leaving out what lies between them or by joining them;
  // then the shorter of the other ways.
  std::optional<Option> by_equal_potentials() {
    std::vector<Option> options;
    for (const EqualUse use : {EqualUse::leave_out, EqualUse::join}) {
      Trial trial = by_equal_potentials_alone(stuck_, use);
      if (trial.plan.empty()) return std::nullopt;
      if (trial.reducer.stop() == Stop::reduced) {
        options.push_back(rewriting(Method::equal_potentials, Method::equal_potentials, trial));
        continue;
      }
      options.push_back(by_node_voltage(trial, Method::equal_potentials));
      auto deltas = by_deltas(trial, Method::equal_potentials, kMostTried);
      if (deltas) options.push_back(std::move(*deltas));
    }
    return shortest(options);
  }

  std::optional<Option> by_deltas(const Trial& before, Method method, std::size_t most_parts) {
    if (before.reducer.network().alive_count() > most_parts + 1) return std::nullopt;
    choice_.looked_at_delta = true;
    std::optional<Trial> trial = by_delta_and_star(before.reducer, kMostMade);
    if (!trial) return std::nullopt;
    trial->plan.insert(trial->plan.begin(), before.plan.begin(), before.plan.end());
    return rewriting(method, Method::delta_star, *trial);
  }

  // What the steps of a trial come to.
  [[nodiscard]] Option rewriting(Method method, Method then, const Trial& trial) const {
    Option option;
    const Cost cost = cost_of_steps(trial.reducer.steps(), trial.reducer.network(), drives_);
    option.way.method = method;
    option.way.then = then;
    option.way.lines = cost.lines;
    option.way.bits = cost.bits;
    option.way.steps = trial.reducer.steps().size();
    option.plan = trial.plan;
    if (trial.plan.empty()) return option;
    const Reducer::Move& first = trial.plan.front().front();
    option.way.first = first.rule;
    option.way.at = points_of(first);
    if (first.rule == RuleName::equal_potentials) {
      option.way.parts = core_.in_whole(first.place).parts;
    }
    return option;
  }

  // The corners of a delta, the middle of a star, the points that become one.
  [[nodiscard]] std::vector<PointId> points_of(const Reducer::Move& move) const {
    std::vector<PointId> points;
    if (move.rule == RuleName::delta_star) {
      for (const PartId part : move.place.parts) {
        points.push_back(core_.in_whole(core_.network().from(part)));
        points.push_back(core_.in_whole(core_.network().to(part)));
      }
      std::sort(points.begin(), points.end());
      points.erase(std::unique(points.begin(), points.end()), points.end());
    } else if (move.rule == RuleName::equal_potentials) {
      for (const PointId point : move.place.points) points.push_back(core_.in_whole(point));
    } else {
      points.push_back(core_.in_whole(move.place.first));
    }
    return points;
  }

  // Equations for what the trial leaves.
  [[nodiscard]] Option by_node_voltage(const Trial& before, Method method) const {
    Option option = rewriting(method, Method::node_voltage, before);
    const Network& network = before.reducer.network();
    const Frontier all = whole(network);
    const auto port = std::find_if(all.parts.begin(), all.parts.end(),
                                   [&](PartId part) { return is_source(network.kind(part)); });
    const std::size_t at_terminal =
        std::min(network.degree(network.from(*port)), network.degree(network.to(*port))) - 1;
    option.way.unknowns = all.points.size() - 2;
    if (before.plan.empty()) option.way.lines = 0;
    option.way.lines +=
        lines_of_analysis(option.way.unknowns, all.parts.size() - 1, at_terminal, drives_);
    return option;
  }

  Reducer& reducer_;
  Core core_;
  Reducer stuck_;
  bool drives_;
  Choice choice_;
};

}  // namespace

Choice go_on(Reducer& reducer, const SolveOptions& options) {
  if (options.method == Method::series_parallel) {
    Choice choice;
    choice.made = true;
    choice.asked = choice.method = Method::series_parallel;
    choice.after = reducer.steps().size();
    return choice;
  }
  return Chooser(reducer, options).run();
}

}  // namespace ohmfold
