// Claims of the transformations between delta and star.
#include <algorithm>
#include <array>

#include "coach/claim_judge.h"
#include "coach/errors.h"
#include "coach/value_judge.h"

namespace ohmfold {
namespace {

using Order = std::vector<std::size_t>;

constexpr std::array<std::array<std::size_t, 3>, 6> kOrders{
    {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}}};

bool touches(const NewPart& part, const Network& network, PartId other) {
  for (const PointId end : {network.from(other), network.to(other)}) {
    if (part.from == end || part.to == end) return true;
  }
  return false;
}

// Does the arm lie opposite the side: do they meet nowhere? For a star that becomes a delta, the
// side that comes must not touch the outer end of the arm.
bool is_opposite(const NewPart& added, const Network& network, PartId taken, RuleName rule,
                 PointId middle) {
  if (rule == RuleName::delta_star) return !touches(added, network, taken);
  const PointId outer = network.across(taken, middle);
  return added.from != outer && added.to != outer;
}

// The point that all three arms share.
PointId middle_of(const Network& network, const std::vector<PartId>& arms) {
  for (const PointId point : {network.from(arms[0]), network.to(arms[0])}) {
    const bool shared = std::all_of(arms.begin(), arms.end(), [&](PartId arm) {
      return network.from(arm) == point || network.to(arm) == point;
    });
    if (shared) return point;
  }
  return {};
}

bool all_agree(const std::vector<WrittenValue>& values, const Edit& edit, const Order& order) {
  for (std::size_t i = 0; i < values.size(); ++i) {
    if (!agrees(values[i], edit.adds.at(order[i]).resistance.lowest_terms())) return false;
  }
  return true;
}

// Which of the parts that come each name is for: the one opposite the part taken of the same
// place, or else the order that the values say.
Order order_of(const Network& network, const RewriteClaim& claim, const Edit& edit,
               const std::vector<PartId>& takes) {
  const PointId middle = middle_of(network, takes);
  Order order;
  for (const PartId taken : takes) {
    for (std::size_t i = 0; i < edit.adds.size(); ++i) {
      if (is_opposite(edit.adds[i], network, taken, claim.rule, middle)) order.push_back(i);
    }
  }
  if (order.size() != takes.size()) order = {0, 1, 2};
  if (claim.values.empty() || all_agree(claim.values, edit, order)) return order;
  for (const auto& other : kOrders) {
    Order said(other.begin(), other.end());
    if (all_agree(claim.values, edit, said)) return said;
  }
  return order;
}

}  // namespace

void ClaimJudge::judge_claim(const RewriteClaim& claim) {
  line_.rule = claim.rule;
  std::vector<PartId> takes;
  for (const WrittenName& name : claim.takes) {
    const auto part = find_part(name);
    if (!part) {
      line_.step = StepVerdict::cannot_tell;
      return;
    }
    takes.push_back(*part);
  }
  line_.operands = takes;
  line_.leaves = book_.leaves_of(takes);
  for (const WrittenName& name : claim.makes) {
    if (book_.part_named(name.text)) hinder(Hindrance::name_taken, name.text);
  }
  const bool taken = is_hindered();
  if (!may_be_combined(takes)) {
    line_.step = StepVerdict::refused;
    return;
  }
  Order order;
  for (const Network* network : book_.networks.with(takes)) {
    const StepTest test = test_for(claim.rule);
    if (!test.judge(*network, {takes, {}, {}}).allowed) continue;
    order = order_of(*network, claim, test.edit(*network, {takes, {}, {}}), takes);
    break;
  }
  const StepResult result = book_.networks.rewrite(claim.rule, takes, order);
  line_.step = result.verdict;
  line_.why = result.why;
  line_.makes = result.makes;
  if (!result.makes.exists() || taken) return;
  for (std::uint32_t i = 0; i < claim.makes.size(); ++i) {
    book_.add_made({result.makes.index + i}, {{},
                                              claim.rule,
                                              i == 0 ? takes : std::vector<PartId>{},
                                              line_.leaves,
                                              number_,
                                              claim.makes[i].text});
  }
  if (claim.rule == RuleName::delta_star && claim.middle) {
    const Network& network = book_.networks.own();
    book_.name_point(PointId{static_cast<std::uint32_t>(network.point_count() - 1)},
                     claim.middle->text);
  }
  if (result.in_main) book_.note_true_arms(result.makes, claim.makes.size());
  judge_arms(claim, takes, result.makes);
}

void ClaimJudge::judge_arms(const RewriteClaim& claim, const std::vector<PartId>& takes,
                            PartId first) {
  bool is_exact = true;
  bool is_right = true;
  for (std::uint32_t i = 0; i < claim.makes.size(); ++i) {
    const PartId part{first.index + i};
    const Truth truth = book_.truth({Claimed::value, part, {}, {}});
    if (claim.values.empty()) {
      if (truth.value) {
        book_.set_own_resistance(part, {truth.value->number, Range::of(truth.value->number), {}});
      }
      continue;
    }
    const WrittenValue& written = claim.values[i];
    const ValueVerdict before = line_.value;
    const std::optional<Quantity> stated = line_.stated;
    const std::optional<Quantity> right = line_.right;
    const std::optional<Number> number = number_of(truth);
    const ValueFinding found =
        judge_value(book_, {written, number, false, [] { return std::vector<Route>{}; }});
    state(written, Unit::ohm, truth);
    line_.value = found.verdict;
    judge_figures(written, number);
    const Quality quality = quality_of(found.verdict);
    is_exact = is_exact && quality.is_exact;
    is_right = is_right && quality.is_right;
    book_.set_own_resistance(part, own_of(written));
    if (found.verdict == ValueVerdict::wrong) {
      for (Diagnosis& error :
           errors_in(RewritePlace{book_, claim.rule, takes, i, written, number})) {
        line_.errors.push_back(std::move(error));
      }
    }
    // The line is as right as the least right of its values; that one is spoken of.
    if (before > line_.value) {
      line_.value = before;
      line_.stated = stated;
      line_.right = right;
    }
  }
  book_.set_quality(number_, {is_exact, is_right});
}

}  // namespace ohmfold
