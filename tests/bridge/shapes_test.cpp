// Certificates of large networks and of shapes that ask much of the search.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <string>
#include <vector>

#include "bridge/certificate.h"
#include "bridge/shapes.h"
#include "check/certificate.h"
#include "solve/reduce.h"

namespace ohmfold::test {
namespace {

using ::testing::IsEmpty;

std::size_t parts_of(const Certificate& certificate) {
  std::size_t count = 0;
  for (const auto& path : certificate.paths) count += path.parts.size();
  return count;
}

struct Sample {
  std::string name;
  Network network;
};

// Each is proved and the proof verified well within the seconds that a person waits.
TEST(Certificate, HoldsForLargeNetworksOfManyShapes) {
  std::vector<Sample> samples;
  samples.push_back({"grid of 3 by 3", grid(3, 3)});
  samples.push_back({"grid of 1,000 parts", grid(23, 23)});
  samples.push_back({"grid of 10,000 parts", grid(71, 71)});
  samples.push_back({"grid of 3 rows", grid(3, 2000)});
  samples.push_back({"complete graph of 4 points", complete(4)});
  samples.push_back({"complete graph of 10,000 parts", complete(142)});
  samples.push_back({"wheel of 5,000", wheel(5000)});
  samples.push_back({"prism of 3,000", prism(3000)});
  samples.push_back({"ring with 3,000 chords", moebius(3000)});
  samples.push_back({"2,000 bridges in a chain", chain_of_bridges(2000)});
  samples.push_back({"2,000 bridges within each other", nested_bridges(2000)});
  for (std::uint64_t seed = 1; seed <= 20; ++seed) {
    samples.push_back({"random bridge of 1,000 parts", random_bridge(500, seed)});
  }
  samples.push_back({"random bridge of 10,000 parts", random_bridge(5000, 21)});
  for (const Sample& sample : samples) {
    const auto begin = std::chrono::steady_clock::now();
    const auto certificate = find_certificate(sample.network);
    ASSERT_TRUE(certificate) << sample.name;
    EXPECT_THAT(verify(*certificate, sample.network), IsEmpty()) << sample.name;
    EXPECT_EQ(reduce(sample.network).stop, Stop::bridge) << sample.name;
    EXPECT_LT(std::chrono::steady_clock::now() - begin, std::chrono::seconds(5)) << sample.name;
  }
}

TEST(Certificate, IsShortWhereAShortOneIsThere) {
  EXPECT_EQ(parts_of(*find_certificate(complete(30))), 6U);
  // One bridge, two resistors of each other one, and the battery.
  EXPECT_EQ(parts_of(*find_certificate(chain_of_bridges(50))), 5U + 2 * 49 + 1);
  EXPECT_LE(parts_of(*find_certificate(grid(20, 20))), 20U);
}

}  // namespace
}  // namespace ohmfold::test
