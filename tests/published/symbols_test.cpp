// A published answer in symbols.
#include <gtest/gtest.h>

#include "ohmfold/read.h"
#include "ohmfold/solve.h"

namespace ohmfold {
namespace {

// OpenStax, University Physics, vol. 2, chapter 10: two equal sources V on a symmetric network of R
// and 2 R; the middle branch carries 2 V / 3 R, each of the outer ones V / 3 R. (u is a prefix in a
// circuit file, so the voltage is called v.)
TEST(PublishedSymbols, OfASymmetricNetworkWithTwoSources) {
  const SourceText source{"two.circuit",
                          "symbol v\nsymbol r\n"
                          "battery B1 = v from O to P\n"
                          "resistor R1 = r from P to Q\n"
                          "resistor R2 = r from Q to O\n"
                          "battery B2 = v from O to S\n"
                          "resistor R3 = 2 r from S to Q\n"
                          "resistor R4 = 2 r from S to Q\n"
                          "find current through R2\n"
                          "find current through R1\n"
                          "find current through B2\n"};
  const Outcome<Problem> problem = read_circuit(source);
  ASSERT_TRUE(problem);
  const Trace trace = solve(*problem.value);
  const std::vector<std::string> published{"2 v/(3 r)", "v/(3 r)", "v/(3 r)"};
  const std::vector<Answer>& answers = trace.cases.front().answers;
  ASSERT_EQ(answers.size(), published.size());
  for (std::size_t i = 0; i < answers.size(); ++i) {
    ASSERT_TRUE(answers[i].value.value);
    EXPECT_EQ(answers[i].value.value->number.to_string(), published[i]);
  }
}

}  // namespace
}  // namespace ohmfold
