// The names that a work can use, and what short forms such as V_AB mean by them.

#include "language/work_names.h"

#include <utility>

namespace ohmfold {
namespace {

/// Longer names are not tried as two points that run together: each place to cut costs a look at
/// the whole name.
constexpr std::size_t kLongestRun = 200;

/// The bytes of a word from `begin` to `end`.
Token piece_of(const Token& word, std::size_t begin, std::size_t end) {
  Token piece = word;
  piece.text = word.text.substr(begin, end - begin);
  piece.where.column += static_cast<std::uint32_t>(begin);
  piece.where.length = static_cast<std::uint32_t>(piece.text.size());
  return piece;
}

}  // namespace

WorkNames::WorkNames(const Problem& problem) : problem_(problem) {
  for (const Part& part : problem.parts) parts_.add(part.name);
  for (const std::string& point : problem.points) points_.add(point);
  for (const SymbolMeaning& symbol : problem.symbols) symbols_.add(symbol.name);
}

void WorkNames::add_part(const WrittenName& name) {
  if (!parts_.contains(name.text)) parts_.add(made_.emplace_back(name.text));
}

void WorkNames::add(const Claim& claim) {
  if (const auto* combine = std::get_if<CombineClaim>(&claim.says)) add_part(combine->makes);
  const auto* rewrite = std::get_if<RewriteClaim>(&claim.says);
  if (rewrite == nullptr) return;
  for (const WrittenName& name : rewrite->makes) add_part(name);
  if (rewrite->middle && !points_.contains(rewrite->middle->text)) {
    points_.add(made_.emplace_back(rewrite->middle->text));
  }
}

const Part* WorkNames::problem_part(std::string_view name) const {
  const auto number = parts_.find(name);
  return number && *number < problem_.parts.size() ? &problem_.parts[*number] : nullptr;
}

std::vector<ShortMeaning> WorkNames::cuts(const Token& run, Claimed claimed) const {
  std::vector<ShortMeaning> found;
  const std::size_t size = run.text.size();
  for (std::size_t cut = 1; cut < size && size <= kLongestRun; ++cut) {
    if (!points_.contains(run.text.substr(0, cut))) continue;
    if (!points_.contains(run.text.substr(cut))) continue;
    found.push_back({claimed, piece_of(run, 0, cut), piece_of(run, cut, size)});
  }
  return found;
}

std::vector<ShortMeaning> WorkNames::voltages(const Token& name) const {
  if (is_part(name.text)) return {{Claimed::voltage, name, {}}};
  if (points_.contains(name.text)) return {{Claimed::potential, name, {}}};
  return cuts(name, Claimed::voltage_between);
}

std::vector<ShortMeaning> WorkNames::meanings(const Token& word) const {
  if (word.text == kWholeName && problem_part(word.text) == nullptr) {
    return {{Claimed::whole_resistance, {}, {}}};
  }
  const ShortMeaning value{Claimed::value, word, {}};
  if (word.text.size() < 3 || word.text[1] != '_') return {value};
  const Token rest = piece_of(word, 2, word.text.size());
  std::vector<ShortMeaning> found;
  ShortMeaning otherwise = value;
  switch (word.text.front()) {
    case 'R':
      if (!is_part(word.text)) found = cuts(rest, Claimed::resistance_between);
      break;
    case 'V':
      otherwise = {Claimed::voltage, rest, {}};
      found = voltages(rest);
      break;
    case 'I':
    case 'P':
      otherwise = {word.text.front() == 'I' ? Claimed::current : Claimed::power, rest, {}};
      if (is_part(rest.text)) found = {otherwise};
      break;
    default:
      return {value};
  }
  if (is_part(word.text)) found.push_back(value);
  return found.empty() ? std::vector{otherwise} : found;
}

std::string in_words(const ShortMeaning& meaning) {
  const std::string first(meaning.first.text);
  const std::string second(meaning.second.text);
  switch (meaning.claimed) {
    case Claimed::current:
      return "current through " + first;
    case Claimed::voltage:
      return "voltage across " + first;
    case Claimed::power:
      return "power in " + first;
    case Claimed::value:
      return "value of " + first;
    case Claimed::voltage_between:
      return "voltage from " + first + " to " + second;
    case Claimed::potential:
      return "potential at " + first;
    case Claimed::resistance_between:
      return "resistance between " + first + " and " + second;
    case Claimed::resistance_seen_by:
      return "resistance seen by " + first;
    case Claimed::whole_resistance:
      break;
  }
  return "equivalent resistance";
}

Unit plain_unit(Claimed claimed, std::string_view name, const WorkNames& names) {
  const Part* part = claimed == Claimed::value ? names.problem_part(name) : nullptr;
  return part == nullptr ? unit_of(claimed) : unit_of_value(part->kind);
}

WrittenName written_name(const Token& token) {
  return {std::string(token.text), token.where};
}

}  // namespace ohmfold
