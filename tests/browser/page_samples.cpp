// Writes the pages that the browser tests open: page_samples FOLDER CIRCUIT...
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <string>
#include <vector>

#include "handout/html_page.h"
#include "handout/page_documents.h"
#include "ohmfold/handout.h"
#include "ohmfold/read.h"
#include "ohmfold/solve.h"

namespace {

using namespace ohmfold;

/// The first circuits stand in one document, too, and have workbooks of their own.
constexpr std::size_t kInBooklet = 3;

void write(const std::filesystem::path& path, const std::string& text) {
  std::ofstream(path, std::ios::binary) << text;
}

void write_pages(const std::filesystem::path& folder, const std::string& stem,
                 const std::vector<Trace>& traces, bool workbook) {
  HandoutOptions options;
  options.answer_key = traces.size() > 1;
  write(folder / (stem + ".html"), render_html(traces, options));
  if (!workbook) return;
  options.workbook = true;
  write(folder / (stem + "-workbook.html"), render_html(traces, options));
}

/// The documents of the unit tests, whose steps and values are known.
void write_samples(const std::filesystem::path& folder) {
  handout::PageOptions options;
  options.title = "Two lamps";
  write(folder / "sample.html", handout::html_page(test::every_block(), options));
  options.workbook = true;
  write(folder / "sample-workbook.html", handout::html_page(test::every_block(), options));
  options.title = test::kHostile;
  write(folder / "hostile-workbook.html", handout::html_page(test::hostile_document(), options));
}

}  // namespace

int main(int count, char** arguments) {
  const std::vector<std::string> names(arguments + 1, arguments + count);
  if (names.empty()) return 2;
  const std::filesystem::path folder = names.front();
  std::filesystem::create_directories(folder);
  write_samples(folder);
  std::vector<Trace> all;
  for (std::size_t i = 1; i < names.size(); ++i) {
    std::ifstream in(names[i], std::ios::binary);
    const std::string text{std::istreambuf_iterator<char>(in), {}};
    const Outcome<Problem> problem = read_circuit(SourceText{names[i], text});
    if (!problem) {
      std::cerr << names[i] << " cannot be read\n";
      return 1;
    }
    const Trace trace = solve(*problem.value);
    write_pages(folder, std::filesystem::path(names[i]).stem().string(), {trace}, i <= kInBooklet);
    if (i <= kInBooklet) all.push_back(trace);
  }
  if (all.size() > 1) write_pages(folder, "booklet", all, true);
  return 0;
}
