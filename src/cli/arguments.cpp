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
    "Solves direct-current resistor problems exactly and shows every step.";
constexpr const char* kMore =
    "Exit status: 0 solved, 2 wrong use, 3 wrong file or circuit, 70 internal error.";

/// An option with one value, shown as `value` in the help; given twice, the last one counts.
void one_value(CLI::Option* option, const std::string& value) {
  option->option_text(value)->type_name(value)->take_last();
}

void add_output_options(CLI::App& command, OutputChoice& output, std::string& format) {
  one_value(
      command
          .add_option("--figures", output.figures, "Significant figures of rounded values, 1 to 30")
          ->check(CLI::Range(1, 30)),
      "N");
  one_value(command.add_option("--as", format, "What to write: text (the default) or json")
                ->check(CLI::IsMember({"text", "json"})),
            "FORMAT");
  one_value(command.add_option("-o,--output", output.file,
                               "Write to this file instead of standard output"),
            "FILE");
  one_value(command.add_option("--width", output.width, "Columns of text, 40 to 400; else 80")
                ->check(CLI::Range(40, 400)),
            "N");
  command.add_flag("--ascii", output.ascii, "Write ohm and u, not the signs of ohm and micro");
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

/// All that CLI11 writes into, and the commands that it finds.
struct CommandLine {
  CLI::App app{kAbout, "ohmfold"};
  SolveCommand solve;
  InspectCommand inspect;
  CombineCommand combine;
  std::string format = "text";
  std::string method;
  CLI::App* solving = nullptr;
  CLI::App* inspecting = nullptr;
  CLI::App* combining = nullptr;

  CommandLine() {
    app.set_version_flag("--version", "ohmfold " OHMFOLD_VERSION, "Print the version");
    app.set_help_flag("-h,--help", "Print this help");
    app.footer(kMore);
    app.require_subcommand(1);

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

  /// Requires that parsing succeeded.
  [[nodiscard]] Command command() && {
    const auto finish = [this](OutputChoice& output) {
      output.format = format == "json" ? Format::json : Format::text;
      if (output.file == "-") output.file.clear();
    };
    finish(solve.output);
    finish(inspect.output);
    finish(combine.output);
    if (!method.empty()) solve.method = methods().at(method);
    if (solving->parsed()) return std::move(solve);
    if (inspecting->parsed()) return std::move(inspect);
    return std::move(combine);
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

/// What is wrong where no command was recognised.
std::string no_command(const CLI::App& app, const std::vector<std::string>& words) {
  if (words.empty()) return "a command is needed: solve, inspect or combine";
  const std::string& word = words.front();
  if (is_option(word)) return unknown_option(app, word);
  const std::string finding = "there is no command '" + word + "'; ";
  if (word.ends_with(".circuit")) return finding + "did you mean 'solve " + word + "'?";
  return finding +
         suggestion(word, std::vector<std::string_view>{"solve", "inspect", "combine"}, "commands");
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
