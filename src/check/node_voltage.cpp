// Comparing results with the solution of the node equations.
#include "check/node_voltage.h"

#include <string>

#include "check/arithmetic.h"
#include "check/flow.h"
#include "check/matrix_solution.h"
#include "check/node_comparison.h"
#include "check/node_equations.h"
#include "check/rationals.h"
#include "check/report.h"
#include "ohmfold/error.h"

namespace ohmfold {
namespace {

using check::Rationals;

constexpr std::size_t kMostUnknowns = 24;
constexpr std::size_t kMostBits = 4000;
// Up to so many parts the equations are solved modulo check::kPrimes primes, beyond modulo one:
// what is left to chance then is less than one in 10^12 still.
constexpr std::size_t kMostForAllPrimes = 5000;

// Does a value depend on a symbol?
bool is_symbolic(const Network& network) {
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    if (network.is_symbolic(PartId{i})) return true;
  }
  return false;
}

bool uses_matrix(const Network& network, check::Method method) {
  if (method != check::Method::by_size) return method == check::Method::matrix;
  std::size_t bits = 0;
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    if (network.is_alive(PartId{i})) bits += network.value_bits(PartId{i});
  }
  return bits <= kMostBits && check::count_unknowns(network) <= kMostUnknowns;
}

// Is the resistance, as the difference of potentials at 1 A, the one that was read?
template <class Field>
Check compare_resistance(const Field& field, const check::Injection& at, const Number& read,
                         const std::vector<typename Field::Value>& potential) {
  Check check{CheckLaw::resistance, true, 0, {}, {}, 1, 0, {}};
  const auto meant = field.subtract(potential[at.in.index], potential[at.out.index]);
  const auto rest = field.subtract(field.from(read), meant);
  if (rest == field.from(Number(0))) return check;
  check::fail(check, "resistance between " + check::name_of(at.in) + " and " +
                         check::name_of(at.out) + ": off by " + field.text(rest) +
                         " ohm, compared with " + field.text(meant) + " ohm");
  return check;
}

check::Injection port_of(const Network& network) {
  for (std::uint32_t i = 0; i < network.part_count(); ++i) {
    const PartId part{i};
    if (!network.is_alive(part)) continue;
    ensure(network.kind(part) != ElementKind::battery &&
               network.kind(part) != ElementKind::current_source,
           "a resistance asked for with a source in");
    if (network.kind(part) == ElementKind::port) return {network.from(part), network.to(part)};
  }
  throw InternalError("a resistance asked for without a port");
}

// The check over `compare(field, potentials)`, exactly or modulo primes.
template <class Compare>
std::optional<Check> compare_potentials(const Network& network, const check::Wiring& wiring,
                                        const std::optional<check::Injection>& injection,
                                        check::Method method, Compare compare) {
  if (uses_matrix(network, method)) {
    if (is_symbolic(network)) {
      const auto potential =
          check::node_potentials(Rationals{}, network, wiring, injection, check::kMostCore);
      if (potential) return compare(Rationals{}, *potential);
      return std::nullopt;
    }
    return compare(Rationals{}, check::matrix_potentials(network, injection));
  }
  std::vector<Check> all;
  const int primes = network.part_count() <= kMostForAllPrimes ? check::kPrimes : 1;
  for (const PrimeField& field : check::random_fields(primes)) {
    const auto potential =
        check::node_potentials(field, network, wiring, injection, check::kMostCore);
    if (!potential) return std::nullopt;
    check::add_prime(all, {compare(field, *potential)});
  }
  return all.front();
}

}  // namespace

std::optional<Check> check_node_voltages(const Network& start, const CaseTrace& results,
                                         check::Method method) {
  const check::Wiring wiring(start);
  return compare_potentials(start, wiring, std::nullopt, method,
                            [&](const auto& field, const auto& potential) {
                              const auto flow = check::state_flow(field, results, start);
                              return check::compare_flow(field, start, wiring, flow, potential);
                            });
}

std::optional<Check> check_short_circuit(const Network& start, PointId first, PointId second,
                                         const Reading& reading, check::Method method) {
  if (!reading.value) return std::nullopt;
  Network network = start;
  const PartId wire = network.add(ElementKind::wire, first, second);
  const check::Wiring wiring(network);
  Check check{CheckLaw::short_circuit, true, 0, {}, {}, 1, 0, {}};
  if (wiring.is_open[wire.index]) {
    check::fail(check, "current of a wire put in: stated, though ideal parts form a loop");
    return check;
  }
  return compare_potentials(
      network, wiring, std::nullopt, method, [&](const auto& field, const auto& potential) {
        const auto meant = check::branch_currents(field, network, wiring, potential)[wire.index];
        const auto rest = field.subtract(field.from(reading.value->number), meant);
        if (rest == field.from(Number(0))) return check;
        Check failed = check;
        check::fail(failed, "current of a wire from " + check::name_of(first) + " to " +
                                check::name_of(second) + ": off by " + field.text(rest) +
                                " A, compared with " + field.text(meant) + " A");
        return failed;
      });
}

std::optional<Check> check_resistance(const Network& network, const Reading& reading,
                                      check::Method method) {
  const check::Wiring wiring(network);
  const check::Injection port = port_of(network);
  const bool left_open =
      reading.why == Undetermined::too_long || reading.why == Undetermined::beyond_method;
  if (!reading.value && left_open) return std::nullopt;
  if (!reading.value || !wiring.forest.joined(port.in, port.out)) {
    Check check{CheckLaw::resistance, true, 0, {}, {}, 1, 0, {}};
    if (reading.value || wiring.forest.joined(port.in, port.out)) {
      check::fail(check, "resistance between " + check::name_of(port.in) + " and " +
                             check::name_of(port.out) +
                             (reading.value ? ": stated, though no path joins them"
                                            : ": none stated, though a path joins them"));
    }
    return check;
  }
  return compare_potentials(
      network, wiring, port, method, [&](const auto& field, const auto& potential) {
        return compare_resistance(field, port, reading.value->number, potential);
      });
}

}  // namespace ohmfold
