// Reads the command line. The only file that includes CLI11, which takes seconds to compile.
#include <CLI/CLI.hpp>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "cli/command.h"
#include "language/nearest.h"

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

/// How text is laid out.
void add_layout(CLI::App& command, OutputChoice& output) {
  one_value(command.add_option("--width", output.width, "Columns of text, 40 to 400; else 80")
                ->check(CLI::Range(40, 400)),
            "N");
  command.add_flag("--ascii", output.ascii, "Write ohm and u, not the signs of ohm and micro");
}

void add_output_file(CLI::App& command, OutputChoice& output) {
  one_value(command.add_option("-o,--output", output.file,
                               "Write to this file instead of standard output"),
            "FILE");
}

void add_format(CLI::App& command, std::string& format, const std::vector<std::string>& formats) {
  std::string words = formats.front() + " (the default)";
  for (std::size_t i = 1; i < formats.size(); ++i) {
    words += (i + 1 == formats.size() ? " or " : ", ") + formats[i];
  }
  one_value(
      command.add_option("--as", format, "What to write: " + words)->check(CLI::IsMember(formats)),
      "FORMAT");
}

/// The options of the commands that solve.
void add_output_options(CLI::App& command, OutputChoice& output, std::string& format) {
  one_value(
      command
          .add_option("--figures", output.figures, "Significant figures of rounded values, 1 to 30")
          ->check(CLI::Range(1, 30)),
      "N");
  add_format(command, format, {"text", "json"});
  add_output_file(command, output);
  add_layout(command, output);
}

/// The words of --method.
const std::map<std::string, Method>& methods() {
  static const std::map<std::string, Method> words = {
      {"series-parallel", Method::series_parallel},
      {"equal-potentials", Method::equal_potentials},
      {"delta-star", Method::delta_star},
      {"node-voltage", Method::node_voltage},
      {"superposition", Method::superposition}};
  return words;
}

void add_method(CLI::App& command, std::string& method) {
  one_value(command.add_option("--method", method, "The way on where series and parallel stop")
                ->check(CLI::IsMember(methods())),
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

/// The words of --level.
const std::map<std::string, HintLevel>& levels() {
  static const std::map<std::string, HintLevel> words = {
      {"nudge", HintLevel::nudge}, {"point", HintLevel::point}, {"tell", HintLevel::tell}};
  return words;
}

const std::map<std::string, Format>& format_words() {
  static const std::map<std::string, Format> words = {
      {"text", Format::text}, {"json", Format::json}, {"csv", Format::csv}};
  return words;
}

/// All that CLI11 writes into, and the commands that it finds.
struct CommandLine {
  CLI::App app{kAbout, "ohmfold"};
  SolveCommand solve;
  InspectCommand inspect;
  CombineCommand combine;
  CheckCommand check;
  HintCommand hint;
  PractiseCommand practise;
  MarkCommand mark;
  std::string format = "text";
  std::string method;
  std::string level = "nudge";
  CLI::App* solving = nullptr;
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
    add_output_options(*solving, solve.output, format);

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
                  ->check(CLI::IsMember(levels())),
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
    for (OutputChoice* output : {&solve.output, &inspect.output, &combine.output, &check.output,
                                 &hint.output, &practise.output, &mark.output}) {
      output->format = format_words().at(format);
      if (output->file == "-") output->file.clear();
    }
    if (!method.empty()) solve.method = methods().at(method);
    hint.level = levels().at(level);
    if (solving->parsed()) return std::move(solve);
    if (inspecting->parsed()) return std::move(inspect);
    if (combining->parsed()) return std::move(combine);
    if (checking->parsed()) return std::move(check);
    if (hinting->parsed()) return std::move(hint);
    if (practising->parsed()) return std::move(practise);
    return std::move(mark);
  }
};

bool is_option(std::string_view word) {
  return word.size() > 1 && word.front() == '-';
}

/// The options of a command as a person types them.
std::vector<std::string> option_names(const CLI::App& command) {
  std::vector<std::string> names;
  for (const CLI::Option* option : command.get_options()) {
    for (const std::string& name : option->get_lnames()) names.push_back("--" + name);
  }
  return names;
}

std::string unknown_option(const CLI::App& command, const std::string& word) {
  const std::vector<std::string> names = option_names(command);
  const std::vector<std::string_view> known(names.begin(), names.end());
  return "there is no option '" + word + "'; " + suggestion(word, known, "options");
}

std::vector<std::string> command_names(const CLI::App& app) {
  std::vector<std::string> names;
  for (const CLI::App* command : app.get_subcommands({})) names.push_back(command->get_name());
  return names;
}

/// What is wrong where no command was recognised.
std::string no_command(const CLI::App& app, const std::vector<std::string>& words) {
  const std::vector<std::string> names = command_names(app);
  const std::vector<std::string_view> known(names.begin(), names.end());
  if (words.empty()) return "a command is needed; the commands are " + listed(known, known.size());
  const std::string& word = words.front();
  if (is_option(word)) return unknown_option(app, word);
  const std::string finding = "there is no command '" + word + "'; ";
  if (word.ends_with(".circuit")) return finding + "did you mean 'solve " + word + "'?";
  if (word.ends_with(".work")) return finding + "did you mean 'check PROBLEM " + word + "'?";
  return finding + suggestion(word, known, "commands");
}

/// What is wrong with the arguments of a command.
std::string wrong_arguments(const CLI::App& command, const CLI::ParseError& error,
                            const std::vector<std::string>& unexpected) {
  if (unexpected.empty()) return error.what();
  const std::string& word = unexpected.front();
  if (is_option(word)) return unknown_option(command, word);
  return "'" + word + "' is not expected here; an expression goes in quotes";
}

WrongUse explain(const CLI::App& app, const CLI::ParseError& error,
                 const std::vector<std::string>& words) {
  const std::vector<CLI::App*> commands = app.get_subcommands();
  if (commands.empty()) return {no_command(app, words) + "\nTry: ohmfold --help"};
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
