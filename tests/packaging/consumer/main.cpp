// A program of somebody else: solves a circuit with the installed library and checks one answer.
#include <ohmfold/read.h>
#include <ohmfold/render.h>
#include <ohmfold/solve.h>

#include <cstdio>

int main() {
  const ohmfold::SourceText source{
      .name = "lamp",
      .text = "battery E = 6 V from G to T\nlamp L = 4 ohm from T to G\nfind current through L\n"};
  const ohmfold::Outcome<ohmfold::Problem> problem = ohmfold::read_circuit(source);
  if (!problem) return 1;
  const ohmfold::Trace trace = ohmfold::solve(*problem.value);
  std::fputs(ohmfold::render_json(trace).c_str(), stdout);
  const ohmfold::Quantity expected(ohmfold::Number::quotient(3, 2), ohmfold::Unit::ampere);
  return trace.cases.front().answers.front().value.value == expected ? 0 : 2;
}
