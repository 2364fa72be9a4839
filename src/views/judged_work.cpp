// A judged work with its names: lines, values as they were written, subjects of claims.
#include "views/judged_work.h"

#include <algorithm>

#include "exact/rounded.h"
#include "ohmfold/error.h"

namespace ohmfold::views {

namespace {

std::optional<std::string_view> prefix_of(const WrittenValue& value) {
  return prefix_symbol(value.power, Letters::unicode);
}

/// The number with the prefix and the unit that the value was written with.
Words with_unit_of(const WrittenValue& value, std::string number) {
  const std::string_view prefix = prefix_of(value).value_or("");
  if (number.starts_with('-')) number.replace(0, 1, "−");
  if (!value.unit && prefix.empty()) return say(number);
  return say(number, "\u00A0", prefix, value.unit ? symbol(*value.unit, Letters::unicode) : "");
}

}  // namespace

std::optional<int> figures_of(std::string_view digits) {
  if (digits.empty() || digits.find_first_of("/eE") != std::string_view::npos) return std::nullopt;
  const bool has_point = digits.find('.') != std::string_view::npos;
  if (!has_point && digits.ends_with('0')) return std::nullopt;
  const std::size_t first = digits.find_first_of("123456789");
  if (first == std::string_view::npos) return std::nullopt;
  const std::string_view rest = digits.substr(first);
  return static_cast<int>(
      std::count_if(rest.begin(), rest.end(), [](char c) { return c >= '0' && c <= '9'; }));
}

Words written_words(const WrittenValue& value, int figures) {
  if (value.digits.empty() || !prefix_of(value)) {
    return say(Amount{{value.number, value.unit.value_or(Unit::ohm)}, Form::compact, figures});
  }
  return with_unit_of(value, value.digits);
}

std::optional<Quantity> CaseWords::resistance(PartId part) const {
  if (part.index < standing.own_resistance.size() && standing.own_resistance[part.index]) {
    return Quantity(*standing.own_resistance[part.index], Unit::ohm);
  }
  const Network& network = standing.network;
  if (!words.is_kind(part, ElementKind::resistor) || !network.knows_resistance(part)) {
    return std::nullopt;
  }
  return Quantity(network.resistance(part).lowest_terms(), Unit::ohm);
}

Words CaseWords::quantity(Claimed claimed, PartId of, PointId at, PointId to) const {
  switch (claimed) {
    case Claimed::current:
      return say("the current through ", words.part(of));
    case Claimed::voltage:
      return say("the voltage across ", words.part(of));
    case Claimed::power:
      return say("the power in ", words.part(of));
    case Claimed::value:
      return say("the value of ", words.part(of));
    case Claimed::voltage_between:
      return say("the voltage from ", words.point(at), " to ", words.point(to));
    case Claimed::potential:
      return say("the potential at ", words.point(at));
    case Claimed::resistance_between:
      return say("the resistance between ", words.point(at), " and ", words.point(to));
    case Claimed::resistance_seen_by:
      return say("the resistance that ", words.described(of), " feeds");
    case Claimed::whole_resistance:
      return say("the equivalent resistance");
  }
  throw InternalError("a claim of an unknown kind");
}

JudgedWork::JudgedWork(const Exercise& the_exercise, const Work& the_work,
                       const WorkJudgement& the_judged, int the_figures)
    : exercise(the_exercise),
      work(the_work),
      judged(the_judged),
      figures(the_figures > 0 ? the_figures : the_exercise.problem->figures) {
  for (const CaseStanding& standing : judged.cases) {
    cases_.emplace_back(problem(), standing, figures);
  }
}

std::size_t JudgedWork::line_number(std::size_t claim) const {
  const std::uint32_t line = work.claims.at(claim).where.line;
  return line > 0 ? line : claim + 1;
}

Words JudgedWork::lines(std::span<const std::size_t> claims) const {
  constexpr std::size_t kMostLines = 6;
  std::vector<Words> numbers;
  for (const std::size_t claim : claims) numbers.push_back(say(std::to_string(line_number(claim))));
  return say(claims.size() == 1 ? "line\u00A0" : "lines\u00A0", listed(numbers, kMostLines));
}

const WrittenValue* JudgedLine::written() const {
  struct Reader {
    const Judgement& judgement;
    const WrittenValue* operator()(const CombineClaim& combine) const {
      return combine.value ? &*combine.value : nullptr;
    }
    const WrittenValue* operator()(const ValueClaim& single) const { return &single.value; }
    const WrittenValue* operator()(const RewriteClaim& rewrite) const {
      // Of the three values the one that the judgement speaks of.
      for (const WrittenValue& value : rewrite.values) {
        if (judgement.stated && value.number == judgement.stated->number) return &value;
      }
      return nullptr;
    }
    const WrittenValue* operator()(const SamePotentialClaim&) const { return nullptr; }
    const WrittenValue* operator()(const NoCurrentClaim&) const { return nullptr; }
    const WrittenValue* operator()(const NoPairClaim&) const { return nullptr; }
    const WrittenValue* operator()(const CaseClaim&) const { return nullptr; }
  };
  return std::visit(Reader{judgement}, claim.says);
}

Words JudgedLine::stated() const {
  const WrittenValue* value = written();
  if (value != nullptr) return written_words(*value, words.figures);
  if (!judgement.stated) return {};
  return say(Amount{*judgement.stated, Form::compact, words.figures});
}

std::optional<int> JudgedLine::stated_figures() const {
  const WrittenValue* value = written();
  return value == nullptr ? std::nullopt : figures_of(value->digits);
}

Words JudgedLine::right_as_stated() const {
  if (!judgement.right) return {};
  const Quantity& right = *judgement.right;
  const WrittenValue* value = written();
  const std::optional<int> figures = stated_figures();
  if (value == nullptr || !figures || !prefix_of(*value) || right.number.is_symbolic()) {
    return words.value(right);
  }
  return with_unit_of(*value, round_to_figures(scaled(right.number, -value->power), *figures));
}

std::optional<Quantity> JudgedLine::target() const {
  return judgement.own ? judgement.own : judgement.right;
}

Words JudgedLine::subject() const {
  if (judgement.claimed) {
    return words.quantity(*judgement.claimed, judgement.of, judgement.at, judgement.to);
  }
  if (const auto* combine = std::get_if<CombineClaim>(&claim.says)) {
    return say(PartName{combine->makes.text});
  }
  if (judgement.makes.exists()) return say(words.words.part(judgement.makes));
  return say("this value");
}

}  // namespace ohmfold::views
