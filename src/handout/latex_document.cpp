// A document as LaTeX: block after block.
#include "handout/latex_document.h"

#include <algorithm>
#include <utility>

#include "drawing/latex.h"
#include "drawing/tikz.h"
#include "handout/latex_table.h"
#include "handout/latex_width.h"
#include "handout/latex_working.h"

namespace ohmfold::handout {

namespace {

class Writer {
 public:
  Writer(const LatexOptions& options, bool several)
      : options_(options),
        several_(several),
        line_width_(options.fragment ? kFragmentLineWidth : kOwnLineWidth) {}

  std::string write(const views::Document& document) {
    for (const views::Block& block : document.blocks) std::visit(*this, block);
    end_entries();
    put_heading();
    return std::move(code_);
  }

  /// Waits for what comes: within a step it stays with it on one page.
  void operator()(const views::Heading& heading) {
    end_entries();
    put_heading();
    const std::string words = latex_words(heading.words).code;
    if (heading.level == 1) {
      if (several_ && has_title_) code_ += "\n\\clearpage";
      has_title_ = true;
      heading_ = "\n\\section{" + words + "}\n";
    } else {
      heading_ = heading.level == 2 ? "\n\\subsection*{" : "\n\\subsubsection*{";
      heading_ += words + "}\n";
    }
  }

  void operator()(const views::Paragraph& paragraph) {
    if (paragraph.indent == 0) end_entries();
    put_heading();
    code_ += "\n" + latex_words(paragraph.words).code + "\n";
  }

  void operator()(const views::Entry& entry) {
    put_heading();
    if (!in_entries_) code_ += "\n\\begin{ohmfoldentries}\n";
    in_entries_ = true;
    const std::string mark = entry.number.empty() ? "$\\bullet$" : entry.number + ".";
    code_ += "\\item[" + mark + "] " + latex_words(entry.words).code + "\n";
  }

  /// Within the paragraph before it: a formula goes on with a sentence.
  void operator()(const views::Working& working) {
    put_heading();
    code_ += latex_working(working, line_width_);
  }

  void operator()(const views::Table& table) {
    end_entries();
    put_heading();
    code_ += "\n" + latex_table(table, line_width_);
  }

  void operator()(const views::Figure& figure) {
    end_entries();
    put_heading();
    code_ += "\n\\ohmfoldfigure{%\n" + drawing::tikz(figure.schematic, options_.symbols, false) +
             "}{" + latex_words(figure.caption).code + "}\n";
  }

  void operator()(const views::StepBegin&) {
    end_entries();
    code_ += "\n\\begin{ohmfoldstep}\n";
    put_heading();
  }
  void operator()(const views::StepEnd&) {
    end_entries();
    code_ += "\\end{ohmfoldstep}\n";
  }

 private:
  void end_entries() {
    if (in_entries_) code_ += "\\end{ohmfoldentries}\n";
    in_entries_ = false;
  }

  void put_heading() { code_ += std::exchange(heading_, {}); }

  LatexOptions options_;
  bool several_;
  int line_width_;
  bool has_title_ = false;
  bool in_entries_ = false;
  std::string code_;
  std::string heading_;  ///< the last one, not yet written
};

/// What only a document of its own has: paper, faces, numbers of sections.
constexpr std::string_view kOwnPreamble = R"(\documentclass[11pt,a4paper,fleqn]{article}
\usepackage[margin=25mm]{geometry}
\ifdefined\directlua\else
  \IfFileExists{lmodern.sty}{\usepackage[T1]{fontenc}\usepackage{lmodern}}{}
\fi
\setcounter{secnumdepth}{0}
\setcounter{tocdepth}{1}
)";

constexpr std::string_view kCommands = R"(\usepackage{amsmath}
\usepackage{array}
\usepackage{siunitx}
\usepackage{tikz}
% How all of it is set: ragged, with space between paragraphs.
\newenvironment{ohmfold}{%
  \par\raggedright\allowdisplaybreaks\raggedbottom
  \setlength{\parindent}{0pt}\setlength{\parskip}{.4\baselineskip plus 1pt}%
  \sisetup{group-digits=none}}{\par}
\newenvironment{ohmfoldentries}{\begin{list}{}{%
  \setlength{\leftmargin}{2.2em}\setlength{\labelwidth}{1.8em}\setlength{\labelsep}{.4em}%
  \setlength{\topsep}{0pt}\setlength{\partopsep}{0pt}\setlength{\itemsep}{0pt}%
  \setlength{\parsep}{\parskip}\renewcommand{\makelabel}[1]{##1\hfil}}}{\end{list}}
% A step stays on one page unless that would leave half a page empty.
\newsavebox{\ohmfoldbox}
\newdimen\ohmfoldrest
\newenvironment{ohmfoldstep}{\par\addvspace{.4\baselineskip}%
  \setbox\ohmfoldbox=\vbox\bgroup\hsize=\linewidth}{\par\egroup
  \ohmfoldneed{\dimexpr\ht\ohmfoldbox+\dp\ohmfoldbox\relax}\unvbox\ohmfoldbox\par}
\newcommand{\ohmfoldneed}[1]{%
  \ifdim\pagetotal>0pt
    \ohmfoldrest=\dimexpr\pagegoal-\pagetotal\relax
    \ifdim#1>\ohmfoldrest \ifdim#1<.5\textheight \pagebreak\fi\fi
  \fi}
% A figure in place, with its caption, no larger than the page.
\newcommand{\ohmfoldfigure}[2]{\par
  \sbox{\ohmfoldpicture}{#1}%
  \ifdim\wd\ohmfoldpicture>\linewidth
    \sbox{\ohmfoldpicture}{\resizebox{\linewidth}{!}{\usebox{\ohmfoldpicture}}}\fi
  \ifdim\ht\ohmfoldpicture>.7\textheight
    \sbox{\ohmfoldpicture}{\resizebox{!}{.7\textheight}{\usebox{\ohmfoldpicture}}}\fi
  \begin{center}\usebox{\ohmfoldpicture}\\[.6ex]{\small #2}\end{center}}
\newsavebox{\ohmfoldpicture}
\newcommand{\ohmfoldtable}[1]{\par\addvspace{.6ex}%
  \sbox{\ohmfoldpicture}{\renewcommand{\arraystretch}{1.15}#1}%
  \ifdim\wd\ohmfoldpicture>\linewidth
    \resizebox{\linewidth}{!}{\usebox{\ohmfoldpicture}}\else\usebox{\ohmfoldpicture}\fi
  \par\addvspace{.6ex}}
)";

}  // namespace

std::string latex_commands() {
  return "% Begin of what fragments need\n" + std::string(kCommands) + drawing::tikz_preamble() +
         "% End of what fragments need\n";
}

std::string latex_document(const views::Document& document, const LatexOptions& options) {
  const auto titles =
      std::count_if(document.blocks.begin(), document.blocks.end(), [](const views::Block& block) {
        const auto* heading = std::get_if<views::Heading>(&block);
        return heading != nullptr && heading->level == 1;
      });
  const bool several = titles > 1;
  const std::string inside =
      "\\begin{ohmfold}" + Writer(options, several).write(document) + "\\end{ohmfold}\n";
  if (options.fragment) return inside;
  std::string code(kOwnPreamble);
  code += latex_commands();
  code += "\\begin{document}\n";
  if (several) {
    code += "{\\LARGE\\bfseries " + drawing::latex_text(options.title) + "\\par}\n";
    code += "\\tableofcontents\n\\clearpage\n";
  }
  return code + inside + "\\end{document}\n";
}

}  // namespace ohmfold::handout
