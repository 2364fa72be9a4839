// Reads the command line. The only file that includes CLI11, which takes seconds to compile.
#include <CLI/CLI.hpp>
#include <string>
#include <utility>
#include <vector>

#include "cli/command.h"
#include "cli/option_words.h"
#include "cli/wrong_arguments.h"

namespace ohmfold {
namespace {

constexpr const char* kAbout =
    "Solves direct-current resistor problems exactly and shows every step, and judges\n"
    "the steps that a person writes down.";
constexpr const char* kMore =
    "Exit status: 0 done, 1 the judged work has mistakes, 2 wrong use,\n"
    "3 wrong file or circuit, 70 internal error.";

/// An option with one value, shown as `value` in the help; given twice, the last one counts.
void one_value(CLI::Option* option, const std::string& value) {
  option->option_text(value)->type_name(value)->take_last();
}

void add_significant_figures(CLI::App& command, OutputChoice& output) {
  one_value(
      command
          .add_option("--figures", output.figures, "Significant figures of rounded values, 1 to 30")
          ->check(CLI::Range(1, 30)),
      "N");
}

void add_ascii(CLI::App& command, OutputChoice& output) {
  command.add_flag("--ascii", output.ascii, "Write ohm and u, not the signs of ohm and micro");
}

/// How text is laid out.
void add_layout(CLI::App& command, OutputChoice& output) {
  one_value(command.add_option("--width", output.width, "Columns of text, 40 to 400; else 80")
                ->check(CLI::Range(40, 400)),
            "N");
  add_ascii(command, output);
}

void add_output_file(CLI::App& command, OutputChoice& output) {
  one_value(command.add_option("-o,--output", output.file,
                               "Write to this file instead of standard output"),
            "FILE");
}

void add_format(CLI::App& command, std::string& format, const std::vector<std::string>& formats) {
  constexpr std::size_t kMostBeside = 3;  // of more, a line of the help has no room for the remark
  std::string words = formats.front() + (formats.size() > kMostBeside ? "" : " (the default)");
  for (std::size_t i = 1; i < formats.size(); ++i) {
    words += (i + 1 == formats.size() ? " or " : ", ") + formats[i];
  }
  one_value(
      command.add_option("--as", format, "What to write: " + words)->check(CLI::IsMember(formats)),
      "FORMAT");
}

/// The options of the commands that solve.
void add_output_options(CLI::App& command, OutputChoice& output, std::string& format,
                        const std::vector<std::string>& formats = {"text", "json"}) {
  add_significant_figures(command, output);
  add_format(command, format, formats);
  add_output_file(command, output);
  add_layout(command, output);
}

void add_method(CLI::App& command, std::string& method) {
  one_value(command.add_option("--method", method, "The way on where series and parallel stop")
                ->check(CLI::IsMember(method_words())),
            "METHOD");
}

void add_pairs(CLI::App& command, bool& pairs) {
  command.add_flag("--pairs", pairs, "Combine two parts in each step, never more");
}

void add_files(CLI::App& command, std::vector<std::string>& files, std::vector<std::string>& cases,
               const std::string& case_help) {
  command.add_option("FILE", files, "Circuit files; - is standard input")
      ->required()
      ->option_text("...");
  command.add_option("--case", cases, case_help)
      ->allow_extra_args(false)
      ->type_name("LABEL")
      ->option_text("LABEL");
}

void add_problem(CLI::App& command, std::string& problem,
                 const char* what = "A circuit file; - is standard input") {
  command.add_option("PROBLEM", problem, what)->required()->option_text(" ");
}

void add_strict_rounding(CLI::App& command, bool& strict) {
  command.add_flag("--strict-rounding", strict, "Rounding too early costs the accuracy mark");
}

/// One of the words of a table.
template <class Value>
void add_choice(CLI::App& command, const std::string& option, std::string& word,
                const WordsFor<Value>& words, const std::string& shown, const std::string& what) {
  one_value(command.add_option(option, word, what)->check(CLI::IsMember(words)), shown);
}

void add_symbols(CLI::App& command, std::string& symbols) {
  add_choice(command, "--symbols", symbols, symbol_words(), "SYMBOLS",
             "Resistors as rectangle (the default) or zigzag");
}

/// The long names of a command's options as a person types them; with `given`, of those that were.
std::vector<std::string> option_names(const CLI::App& command, bool given = false) {
  std::vector<std::string> names;
  for (const CLI::Option* option : command.get_options()) {
    if (given && option->count() == 0) continue;
    for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
  }
  return names;
}

/// All that CLI11 writes into, and the commands that it finds.
struct CommandLine {
  CLI::App app{kAbout, "ohmfold"};
  SolveCommand solve;
  DrawCommand draw;
  InspectCommand inspect;
  CombineCommand combine;
  CheckCommand check;
  HintCommand hint;
  PractiseCommand practise;
  MarkCommand mark;
  std::string format = "text";
  std::string method;
  std::string level = "nudge";
  std::string content = "solution";
  std::string redraws = "stages";
  std::string symbols = "rectangle";
  std::string notation = "units";
  std::string drawing_format;
  std::string after;
  bool no_values = false, no_marks = false;
  CLI::App* solving = nullptr;
  CLI::App* drawing = nullptr;
  CLI::App* inspecting = nullptr;
  CLI::App* combining = nullptr;
  CLI::App* checking = nullptr;
  CLI::App* hinting = nullptr;
  CLI::App* practising = nullptr;

  CommandLine() {
    app.set_version_flag("--version", "ohmfold " OHMFOLD_VERSION, "Print the version");
    app.set_help_flag("-h,--help", "Print this help");
    app.footer(kMore);
    app.require_subcommand(1);
    add_solving();
    add_judging();
  }

  void add_solving() {
    solving = app.add_subcommand("solve", "Solve the problems in circuit files");
    add_files(*solving, solve.files, solve.cases,
              "Solve only the case of this label; may be repeated");
    add_pairs(*solving, solve.pairs);
    add_method(*solving, method);
    add_output_options(*solving, solve.output, format,
                       {"text", "json", "html", "latex", "markdown"});
    add_handout();
    add_drawing();

    inspecting = app.add_subcommand("inspect", "Tell whether series and parallel suffice, and why");
    add_files(*inspecting, inspect.files, inspect.cases,
              "Inspect only the case of this label; repeatable");
    add_output_options(*inspecting, inspect.output, format);

    combining = app.add_subcommand("combine", "Work out a network written as one expression");
    combining
        ->add_option("EXPRESSION", combine.expression,
                     "Such as \"4 + 6 || 3\"; - is standard input")
        ->required()
        ->option_text(" ");
    one_value(
        combining->add_option("--across", combine.across, "Feed it with this voltage, such as 12V"),
        "VOLTAGE");
    add_pairs(*combining, combine.pairs);
    add_output_options(*combining, combine.output, format);
  }

  void add_handout() {
    CLI::App& command = *solving;
    add_choice(command, "--content", content, content_words(), "CONTENT",
               "solution (the default), problem or answers");
    add_choice(command, "--redraws", redraws, redraw_words(), "REDRAWS",
               "Figures of stages (the default), steps or none");
    add_symbols(command, symbols);
    add_choice(command, "--notation", notation, notation_words(), "NOTATION",
               "Resistors in units (the default) or letters, 4K7");
    command.add_flag("--answer-key", solve.handout.answer_key, "All answers once more at the end");
    command.add_flag("--workbook", solve.handout.workbook, "HTML: cover the steps until asked for");
    command.add_flag("--fragment", solve.handout.fragment, "LaTeX: without a preamble");
    command.add_flag("--inline", solve.inline_figures, "Markdown: put the figures into the text");
    command.add_flag("--figures-in-text", solve.figures_in_text, "Text: draw the circuits in it");
  }

  void add_drawing() {
    drawing = app.add_subcommand("draw", "Draw the circuit of a file, or what is left of it");
    drawing->add_option("FILE", draw.file, "A circuit file; - is standard input")
        ->required()
        ->option_text(" ");
    one_value(drawing->add_option("--case", draw.label, "The case of this label, not the first"),
              "LABEL");
    one_value(drawing->add_option("--after", after, "After so many steps, or after the last")
                  ->check(CLI::Range(0, 1'000'000'000) | CLI::IsMember({"last"})),
              "N");
    add_pairs(*drawing, draw.pairs);
    add_method(*drawing, method);
    add_choice(*drawing, "--as", drawing_format, drawing_format_words(), "FORMAT",
               "svg, tikz or text; else by the file's ending");
    add_symbols(*drawing, symbols);
    drawing->add_flag("--currents", draw.drawing.currents, "Show currents with their directions");
    drawing->add_flag("--potentials", draw.drawing.potentials, "Show the potential of each point");
    drawing->add_flag("--no-values", no_values, "Leave out the values of the parts");
    drawing->add_flag("--no-marks", no_marks, "Do not mark what the next steps take");
    add_significant_figures(*drawing, draw.output);
    add_output_file(*drawing, draw.output);
    add_ascii(*drawing, draw.output);
  }

  void add_judging() {
    checking = app.add_subcommand("check", "Judge each line of a work file");
    add_problem(*checking, check.problem);
    checking->add_option("WORK", check.work, "A work file; - is standard input")
        ->required()
        ->option_text(" ");
    add_strict_rounding(*checking, check.strict_rounding);
    add_format(*checking, format, {"text", "json"});
    add_output_file(*checking, check.output);
    add_layout(*checking, check.output);

    hinting = app.add_subcommand("hint", "Give a hint at a mistake or at the next step");
    add_problem(*hinting, hint.problem);
    hinting->add_option("WORK", hint.work, "A work file; without one, nothing is done yet")
        ->option_text(" ");
    one_value(hinting->add_option("--level", level, "nudge (the default), point or tell")
                  ->check(CLI::IsMember(level_words())),
              "LEVEL");
    add_output_file(*hinting, hint.output);
    add_layout(*hinting, hint.output);

    practising = app.add_subcommand("practise", "Solve a problem yourself, judged step by step");
    add_problem(*practising, practise.problem, "A circuit file");
    one_value(practising->add_option("--work", practise.work,
                                     "Keep the work in this file, or go on with it"),
              "FILE");
    add_layout(*practising, practise.output);

    CLI::App* marking = app.add_subcommand("mark", "Mark the work files of a class");
    add_problem(*marking, mark.problem);
    marking->add_option("WORKS", mark.works, "Folders of *.work files, or work files")
        ->required()
        ->option_text("...");
    add_strict_rounding(*marking, mark.strict_rounding);
    add_format(*marking, format, {"text", "json", "csv"});
    add_output_file(*marking, mark.output);
    add_layout(*marking, mark.output);
  }

  /// Requires that parsing succeeded.
  [[nodiscard]] Command command() && {
    for (OutputChoice* output : {&solve.output, &draw.output, &inspect.output, &combine.output,
                                 &check.output, &hint.output, &practise.output, &mark.output}) {
      output->format = format_words().at(format);
      if (output->file == "-") output->file.clear();
    }
    if (!method.empty()) solve.method = draw.method = method_words().at(method);
    hint.level = level_words().at(level);
    if (solving->parsed()) return solve_command();
    if (drawing->parsed()) return draw_command();
    if (inspecting->parsed()) return std::move(inspect);
    if (combining->parsed()) return std::move(combine);
    if (checking->parsed()) return std::move(check);
    if (hinting->parsed()) return std::move(hint);
    if (practising->parsed()) return std::move(practise);
    return std::move(mark);
  }

 private:
  Command solve_command() {
    solve.handout.content = content_words().at(content);
    solve.handout.redraws = redraw_words().at(redraws);
    solve.handout.symbols = symbol_words().at(symbols);
    solve.handout.notation = notation_words().at(notation);
    solve.handout.figures = solve.output.figures;
    return checked(solve, *solving);
  }

  Command draw_command() {
    draw.format = drawing_format.empty() ? drawing_format_of(draw.output.file)
                                         : drawing_format_words().at(drawing_format);
    draw.drawing.symbols = symbol_words().at(symbols);
    draw.drawing.figures = draw.output.figures;
    draw.drawing.values = !no_values;
    // The circuit as it stands is not to tell what comes first.
    draw.drawing.marks = !no_marks && !after.empty();
    draw.after_last = after == "last";
    draw.after = after.empty() || draw.after_last ? 0 : std::stoul(after);
    return checked(draw, *drawing);
  }

  /// The command, unless its options do not go together.
  template <class Chosen>
  static Command checked(Chosen& chosen, const CLI::App& command) {
    const std::string complaint = misfit(chosen, option_names(command, true));
    if (complaint.empty()) return std::move(chosen);
    return WrongUse{complaint + "\nTry: ohmfold " + command.get_name() + " --help"};
  }
};

std::vector<std::string> command_names(const CLI::App& app) {
  std::vector<std::string> names;
  for (const CLI::App* command : app.get_subcommands({})) names.push_back(command->get_name());
  return names;
}

/// What is wrong with the arguments of a command.
std::string wrong_arguments(const CLI::App& command, const CLI::ParseError& error,
                            const std::vector<std::string>& unexpected) {
  if (unexpected.empty()) return error.what();
  const std::string& word = unexpected.front();
  if (is_option(word)) return no_such_option(word, option_names(command));
  return "'" + word + "' is not expected here; an expression goes in quotes";
}

WrongUse explain(const CLI::App& app, const CLI::ParseError& error,
                 const std::vector<std::string>& words) {
  const std::vector<CLI::App*> commands = app.get_subcommands();
  if (commands.empty())
    return {no_such_command(words, command_names(app), option_names(app)) +
            "\nTry: ohmfold --help"};
  const CLI::App& command = *commands.front();
  return {wrong_arguments(command, error, app.remaining(true)) + "\nTry: ohmfold " +
          command.get_name() + " --help"};
}

}  // namespace

Command read_arguments(int count, const char* const* arguments) {
  CommandLine line;
  try {
    line.app.parse(count, arguments);
    return std::move(line).command();
  } catch (const CLI::CallForHelp&) {
    return ShowText{line.app.help()};
  } catch (const CLI::CallForVersion& version) {
    return ShowText{std::string(version.what()) + '\n'};
  } catch (const CLI::ParseError& error) {
    return explain(line.app, error, std::vector<std::string>(arguments + 1, arguments + count));
  }
}

}  // namespace ohmfold
