// The steps of one reduction and what it came to, for the main one of a case and for those of
// further questions.
#pragma once

#include <utility>
#include <vector>

#include "views/chapter.h"

namespace ohmfold::views {

/// The two points that the reduction is seen from, as the file names them: + and − of its battery.
/// Requires a source.
[[nodiscard]] std::pair<PointId, PointId> terminals(const Reduction& reduction);

/// The points at which parts are left, in file order.
[[nodiscard]] std::vector<PointId> points_left(const Reduction& reduction);

/// The steps with their redraws, and the choice of a way where series and parallel stop: all of
/// them, up to kMostEntries, where the case is complete. With `proven` the proof that series and
/// parallel had to stop stands before the choice.
void add_reduction(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                   Document& document, bool proven = false);

/// The current of the source, the steps undone, and the currents in wires, without headings.
void add_short_way_back(const Scene& scene, const CaseTrace& trace, Document& document);

/// Each source alone, then the sum. Requires shares.
void add_superposition(const Scene& scene, const CaseTrace& trace, const OutlineOptions& options,
                       Document& document);

/// What the reduction came to: one part, a bridge, several batteries, a short circuit, nothing.
void add_what_is_left(const Scene& scene, const CaseTrace& trace, Document& document);

/// The resistance between the two terminals of a reduction, or why there is none.
void add_resistance(const Scene& scene, const Expression& symbol, const Reading& value,
                    Document& document);

/// Equations and potentials of what is left, as far as they were found.
void add_node_voltages(const Scene& scene, const CaseTrace& trace, Document& document);

/// Why nothing is in series or in parallel where series and parallel stop.
[[nodiscard]] Words where_it_stops(const Scene& scene);

/// How the resistance of a bridge between two points is found, where that is by node-voltage
/// analysis; otherwise nothing.
[[nodiscard]] Words port_words(const Reduction& reduction);

}  // namespace ohmfold::views
