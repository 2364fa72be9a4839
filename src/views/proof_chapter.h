// What is left where series and parallel end, in words: the embedded bridge, why it proves that no
// step helps, and the pairs that tempt.
#pragma once

#include <utility>

#include "views/chapter.h"

namespace ohmfold::views {

/// The sources that a closed path runs through, by id.
[[nodiscard]] std::vector<PartId> sources_left(const Scene& scene);

/// "battery E", "the two points asked about", "batteries E1 and E2": whom the network is seen by.
[[nodiscard]] Words seen_by_words(const Scene& scene);

/// The four corners in a sentence and the six paths as a table.
void add_certificate(const Scene& scene, const Certificate& bridge, Document& document);

/// Why the corners and paths prove it.
void add_argument(const Scene& scene, const Certificate& bridge, Document& document);

/// The pair, and why it is not in series.
[[nodiscard]] Words pair_words(const Scene& scene, const TemptingPair& pair);
[[nodiscard]] Words not_series_words(const Scene& scene, const TemptingPair& pair);
[[nodiscard]] Words not_parallel_words(const Scene& scene, const TemptingPair& pair);

/// The first pairs, up to `most`, each with its reasons.
void add_pairs(const Scene& scene, const Standstill& standstill, std::size_t most,
               Document& document);

/// All of it in short, for a worked solution; nothing for what is series-parallel.
void add_proof(const Scene& scene, const CaseTrace& trace, Document& document);

}  // namespace ohmfold::views
