// Finding the bridge that is embedded in a network that does not reduce.
#pragma once

#include <optional>

#include "ohmfold/bridge.h"
#include "ohmfold/network.h"

namespace ohmfold {

/// The proof that a network is not series-parallel as seen by its sources; nothing exactly where it
/// is. Several sources are each a part of its own. Requires a network as a case sets it.
///
/// Method: thin out the graph; take an edge, one of a source where there is one. Where its ends are
/// joined by two more paths that a third one links, that is it. Otherwise two points part the
/// graph, and the smaller piece alone, with one edge for what it loses, does not reduce either: its
/// inner points keep three edges each, while a series-parallel graph of four points or more has two
/// points of two edges that no edge joins (Duffin 1965), and the two points are joined. In a small
/// graph all edges are tried for the certificate of the fewest parts. Cost: near linear in the
/// parts, since each piece is at most half of the graph.
[[nodiscard]] std::optional<Certificate> find_certificate(const Network& start);

}  // namespace ohmfold
