// What a command line asks for, as data; and the functions that do it, one for each command.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "cli/exit_code.h"
#include "ohmfold/coach.h"
#include "ohmfold/handout.h"
#include "ohmfold/method.h"

namespace ohmfold {

enum class Format { text, json, csv, html, latex, markdown };

enum class DrawingFormat { svg, tikz, text };

/// The options that commands share: what the answer looks like and where it goes.
struct OutputChoice {
  Format format = Format::text;
  std::string file;  ///< "": standard output
  int figures = 0;   ///< 0: as the problem says
  int width = 80;
  bool ascii = false;
};

struct SolveCommand {
  std::vector<std::string> files;  ///< "-": standard input
  std::vector<std::string> cases;  ///< labels; empty: all cases
  bool pairs = false;
  Method method = Method::automatic;
  HandoutOptions handout;
  bool figures_in_text = false;
  bool inline_figures = false;  ///< Markdown: figures within the text, not as files beside it
  OutputChoice output;
};

struct DrawCommand {
  std::string file;                  ///< "-": standard input
  std::optional<std::string> label;  ///< of the case; none: the first one
  bool after_last = false;           ///< after the last step; otherwise
  std::size_t after = 0;             ///< after so many
  bool pairs = false;
  Method method = Method::automatic;
  DrawingFormat format = DrawingFormat::svg;
  DrawOptions drawing;
  OutputChoice output;
};

struct InspectCommand {
  std::vector<std::string> files;  ///< "-": standard input
  std::vector<std::string> cases;  ///< labels; empty: all cases
  OutputChoice output;
};

struct CombineCommand {
  std::string expression;  ///< "-": standard input
  std::optional<std::string> across;
  bool pairs = false;
  OutputChoice output;
};

struct CheckCommand {
  std::string problem, work;  ///< files; one of them may be "-": standard input
  bool strict_rounding = false;
  OutputChoice output;
};

struct HintCommand {
  std::string problem;
  std::optional<std::string> work;  ///< none: nothing is done yet
  HintLevel level = HintLevel::nudge;
  OutputChoice output;
};

struct PractiseCommand {
  std::string problem;
  std::optional<std::string> work;  ///< none: named after the problem, in the current folder
  OutputChoice output;
};

struct MarkCommand {
  std::string problem;
  std::vector<std::string> works;  ///< files, and folders of *.work files
  bool strict_rounding = false;
  OutputChoice output;
};

/// --help and --version.
struct ShowText {
  std::string text;
};

/// A command line that cannot be carried out, and what to say about it.
struct WrongUse {
  std::string complaint;
};

using Command =
    std::variant<SolveCommand, DrawCommand, InspectCommand, CombineCommand, CheckCommand,
                 HintCommand, PractiseCommand, MarkCommand, ShowText, WrongUse>;

/// Never fails: what is wrong with the arguments is itself a command.
[[nodiscard]] Command read_arguments(int count, const char* const* arguments);

ExitCode run(const SolveCommand& command);
ExitCode run(const DrawCommand& command);
ExitCode run(const InspectCommand& command);
ExitCode run(const CombineCommand& command);
ExitCode run(const CheckCommand& command);
ExitCode run(const HintCommand& command);
ExitCode run(const PractiseCommand& command);
ExitCode run(const MarkCommand& command);
ExitCode run(const ShowText& command);
ExitCode run(const WrongUse& command);

}  // namespace ohmfold
