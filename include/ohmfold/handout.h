// Worked solutions to read and hand out: one or several problems in one document.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "ohmfold/draw.h"
#include "ohmfold/trace.h"

namespace ohmfold {

/// How much of a solution is there.
enum class Content : std::uint8_t {
  solution,  ///< the problem and all of its solution
  problem,   ///< the problem alone, with its figure: nothing in it tells how it is solved
  answers    ///< the problem's title and its answers
};

/// How often the circuit is drawn.
enum class Redraws : std::uint8_t {
  none,    ///< only the circuit as stated
  stages,  ///< for each stage: all that can be combined in one drawing
  steps    ///< for each step
};

/// How the values of resistors are written.
enum class Notation : std::uint8_t {
  units,   ///< 4.7 kΩ
  letters  ///< 4K7, as IEC 60062 marks parts; where a value has no such code, with its unit
};

struct HandoutOptions {
  Content content = Content::solution;
  Redraws redraws = Redraws::stages;
  SymbolSet symbols = SymbolSet::rectangle;
  Notation notation = Notation::units;
  int figures = 0;          ///< significant figures; 0: as each problem says
  bool answer_key = false;  ///< the answers of all problems once more at the end
  bool workbook = false;    ///< HTML only: steps are covered until they are asked for
  bool fragment = false;    ///< LaTeX only: without preamble, to be put into a document
};

/// One self-contained page: no network, no file beside it.
[[nodiscard]] std::string render_html(std::span<const Trace> traces,
                                      const HandoutOptions& options = {});

/// A document for pdfLaTeX or LuaLaTeX with amsmath, siunitx and TikZ.
[[nodiscard]] std::string render_latex(std::span<const Trace> traces,
                                       const HandoutOptions& options = {});

/// What stands before \begin{document} where a fragment is put into a document of one's own.
[[nodiscard]] std::string latex_preamble();

/// A file that a document refers to.
struct SideFile {
  std::string name;  ///< without folder
  std::string text;
};

struct Markdown {
  std::string text;
  std::vector<SideFile> figures;  ///< none where the figures stand within the text
};

/// CommonMark. `stem`: figures are files named stem-1.svg, stem-2.svg, …, for the folder of the
/// text; empty: they stand within the text as SVG.
[[nodiscard]] Markdown render_markdown(std::span<const Trace> traces, const std::string& stem,
                                       const HandoutOptions& options = {});

}  // namespace ohmfold
