// The figures in the pages are drawn by the program: the redraws of an example, and a sheet with
// the circuits of all problems. OHMFOLD_REWRITE=1 draws them anew.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "ohmfold/draw.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"

namespace ohmfold::testing {
namespace {

const std::filesystem::path kTop = OHMFOLD_SOURCE_DIR;

std::string contents(const std::filesystem::path& path) {
  std::ostringstream text;
  text << std::ifstream(path).rdbuf();
  return text.str();
}

Trace solved(const std::filesystem::path& path) {
  const Outcome<Problem> problem = read_circuit({path.filename().string(), contents(path)});
  if (!problem) throw std::runtime_error(path.string());
  return solve(*problem.value);
}

/// The number behind `name="` in the first tag of the text.
int attribute(const std::string& svg, const std::string& name) {
  return std::stoi(svg.substr(svg.find(' ' + name + "=\"") + name.size() + 3));
}

void replace_all(std::string& text, const std::string& from, const std::string& to) {
  for (std::size_t at = text.find(from); at != std::string::npos;
       at = text.find(from, at + to.size())) {
    text.replace(at, from.size(), to);
  }
}

/// Several figures in one file, in rows, each below its name.
class Sheet {
 public:
  explicit Sheet(int width) : width_(width) {}

  void add(const std::string& name, std::string svg) {
    svg = svg.substr(svg.find("<svg"));
    const int width = attribute(svg, "width");
    if (x_ > 0 && x_ + width > width_) next_row();
    const std::string id = "s" + std::to_string(++count_);
    replace_all(svg, "figure-", id + "-");
    // One style is enough for all of them.
    if (count_ > 1) svg.erase(svg.find("<style>"), svg.find("</style>") + 9 - svg.find("<style>"));
    svg.insert(4, " x=\"" + std::to_string(x_) + "\" y=\"" + std::to_string(y_ + kLine) + '"');
    body_ += "<text x=\"" + std::to_string(x_ + 8) + "\" y=\"" + std::to_string(y_ + 14) + "\">" +
             name + "</text>\n" + svg;
    height_ = std::max(height_, attribute(svg, "height") + kLine);
    x_ += width + kGap;
  }

  [[nodiscard]] std::string text(const std::string& title) {
    next_row();
    const std::string size =
        " width=\"" + std::to_string(width_) + "\" height=\"" + std::to_string(y_) + '"';
    return "<svg xmlns=\"http://www.w3.org/2000/svg\"" + size + " viewBox=\"0 0 " +
           std::to_string(width_) + ' ' + std::to_string(y_) + "\" role=\"img\" " +
           "aria-labelledby=\"sheet\">\n<title id=\"sheet\">" + title + "</title>\n<rect" + size +
           " fill=\"#ffffff\"/>\n<g font-family=\"sans-serif\" font-size=\"12\">\n" + body_ +
           "</g>\n</svg>\n";
  }

 private:
  static constexpr int kLine = 20;
  static constexpr int kGap = 16;

  void next_row() {
    x_ = 0;
    y_ += height_ + kGap;
    height_ = 0;
  }

  int width_ = 0, x_ = 0, y_ = 0, height_ = 0, count_ = 0;
  std::string body_;
};

/// Compares a figure in docs with what is drawn now.
void expect_drawn(const std::string& name, const std::string& drawn) {
  const std::filesystem::path path = kTop / "docs" / name;
  if (std::getenv("OHMFOLD_REWRITE") != nullptr) std::ofstream(path) << drawn;
  EXPECT_TRUE(contents(path) == drawn)
      << path << " is out of date; OHMFOLD_REWRITE=1 draws it anew";
}

TEST(FiguresOfThePages, ShowTheRedrawsOfTheExample) {
  const Trace trace = solved(kTop / "problems/05-reading-nook.circuit");
  Sheet sheet(860);
  sheet.add("The circuit as stated", draw_svg(trace, 0, 0));
  sheet.add("Redraw 1", draw_svg(trace, 0, 1));
  sheet.add("Redraw 2", draw_svg(trace, 0, 2));
  expect_drawn("redraws.svg", sheet.text("A circuit and its two redraws"));
}

TEST(FiguresOfThePages, ShowEveryProblem) {
  std::vector<std::filesystem::path> paths;
  for (const auto& entry : std::filesystem::directory_iterator(kTop / "problems")) {
    if (entry.path().extension() == ".circuit") paths.push_back(entry.path());
  }
  std::sort(paths.begin(), paths.end());
  DrawOptions options;
  options.marks = false;
  Sheet sheet(1300);
  for (const std::filesystem::path& path : paths) {
    sheet.add(path.stem().string(), draw_svg(solved(path), 0, 0, options));
  }
  expect_drawn("contact-sheet.svg", sheet.text("The circuits of all problems"));
}

}  // namespace
}  // namespace ohmfold::testing
