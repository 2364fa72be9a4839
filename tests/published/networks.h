// The published networks of networks.json, and each of them as a circuit file.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "ohmfold/problem.h"
#include "ohmfold/trace.h"
#include "ohmfold/value.h"

namespace ohmfold::published {

struct PublishedPart {
  std::string kind;  ///< "battery", "resistor", "switch" or "current source"
  std::string name;
  std::string value;  ///< in the plain unit; "open" or "closed" for a switch
  std::string from, to;
};

struct PublishedAnswer {
  std::string quantity;  ///< "current", "voltage", "power", "potential difference", "resistance"
  std::string of;        ///< a part, "all resistors", "all batteries", or two points "x,y"
  std::string printed;   ///< as the source prints it, in `unit`
  std::string unit;      ///< with its prefix: "mA", "kohm"
  Number exact;          ///< in the plain unit
  bool agrees = true;    ///< false: the source's own rounding misses the exact value
  std::optional<bool> series_parallel;  ///< of a resistance: do series and parallel suffice?
};

struct PublishedNetwork {
  std::string id, title, source;
  std::optional<bool> series_parallel;  ///< as seen from its battery, where it has one
  std::vector<PublishedPart> parts;
  std::vector<PublishedAnswer> answers;

  [[nodiscard]] std::size_t count(const std::string& kind) const;
};

/// All entries of the file, in its order. Throws where the file does not have the promised form.
[[nodiscard]] const std::vector<PublishedNetwork>& networks();
/// Requires an id of the file.
[[nodiscard]] const PublishedNetwork& network(const std::string& id);

/// The number that a published text stands for. Throws where it is none.
[[nodiscard]] Number number_of(const std::string& text);

/// The published point as a name of the circuit language: "0" is zero, "x+" is x_plus.
[[nodiscard]] std::string point_name(const std::string& published);

/// The statements of the circuit language for the parts and, where there are switches, one case.
[[nodiscard]] std::string circuit_text(const PublishedNetwork& network);

/// The question that the answer is about, in the circuit language without "find": nothing for a sum
/// over parts.
[[nodiscard]] std::optional<std::string> question_text(const PublishedAnswer& answer);

/// The reduction that shows an answer about a resistance.
[[nodiscard]] const Reduction& shown(const Answer& answer, const CaseTrace& solved);

/// Reads a text that the tests wrote. Throws with all findings where it has errors.
[[nodiscard]] Problem read(const std::string& text);

}  // namespace ohmfold::published
