// Whether a certificate proves what it claims, seen by somebody who does not know how it was found.
#pragma once

#include <string>

#include "ohmfold/bridge.h"
#include "ohmfold/network.h"

namespace ohmfold {

/// What is wrong with a certificate about a network as a case sets it; empty where it proves that
/// the network is not series-parallel as seen by its sources. Any certificate may be asked about,
/// also one that names parts and points that are not there.
///
/// It holds where the four corners are different points; the six paths join each two of them once;
/// each path is one of living resistors, batteries and ports from corner to corner; none of them
/// passes a corner, a point or a part of another; and they lie on closed paths together with a
/// source. Points that ideal wires join are one point throughout: no bridge is lost or gained by
/// that, since points that hang together by wires lie between the paths that meet there. Cost: near
/// linear in the network.
[[nodiscard]] std::string verify(const Certificate& certificate, const Network& start);

}  // namespace ohmfold
