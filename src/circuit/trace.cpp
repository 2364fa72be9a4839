// The log of steps, and the network as it stood after any of them.
#include "ohmfold/trace.h"

#include <algorithm>

#include "exact/combine.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

template <class T>
std::span<const T> between(const std::vector<T>& pool, std::size_t begin, std::size_t end) {
  return {pool.data() + begin, end - begin};
}

std::uint32_t size_of(std::size_t pool) {
  ensure(pool < UINT32_MAX, "a log of more than four thousand million entries");
  return static_cast<std::uint32_t>(pool);
}

// Most steps do, and what comes is then known from their points and the network at the end.
bool makes_one_resistor(const Edit& edit) {
  return edit.adds.size() == 1 && edit.adds.front().kind == ElementKind::resistor &&
         edit.new_points == 0;
}

}  // namespace

void StepLog::reserve(std::size_t parts) {
  // Each step that combines leaves at least one part less and takes those it makes but the last.
  records_.reserve(parts);
  takes_.reserve(2 * parts);
  why_.reserve(parts);
}

void StepLog::append(RuleName rule, std::uint32_t stage, const Place& place, const Edit& edit,
                     PartId makes, const std::vector<Fact>& why) {
  records_.push_back({size_of(takes_.size()), size_of(merges_.size()), size_of(why_.size()),
                      size_of(adds_.size()), stage, edit.new_points, place.first, place.second,
                      makes, rule, edit.merging, edit.formula, edit.scope, edit.back});
  takes_.insert(takes_.end(), edit.removes.begin(), edit.removes.end());
  merges_.insert(merges_.end(), edit.merges.begin(), edit.merges.end());
  why_.insert(why_.end(), why.begin(), why.end());
  if (!makes_one_resistor(edit)) adds_.insert(adds_.end(), edit.adds.begin(), edit.adds.end());
}

Step StepLog::operator[](std::size_t index) const {
  const Record& at = records_[index];
  const bool last = index + 1 == records_.size();
  const std::size_t takes_end = last ? takes_.size() : records_[index + 1].takes_begin;
  const std::size_t merges_end = last ? merges_.size() : records_[index + 1].merges_begin;
  const std::size_t why_end = last ? why_.size() : records_[index + 1].why_begin;
  const std::size_t adds_end = last ? adds_.size() : records_[index + 1].adds_begin;
  return {index + 1,     at.stage,
          at.rule,       between(takes_, at.takes_begin, takes_end),
          at.makes,      between(adds_, at.adds_begin, adds_end),
          at.new_points, between(merges_, at.merges_begin, merges_end),
          at.merging,    at.first,
          at.second,     between(why_, at.why_begin, why_end),
          at.formula,    at.scope,
          at.back};
}

namespace {

// The value that a step makes, from the record or, where it was let go, from the parts taken.
Ratio made_value(const Reduction& reduction, const Network& before, const Step& step) {
  if (reduction.end.knows_resistance(step.makes)) return reduction.end.resistance(step.makes);
  std::vector<Ratio> values;
  for (const PartId part : step.takes) values.push_back(before.resistance(part));
  return step.formula == Formula::sum ? combine_series(std::move(values))
                                      : combine_parallel(std::move(values));
}

}  // namespace

Network replay(const Reduction& reduction, std::size_t steps) {
  Network network = reduction.start;
  for (std::size_t i = 0; i < steps; ++i) {
    const Step step = reduction.steps[i];
    Edit edit;
    edit.removes.assign(step.takes.begin(), step.takes.end());
    edit.merges.assign(step.merges.begin(), step.merges.end());
    edit.merging = step.merging;
    edit.new_points = step.new_points;
    edit.adds.assign(step.adds.begin(), step.adds.end());
    if (step.makes.exists() && step.adds.empty()) {
      edit.adds.push_back({step.first, step.second, made_value(reduction, network, step)});
    }
    ensure(network.commit(edit) == step.makes, "a replayed step made another part");
    // What was let go there is let go here, as soon as it is used.
    for (const PartId part : step.takes) {
      if (!reduction.end.knows_resistance(part)) network.forget_resistance(part);
    }
  }
  return network;
}

bool Trace::is_beyond_budget() const {
  return std::any_of(cases.begin(), cases.end(),
                     [](const CaseTrace& c) { return c.beyond_budget.has_value(); });
}

Reading voltage_in_share(const Network& together, const Share& share, PartId part) {
  Reading voltage = share.alone.branches.at(part.index).voltage;
  const bool turned =
      counts_rise(together.kind(part)) != counts_rise(share.alone.main.start.kind(part));
  if (turned && voltage.value) voltage.value->number = -voltage.value->number;
  return voltage;
}

bool Trace::has_contradiction() const {
  return std::any_of(cases.begin(), cases.end(),
                     [](const CaseTrace& c) { return c.contradiction.has_value(); });
}

}  // namespace ohmfold
