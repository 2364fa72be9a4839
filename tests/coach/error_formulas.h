// A second table of what known errors give, to check every name that a diagnosis gives.
#pragma once

#include <array>
#include <set>
#include <string>
#include <vector>

#include "coach/error_scene.h"

namespace ohmfold::test {

/// Collects whether one of several numbers is that which was written.
class Candidates {
 public:
  explicit Candidates(Number written) : written_(std::move(written)) {}
  void add(const Number& number) { hit_ = hit_ || abs(number) == abs(written_); }
  /// In ohm, kilohm or megohm, for a result of so many powers of ohm.
  void add_in_units(const Number& number, int power) {
    Number factor(1);
    for (int unit = 0; unit < 3; ++unit) {
      Number value = number;
      for (int i = 0; i < std::abs(1 - power); ++i) {
        value = power < 1 ? value * factor : value / factor;
      }
      add(value);
      factor = factor * 1000;
    }
  }
  [[nodiscard]] bool hit() const { return hit_; }

 private:
  Number written_;
  bool hit_ = false;
};

/// Slips that do not depend on what the value is of.
inline std::optional<bool> slip_gives(KnownError error, const Number& right, Candidates found) {
  if (error == KnownError::prefix_slip) {
    for (const int factor : {1000, 1'000'000}) {
      found.add(right * factor);
      found.add(right / factor);
    }
    return found.hit();
  }
  if (error == KnownError::decimal_point_slip) {
    for (const int factor : {10, 100}) {
      found.add(right * factor);
      found.add(right / factor);
    }
    return found.hit();
  }
  return std::nullopt;
}

/// Of a combination with these values, and the values of all parts of the file.
inline std::optional<bool> combination_gives(KnownError error, Joining how, const Numbers& r,
                                             Candidates found) {
  using enum KnownError;
  const Number sum = follow(support::Way::sum, r);
  const Number product = follow(support::Way::product, r);
  const Number parallel = follow(support::Way::reciprocal_sum, r);
  const int count = static_cast<int>(r.size());
  switch (error) {
    case not_inverted:
      found.add_in_units(1 / parallel, -1);
      break;
    case reciprocal_of_sum:
      found.add_in_units(1 / sum, -1);
      break;
    case product_without_sum:
      found.add_in_units(product, count);
      break;
    case sum_over_product:
      found.add_in_units(sum / product, 1 - count);
      break;
    case product_over_sum_of_all:
      if (count > 2) found.add_in_units(product / sum, count - 1);
      break;
    case numerators_added:
      if (count == 2) found.add_in_units(product / 2, 2);
      break;
    case average:
      found.add(sum / count);
      break;
    case added_in_parallel:
      if (how == Joining::parallel) found.add(sum);
      break;
    case reciprocals_in_series:
      if (how == Joining::series) found.add(parallel);
      break;
    case difference:
      if (count == 2) found.add(r[0] - r[1]);
      break;
    case divided_by_count:
      for (const Number& one : r) found.add(one / count);
      break;
    case brackets_missing:
      for (const Number& one : r) found.add(one * 2);
      break;
    case operand_left_out:
      for (std::size_t set = 1; set + 1 < (std::size_t{1} << r.size()); ++set) {
        Numbers some;
        for (std::size_t i = 0; i < r.size(); ++i) {
          if (((set >> i) & 1U) != 0) some.push_back(r[i]);
        }
        const auto way = how == Joining::series ? support::Way::sum : support::Way::reciprocal_sum;
        if (some.size() > 1) found.add(follow(way, some));
      }
      break;
    case impossible_size:
      return how == Joining::series ? true : std::optional<bool>();
    default:
      return std::nullopt;
  }
  return found.hit();
}

/// Of a current, voltage or power of a part with this resistance, current and voltage.
inline std::optional<bool> law_gives(KnownError error, char what, const Numbers& riv,
                                     Candidates found) {
  const Number& r = riv[0];
  const Number& i = riv[1];
  const Number& v = riv[2];
  if (error == KnownError::ohm_upside_down) {
    if (what == 'I') {
      found.add(v * r);
      found.add(r / v);
    } else {
      found.add(r / i);
      found.add(i / r);
    }
    return found.hit();
  }
  if (error == KnownError::power_formula) {
    for (const Number& number : {v * i / 2, v / i, i / v, i * r, i * i / r, v * v * r, v / r}) {
      found.add(number);
    }
    return found.hit();
  }
  return std::nullopt;
}

/// Of a part within a group; `group` and `part` name them.
inline void add_share(KnownError error, const Made& group, const std::string& part,
                      const std::map<std::string, Number>& exact, Candidates& found) {
  using enum KnownError;
  Number sum(0);
  for (const std::string& operand : group.operands) sum += exact.at("R " + operand);
  const Number& own = exact.at("R " + part);
  const Number& i = exact.at("I " + group.name);
  const Number& v = exact.at("V " + group.name);
  const int count = static_cast<int>(group.operands.size());
  const bool series = group.how == Joining::series;
  if (error == split_equally && !series) found.add(i / count);
  if (error == split_in_proportion && !series) found.add(i * own / sum);
  if (error == no_split && !series) found.add(i);
  if (error == two_branch_rule_on_more && !series) {
    found.add(i * (sum - own) / sum);
    found.add(i * (sum - own) / (sum * (count - 1)));
  }
  if (error == voltage_shared_equally && series) found.add(v / count);
  if (error == voltage_split_in_parallel && !series) {
    found.add(v / count);
    found.add(v * own / sum);
  }
  if (error == divider_upside_down && series) found.add(v * (sum - own) / sum);
  if (error == divider_from_source && series) found.add(exact.at("E") * own / sum);
  if (error == drops_of_parallel_added && !series) found.add(v * count);
}

/// Does the error give this number for what `key` is the value of? Nothing where this table does
/// not know.
inline std::optional<bool> gives(KnownError error, const RandomWork& scene, const std::string& key,
                                 const Number& number) {
  using enum KnownError;
  const std::map<std::string, Number> exact = support::exact_values(scene.book);
  const Candidates found(number);
  if (auto slip = slip_gives(error, exact.at(key), found)) return slip;
  const std::string part = key.substr(2);
  if (key.front() == 'R') {
    for (const Made& made : scene.made) {
      if (made.name != part) continue;
      Numbers values;
      for (const std::string& operand : made.operands) values.push_back(exact.at("R " + operand));
      return combination_gives(error, made.how, values, found);
    }
    return std::nullopt;
  }
  if (part == "X0") return std::nullopt;
  const Numbers riv{exact.at("R " + part), exact.at("I " + part), exact.at("V " + part)};
  if (auto law = law_gives(error, key.front(), riv, found)) return law;
  static const std::set<KnownError> kShares{
      split_equally,           split_in_proportion,    no_split,
      two_branch_rule_on_more, voltage_shared_equally, voltage_split_in_parallel,
      divider_upside_down,     divider_from_source,    drops_of_parallel_added};
  if (!kShares.contains(error)) return std::nullopt;
  Candidates share = found;
  std::string inner = part;
  for (const Made& made : scene.made) {
    if (std::count(made.operands.begin(), made.operands.end(), inner) == 0) continue;
    add_share(error, made, inner, exact, share);
    inner = made.name;
  }
  return share.hit();
}

}  // namespace ohmfold::test
