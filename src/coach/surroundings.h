// What surrounds a part whose current, voltage or power is claimed: the groups that it is in, and
// the numbers that the person could have worked with.
#pragma once

#include <optional>
#include <vector>

#include "coach/case_book.h"

namespace ohmfold {

/// Parts in series or in parallel that were combined, with one of them in view. All values are
/// sizes.
struct Group {
  struct Member {
    PartId part;                 ///< of the file or of the person; none for one of the solution's
    std::vector<PartId> leaves;  ///< parts of the file
    Number resistance, current, voltage;
  };
  Joining how = Joining::series;
  std::vector<Member> members;
  std::size_t self = 0;         ///< the member in view, or the one that holds it
  bool is_part_itself = false;  ///< that member is the part itself
  Number current, voltage;      ///< of the whole group

  [[nodiscard]] const Member& own() const { return members.at(self); }
  [[nodiscard]] Number sum() const;
  /// What to name beside the part: the other members.
  [[nodiscard]] std::vector<PartId> others() const;
};

class Surroundings {
 public:
  Surroundings(const CaseBook& book, PartId part);

  /// The size that the person claims of a quantity or, where they claim none, the true one.
  [[nodiscard]] std::optional<Number> size(Claimed claimed, PartId part) const;
  /// The same of a resistance; nothing where it is not positive.
  [[nodiscard]] std::optional<Number> resistance(PartId part) const;
  /// The groups that hold the part, the innermost first: of the person's own reduction, else of the
  /// solution's.
  [[nodiscard]] const std::vector<Group>& groups() const { return groups_; }
  /// The one battery of the case, or none; its voltage.
  [[nodiscard]] PartId battery() const { return battery_; }
  [[nodiscard]] std::optional<Number> emf() const;
  [[nodiscard]] std::optional<Number> internal() const;
  /// Resistors of the case that carry something, but at most so many.
  [[nodiscard]] const std::vector<PartId>& resistors() const { return resistors_; }
  [[nodiscard]] const CaseBook& book() const { return book_; }

 private:
  void find_own_groups();
  void find_groups_of_solution();

  const CaseBook& book_;
  PartId part_;
  PartId battery_;
  std::vector<PartId> resistors_;
  std::vector<Group> groups_;
};

}  // namespace ohmfold
