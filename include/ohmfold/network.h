// The network that rules rewrite: parts between points, one record each in a flat array.
//
// A network changes only by commit(): an Edit is data, so that the same edit can be stored in a
// trace, replayed for a figure, and checked by somebody who knows no rule. Everything a rule asks
// is answered in constant time or in time proportional to the answer; nothing recurses.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <unordered_map>
#include <vector>

#include "ohmfold/fact.h"
#include "ohmfold/ids.h"
#include "ohmfold/value.h"

namespace ohmfold {

/// What a part is to the rules in the case at hand.
enum class ElementKind : std::uint8_t {
  resistor,
  battery,         ///< ideal voltage with its internal resistance in series
  port,            ///< no part at all: marks the two points between which a resistance is asked
  current_source,  ///< an ideal source of current, which runs through it from first to second point
  // joins its two points
  wire,
  closed_switch,
  ammeter,
  shorted,
  // joins nothing
  open_switch,
  voltmeter,
  taken_out,
  switched_off,  ///< an ideal source of current while other sources are looked at by themselves
};

[[nodiscard]] constexpr bool is_wire(ElementKind kind) {
  return kind >= ElementKind::wire && kind <= ElementKind::shorted;
}
[[nodiscard]] constexpr bool is_gap(ElementKind kind) {
  return kind >= ElementKind::open_switch;
}
/// Something that drives a current: a battery, a source of current, or the test source at a port.
[[nodiscard]] constexpr bool is_source(ElementKind kind) {
  return kind == ElementKind::battery || kind == ElementKind::port ||
         kind == ElementKind::current_source;
}
/// Is its voltage the potential of its second point less that of the first? For all others it is
/// first less second.
[[nodiscard]] constexpr bool counts_rise(ElementKind kind) {
  return kind == ElementKind::battery || kind == ElementKind::port;
}

/// A place where a rule may hold: the parts it is about, each once, and, where it has them, the two
/// points between which they lie (for a chain or a bundle: from `first` to `second`; for a piece
/// that hangs: `first`; for a star: `first`, its middle). Points that are to become one: `points`.
struct Place {
  std::vector<PartId> parts;
  PointId first, second;
  std::vector<PointId> points = {};
};

/// A resistor or a battery that an edit puts in.
struct NewPart {
  PointId from, to;  ///< for a battery: negative, positive terminal
  Ratio resistance;  ///< for a battery: its internal resistance, which may be 0
  ElementKind kind = ElementKind::resistor;
  Voltage emf = {};  ///< battery only
};

/// How the new value follows from the old ones.
enum class Formula : std::uint8_t {
  none,
  sum,
  reciprocal_sum,
  star_arm,    ///< the product of the two sides at a corner over the sum of all three
  delta_side,  ///< the sum of the products of each two arms over the arm that does not touch it
  mesh_side    ///< the product of the two arms that it replaces times the sum of all 1/R
};

/// How the points that an edit merges belong together.
enum class Merging : std::uint8_t {
  together,  ///< all of them become one point
  by_twos    ///< the first two become one point, the next two one, and so on
};

/// Where an edit is valid: for whatever is joined to the kept points, or only for the sources in
/// place.
enum class Scope : std::uint8_t { everywhere, as_seen_by_the_source };

/// One change of a network, and the way back. Parts in `removes` stand in the order of the chain
/// for a series edit (from adds[0].from to adds[0].to), otherwise in file order. Where batteries
/// of one chain become one, the first removed gives its place to it, and `merges` holds the two
/// ends of each other one in the direction of the battery that comes.
struct Edit {
  std::vector<PartId> removes;
  std::vector<NewPart> adds;
  std::vector<PointId> merges;  ///< become one point each, the one with the smallest id
  Merging merging = Merging::together;
  std::uint32_t new_points = 0;  ///< come first, with ids from Network::point_count() upwards
  Formula formula = Formula::none;
  Scope scope = Scope::everywhere;
  std::array<Law, 2> back{Law::zero_current, Law::zero_voltage};
};

/// What an ideal source of current drives.
struct CurrentSourceData {
  PartId part;
  Current current;
};

/// A battery's data, kept beside the flat arrays since there are few.
struct BatteryData {
  PartId part;
  Voltage emf;
  Resistance internal;
};

class Network {
 public:
  /// --- building -----------------------------------------------------------------------------
  /// Points have ids 0 to count - 1.
  explicit Network(std::size_t points = 0);
  /// Makes room for so many parts, made ones included.
  void reserve(std::size_t parts);

  /// Adds a part; ids count up. Requires existing points, and a positive resistance for a resistor.
  PartId add(ElementKind kind, PointId from, PointId to, const Ratio& resistance = Ratio());
  PartId add_battery(PointId negative, PointId positive, const Voltage& emf,
                     const Resistance& internal);

  PartId add_current_source(PointId from, PointId to, const Current& current);

  /// --- asking -------------------------------------------------------------------------------
  [[nodiscard]] std::size_t point_count() const { return points_.size(); }
  /// All parts that ever were, alive or not.
  [[nodiscard]] std::size_t part_count() const { return parts_.size(); }
  [[nodiscard]] std::size_t alive_count() const { return alive_count_; }

  [[nodiscard]] bool is_alive(PartId part) const { return parts_[part.index].alive; }
  [[nodiscard]] ElementKind kind(PartId part) const { return parts_[part.index].kind; }
  /// Its ends, as points of the network at hand (after merging). A removed part keeps its last
  /// ends.
  [[nodiscard]] PointId from(PartId part) const { return parts_[part.index].end[0]; }
  [[nodiscard]] PointId to(PartId part) const { return parts_[part.index].end[1]; }
  /// The other end. Requires that `point` is one of its ends.
  [[nodiscard]] PointId across(PartId part, PointId point) const {
    return from(part) == point ? to(part) : from(part);
  }
  /// For a resistor: its resistance, not necessarily in lowest terms. For others 0.
  [[nodiscard]] const Ratio& resistance(PartId part) const { return parts_[part.index].resistance; }
  /// False for a resistor whose value was let go (forget_resistance).
  [[nodiscard]] bool knows_resistance(PartId part) const {
    return kind(part) != ElementKind::resistor || !resistance(part).is_zero();
  }
  /// Requires a battery.
  [[nodiscard]] const BatteryData& battery(PartId part) const;
  [[nodiscard]] const std::vector<BatteryData>& batteries() const { return batteries_; }

  /// Requires a source of current.
  [[nodiscard]] const Current& driven_current(PartId part) const;
  [[nodiscard]] const std::vector<CurrentSourceData>& current_sources() const {
    return current_sources_;
  }

  /// Is there, or was there, a battery or a source of current?
  [[nodiscard]] bool has_source() const { return !batteries_.empty() || !current_sources_.empty(); }
  /// Does its resistance, or what it drives, depend on a symbol?
  [[nodiscard]] bool is_symbolic(PartId part) const;
  /// Bits of all its values together.
  [[nodiscard]] std::size_t value_bits(PartId part) const;

  /// The point that stands for `point` after merging.
  [[nodiscard]] PointId representative(PointId point) const { return merged_into_[point.index]; }
  /// How many ends of living parts are joined at this point; a part with both ends here counts
  /// twice.
  [[nodiscard]] std::size_t degree(PointId point) const { return points_[point.index].degree; }

  /// The living parts with an end at `point`, in no order; a part with both ends here comes twice.
  /// `visit(PartId)`; must not change the network.
  template <class Visit>
  void for_each_at(PointId point, Visit visit) const {
    for (std::uint32_t half = points_[point.index].head; half != kNil; half = next(half)) {
      visit(PartId{half / 2});
    }
  }
  /// The living parts that join the same two points as `part`, itself included, in no order.
  /// Requires a living part.
  template <class Visit>
  void for_each_twin(PartId part, Visit visit) const {
    PartId at = part;
    do {
      visit(at);
      at = parts_[at.index].twin_next;
    } while (at != part);
  }
  [[nodiscard]] bool has_twin(PartId part) const { return parts_[part.index].twin_next != part; }

  /// Says that a part will be asked about soon, so that its record is fetched from memory
  /// meanwhile: large networks are met in the order of the file, which is random in memory. No
  /// other effect.
  void expect(PartId part) const { __builtin_prefetch(&parts_[part.index]); }
  /// The same for a part at this point.
  void expect_at(PointId point) const {
    const std::uint32_t half = points_[point.index].head;
    if (half != kNil) __builtin_prefetch(&parts_[half / 2]);
  }
  /// The same for the ends of a part whose record has been fetched, and for its twins.
  void expect_ends(PartId part) const;

  /// --- changing -----------------------------------------------------------------------------
  /// The only way a network changes. Requires living parts in `removes` and points in use.
  /// Returns the id of the first part added (they are consecutive), or none.
  /// Cost: proportional to the edit, plus the parts at merged points.
  PartId commit(const Edit& edit);

  /// Lets go of the value of a removed part, for the sake of memory; it can be found again from the
  /// steps that made it.
  void forget_resistance(PartId part) { parts_[part.index].resistance = Ratio(); }

  /// One canonical line: living parts in order of ids with kind, ends and value. For tests and
  /// reports.
  [[nodiscard]] std::string dump() const;

 private:
  static constexpr std::uint32_t kNil = UINT32_MAX;

  // A half is an end of a part: 2 * part + (0 for its first end, 1 for its second). The halves at a
  // point are linked in both directions, and so are the parts that join the same two points.
  struct PartRecord {
    Ratio resistance;
    std::array<PointId, 2> end;
    std::array<std::uint32_t, 2> next{kNil, kNil}, previous{kNil, kNil};  // by end
    PartId twin_next, twin_previous;
    ElementKind kind;
    bool alive = true;
  };
  struct PointRecord {
    std::uint32_t head = kNil;
    std::uint32_t degree = 0;
  };

  [[nodiscard]] std::uint32_t next(std::uint32_t half) const {
    return parts_[half / 2].next[half % 2];
  }
  void link(PartId part);
  void unlink(PartId part);
  void link_half(std::uint32_t half);
  void unlink_half(std::uint32_t half);
  void merge(const std::vector<PointId>& points);

  std::vector<PartRecord> parts_;
  std::vector<PointRecord> points_;
  std::vector<PointId> merged_into_;
  // The points that each representative of several stands for (absent: itself alone).
  std::unordered_map<std::uint32_t, std::vector<PointId>> members_;
  // A living part for each pair of points that has one.
  class PairTable {
   public:
    /// The part by this key; `part`, which is put in, where there was none.
    PartId find_or_insert(std::uint64_t key, PartId part);
    /// Puts `now` where `before` stood, if it stood there.
    void replace(std::uint64_t key, PartId before, PartId now);
    void erase(std::uint64_t key);
    void expect(std::uint64_t key) const;

   private:
    struct Slot {
      std::uint64_t key = kFree;
      PartId part;
    };
    static constexpr std::uint64_t kFree = UINT64_MAX;
    void grow(std::size_t slots);
    [[nodiscard]] std::size_t slot_of(std::uint64_t key) const;
    std::vector<Slot> slots_;
    std::size_t used_ = 0;
  };
  PairTable pairs_;
  std::vector<BatteryData> batteries_;
  std::vector<CurrentSourceData> current_sources_;
  std::size_t alive_count_ = 0;
};

}  // namespace ohmfold
