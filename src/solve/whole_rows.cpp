// Making the equations whole, and dividing what is left of them by the prime exactly.
#include "solve/whole_rows.h"

#include <cln/rational.h>

#include <type_traits>

namespace ohmfold {
namespace {

using Value = PrimeField::Value;
using Entries = std::vector<std::pair<std::uint32_t, cln::cl_I>>;

// The smallest number that makes all conductances whole, over their common factor then.
Number scale_of(std::span<const Neighbours::Entry> row) {
  cln::cl_I multiple = 1;
  for (const auto& entry : row) multiple = cln::lcm(multiple, entry.conductance.denominator());
  cln::cl_I common = 0;
  for (const auto& entry : row) {
    common = cln::gcd(common, (Number(cln::cl_RA(multiple)) * entry.conductance).numerator());
    if (common == 1) break;
  }
  return Number::quotient(multiple, common);
}

// x with x * odd = 1 modulo 2^64, by Newton's method: each round doubles the right bits, 3 at
// first.
std::uint64_t inverse_modulo_word(std::uint64_t odd) {
  std::uint64_t inverse = odd;
  for (int round = 0; round < 5; ++round) inverse *= 2 - odd * inverse;
  return inverse;
}

cln::cl_I whole(std::int64_t word) {
  return {static_cast<long>(word)};
}
const cln::cl_I& whole(const cln::cl_I& number) {
  return number;
}

Value residue(const PrimeField& field, std::int64_t word) {
  return field.from_word(word);
}
Value residue(const PrimeField& field, const cln::cl_I& number) {
  return field.from(number);
}

}  // namespace

template <class Whole>
void WholeRows::add(std::uint32_t node, const Entries& entries, const cln::cl_I& total,
                    const cln::cl_I& brought, const Number& scale, Rows<Whole>& to) {
  const auto as_whole = [](const cln::cl_I& number) -> Whole {
    if constexpr (std::is_same_v<Whole, std::int64_t>) {
      return cln::cl_I_to_Q(number);
    } else {
      return number;
    }
  };
  const auto begin = static_cast<std::uint32_t>(to.entries.size());
  for (const auto& [other, value] : entries) to.entries.emplace_back(other, as_whole(value));
  const auto end = static_cast<std::uint32_t>(to.entries.size());
  to.rows.push_back({node, begin, end, as_whole(total), as_whole(brought), 0, 0, 0, scale});
  const std::size_t words =
      std::is_same_v<Whole, std::int64_t> ? 1 : 2 + cln::integer_length(total + brought) / 16;
  cost_ += (entries.size() + 3) * words;
}

WholeRows::WholeRows(const Neighbours& neighbours, const std::vector<bool>& is_ground,
                     const std::vector<Number>& brought) {
  std::vector<Number> scales(neighbours.size());
  for (std::size_t node = 0; node < scales.size(); ++node) {
    if (is_ground[node]) continue;
    scales[node] = scale_of(neighbours.of(node));
    multiplier_ = cln::lcm(multiplier_, (scales[node] * brought[node]).denominator());
  }
  const Number all(cln::cl_RA{multiplier_});
  for (std::uint32_t node = 0; node < scales.size(); ++node) {
    if (is_ground[node]) continue;
    Entries entries;
    cln::cl_I total = 0;
    for (const auto& [other, conductance] : neighbours.of(node)) {
      entries.emplace_back(other, (scales[node] * conductance).numerator());
      total = total + entries.back().second;
    }
    const cln::cl_I right = (scales[node] * brought[node] * all).numerator();
    // What is left is less than half of this in size, with digits less than half of the prime.
    const cln::cl_I most = 2 * total + cln::abs(right) + 2;
    if (cln::integer_length(most) < 62) {
      add(node, entries, total, right, scales[node], short_);
    } else {
      add(node, entries, total, right, scales[node], long_);
    }
  }
}

bool WholeRows::choose(const PrimeField& field) {
  field_ = field;
  word_inverse_ = inverse_modulo_word(field.prime());
  const auto prepare = [&](auto& rows) {
    for (auto& row : rows.rows) {
      const Value numerator = field.from(row.scale.numerator());
      const Value denominator = field.from(row.scale.denominator());
      if (numerator == 0 || denominator == 0) return false;
      row.scale_inverse = numerator == 1 ? denominator : field.divide(denominator, numerator);
      row.brought_residue = residue(field, row.brought);
      row.left = 0;
    }
    return true;
  };
  return prepare(short_) && prepare(long_);
}

void WholeRows::restart() {
  for (auto& row : short_.rows) row.left = 0;
  for (auto& row : long_.rows) row.left = 0;
}

void WholeRows::remaining(std::int64_t digit, std::vector<Value>& currents) {
  const Value next = field_->from_word(digit);
  const auto fill = [&](const auto& rows) {
    for (const auto& row : rows.rows) {
      Value sum = residue(*field_, row.left);
      if (row.brought_residue != 0) {
        sum = field_->add(sum, field_->multiply(next, row.brought_residue));
      }
      currents[row.node] = field_->multiply(sum, row.scale_inverse);
    }
  };
  fill(short_);
  fill(long_);
}

void WholeRows::take_off(std::int64_t digit, const std::vector<std::int64_t>& potentials) {
  // The quotient by the prime fits a word, so that it is exact modulo 2^64.
  for (auto& row : short_.rows) {
    const auto word = [](std::int64_t value) { return static_cast<std::uint64_t>(value); };
    std::uint64_t left = word(row.left) + word(digit) * word(row.brought);
    left -= word(row.total) * word(potentials[row.node]);
    for (std::uint32_t i = row.begin; i < row.end; ++i) {
      const auto& [other, value] = short_.entries[i];
      left += word(value) * word(potentials[other]);
    }
    row.left = static_cast<std::int64_t>(left * word_inverse_);
  }
  if (long_.rows.empty()) return;
  const cln::cl_I prime(static_cast<unsigned long>(field_->prime()));
  for (auto& row : long_.rows) {
    cln::cl_I left = row.left + whole(digit) * row.brought;
    left = left - row.total * whole(potentials[row.node]);
    for (std::uint32_t i = row.begin; i < row.end; ++i) {
      const auto& [other, value] = long_.entries[i];
      left = left + value * whole(potentials[other]);
    }
    row.left = cln::exquo(left, prime);
  }
}

bool WholeRows::is_nothing_left() const {
  for (const auto& row : short_.rows) {
    if (row.left != 0) return false;
  }
  for (const auto& row : long_.rows) {
    if (!cln::zerop(row.left)) return false;
  }
  return true;
}

bool WholeRows::hold(const SharedFractions& potentials) const {
  const auto all_hold = [&](const auto& rows) {
    for (const auto& row : rows.rows) {
      cln::cl_I leaving = whole(row.total) * potentials.numerators[row.node];
      for (std::uint32_t i = row.begin; i < row.end; ++i) {
        const auto& [other, value] = rows.entries[i];
        leaving = leaving - whole(value) * potentials.numerators[other];
      }
      if (leaving * multiplier_ != whole(row.brought) * potentials.denominator) return false;
    }
    return true;
  };
  return all_hold(short_) && all_hold(long_);
}

}  // namespace ohmfold
