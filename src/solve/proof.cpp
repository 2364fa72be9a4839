// Has the certificate found and verified.
#include "solve/proof.h"

#include "bridge/certificate.h"
#include "bridge/standstill.h"
#include "check/certificate.h"
#include "ohmfold/error.h"

namespace ohmfold {

std::optional<Certificate> proven_bridge(const Network& start) {
  std::optional<Certificate> bridge = find_certificate(start);
  if (!bridge) return bridge;
  const std::string fault = verify(*bridge, start);
  ensure(fault.empty(), "a certificate proves nothing: " + fault);
  return bridge;
}

void prove(CaseTrace& trace) {
  const Reduction& main = trace.main;
  const bool is_left = main.stop == Stop::bridge || main.stop == Stop::several_sources;
  if (!is_left && plain_steps(main.steps) == main.steps.size()) return;
  trace.bridge = proven_bridge(main.start);
  ensure(trace.bridge || main.stop != Stop::bridge, "a bridge without a certificate");
  trace.standstill = stand_still(main);
}

}  // namespace ohmfold
