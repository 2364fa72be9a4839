// Node-voltage analysis as it is read: laws, elimination, and the way back.
#include <string>

#include "samples.h"
#include "views/lettering.h"

namespace ohmfold::views {
namespace {

using test::lines_of;
using test::trace_of;

/// What stands between the heading of the analysis and that of the next section.
std::string analysis(const std::string& circuit, Letters letters = Letters::unicode) {
  TextOptions options;
  options.letters = letters;
  const std::string text = render_text(trace_of(circuit), options);
  const std::size_t begin = text.find("Node-voltage analysis\n");
  const std::size_t end = text.find("Voltages and currents of what is left", begin);
  if (begin == std::string::npos || end == std::string::npos) {
    ADD_FAILURE() << text;
    return "";
  }
  return text.substr(begin, end - begin);
}

void expect_in(const std::string& text, const std::string& part) {
  EXPECT_NE(text.find(part), std::string::npos) << "missing: " << part << "\n" << text;
}

// Two batteries, one of them between two unknown potentials, and more terms than a line holds.
const std::string kTogether =
    "battery E1 = 12 V from G to P\nresistor R1 = 6 ohm from P to A\n"
    "battery E2 = 4 V from A to B\nresistor R2 = 4 ohm from B to G\n"
    "resistor R3 = 12 ohm from A to G\nresistor R4 = 5 ohm from B to C\n"
    "resistor R5 = 7 ohm from C to G\nresistor R6 = 3/2 ohm from C to A\n"
    "battery E3 = 2.5 V internal 1 ohm from G to C\n";

TEST(NodeVoltageChapter, TellsHowPointsAreTakenTogether) {
  const std::string text = analysis(kTogether);
  expect_in(text,
            "At each other point the currents that leave it sum to zero. Ohm's law does not\n"
            "give the current in an ideal battery; so the points that it joins are taken\n"
            "together, and its current stays inside:\n");
  expect_in(text,
            "One unknown will do for points that are taken together:\n"
            "    V_B = V_A + 4 V\n");
  expect_in(text,
            "    41 · V_A − 26 · V_C    = 6 V     (1: at A and B, times 60 Ω, divided by 2)\n"
            "    −182 · V_A + 422 · V_C = 693 V   (2: at C, times 210 Ω)\n");
  expect_in(text,
            "Eliminate V_A with the help of (1):\n"
            "    838 · V_C = 1967 V   (2': 41 times (2) plus 182 times (1), divided by 15)\n");
  expect_in(text,
            "Back from the last equation to the first:\n"
            "    V_C = 1967 V / 838 = 1967/838 V ≈ 2.35 V                  (from 2')\n"
            "    V_A = (6 V + 26 · 1967/838 V) / 41 = 685/419 V ≈ 1.63 V   (from 1)\n");
}

TEST(NodeVoltageChapter, BreaksLongLawsBeforeTheirTerms) {
  for (const Letters letters : {Letters::unicode, Letters::ascii}) {
    for (const std::string& line : lines_of(analysis(kTogether, letters))) {
      EXPECT_LE(display_width(line), 80U) << line;
    }
  }
  expect_in(analysis(kTogether),
            "    (V_A − V_P) / R1 + (V_A − V_G) / R3 + (V_A − V_C) / R6\n"
            "        + (V_B − V_G) / R2 + (V_B − V_C) / R4 = 0   (at A and B together)\n");
}

TEST(NodeVoltageChapter, WritesAsciiWhereAsked) {
  const std::string text = analysis(kTogether, Letters::ascii);
  expect_in(text, "    -182 * V_A + 422 * V_C = 693 V   (2: at C, times 210 ohm)\n");
  for (const char c : text) ASSERT_LT(static_cast<unsigned char>(c), 0x80U);
}

TEST(NodeVoltageChapter, CountsEquationsThatItDoesNotWrite) {
  std::string circuit = "battery E = 12 V from G to P0\nresistor Z = 5 ohm from P6 to P0\n";
  for (int i = 0; i < 6; ++i) {
    const std::string n = std::to_string(i), next = std::to_string(i + 1);
    circuit += "resistor A" + n + " = " + next + " ohm from P" + n + " to P" + next + "\n";
    circuit += "resistor B" + n + " = 2 ohm from P" + next + " to G\n";
  }
  expect_in(analysis(circuit), "Solved together, these 6 equations give:\n");
  circuit += "resistor Y = 3 ohm from P1 to P4\nresistor X = 3 ohm from P2 to P5\n";
  expect_in(analysis(circuit), "gives 6 equations for the 6 unknown");
}

}  // namespace
}  // namespace ohmfold::views
