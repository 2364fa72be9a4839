// Reads a drawing back into a network, as a person does who follows the lines, and says where it
// does not show the circuit that was meant.
//
// Ends of lines that meet are joined. An end on the middle of another line is joined to it. Lines
// that cross are joined where a dot says so; otherwise one of them passes over with a small arc.
#pragma once

#include <array>
#include <map>
#include <string>
#include <vector>

#include "ohmfold/network.h"
#include "support/svg_reader.h"
#include "views/names.h"

namespace ohmfold::test {

/// A line between two spots; an end within a symbol joins nothing.
struct Stretch {
  support::Vec from, to;
  std::vector<support::Vec> arcs;
  std::string part, point;
  bool from_open = true, to_open = true;
};

struct ReadPart {
  std::string name;
  std::array<support::Vec, 2> inner;    ///< where its leads reach the symbol
  std::array<std::size_t, 2> joined{};  ///< the sets that its first and second lead belong to
};

struct ReadBack {
  std::vector<Stretch> lines;
  std::vector<std::size_t> set;  ///< by line: joined lines have equal numbers
  std::vector<ReadPart> parts;
  std::vector<std::string> faults;  ///< what a reader could take in two ways
};

[[nodiscard]] ReadBack read_back(const support::SvgDrawing& drawing);

/// What a drawing has to show.
struct Shown {
  struct Ends {
    std::size_t from = 0, to = 0;  ///< numbers of points
    bool battery = false;
  };
  std::map<std::string, Ends> parts;
  std::map<std::string, std::size_t> points;  ///< by name
};

/// What a network has: its living parts but ports and what the case took out.
[[nodiscard]] Shown shown_by(const Network& network, const views::PartNames& names);

/// Where the drawing shows another circuit.
[[nodiscard]] std::vector<std::string> faults_of_circuit(const support::SvgDrawing& drawing,
                                                         const ReadBack& read, const Shown& shown);

/// Where symbols, texts and lines are in each other's way, or outside the page.
[[nodiscard]] std::vector<std::string> faults_of_geometry(const support::SvgDrawing& drawing,
                                                          const ReadBack& read);

/// All of the above; a text that is no drawing at all is a fault, too.
[[nodiscard]] std::vector<std::string> faults_of(const std::string& svg, const Shown& shown);

}  // namespace ohmfold::test
