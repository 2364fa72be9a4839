#!/bin/sh
# Everything that has to hold: builds with warnings as errors, formatting, lint, all tests.
#
#   sh tests/all.sh         what to run before a change goes in
#   sh tests/all.sh --ci    also with sanitizers, the static program, and fuzzing
#
# Builds in build/. Installs what is missing where the machine has apt-get.
set -eu
cd "$(dirname "$0")/.."
jobs=${JOBS:-2}
mode=${1:-}

export LSAN_OPTIONS="suppressions=$PWD/tests/leaks.txt:print_suppressions=0"

title() { printf '\n== %s\n' "$*"; }

# The packages of a list that are not there.
missing_of() {
  for package in $1; do
    dpkg-query -W -f '${Status}' "$package" 2> /dev/null | grep -q 'ok installed' ||
      printf ' %s' "$package"
  done
}

install_packages() {
  as_root=
  [ "$(id -u)" -eq 0 ] || as_root=sudo
  # shellcheck disable=SC2086 # the names are separate words
  DEBIAN_FRONTEND=noninteractive $as_root apt-get install -qy --no-install-recommends $1
}

# What building needs, at once. What only tests of pages and of LaTeX need, meanwhile: it is large,
# and a build takes longer.
install_missing() {
  later=
  command -v apt-get > /dev/null || return 0
  now=$(missing_of "g++ cmake ninja-build pkg-config libboost-dev libginac-dev libcli11-dev
    nlohmann-json3-dev libedit-dev libgtest-dev libgmock-dev libvalijson-dev clang clang-format
    clang-tidy")
  late=$(missing_of "chromium poppler-utils cmark texlive-latex-base texlive-latex-recommended
    texlive-pictures texlive-science lmodern")
  # Other packages than Debian's bring npm, too, and do not go together with its own.
  command -v npm > /dev/null || late="$late nodejs npm"
  [ -n "$now$late" ] || return 0
  title "installing$now$late"
  as_root=
  [ "$(id -u)" -eq 0 ] || as_root=sudo
  $as_root apt-get update -q
  [ -z "$now" ] || install_packages "$now"
  [ -n "$late" ] || return 0
  install_packages "$late" > build/install.log 2>&1 &
  later=$!
}

wait_for_packages() {
  [ -n "$later" ] || return 0
  wait "$later" || { cat build/install.log; return 1; }
  later=
}

# build NAME TARGETS OPTION...: configures build/NAME and builds these targets in it.
build() {
  name=$1
  targets=$2
  shift 2
  title "building build/$name"
  cmake -G Ninja -S . -B "build/$name" -DOHMFOLD_WERROR=ON "$@" > "build/$name.log" ||
    { cat "build/$name.log"; return 1; }
  # shellcheck disable=SC2086 # the targets are separate words
  cmake --build "build/$name" -j "$jobs" --target $targets
}

# run_tests NAME [PATTERN]: those that have been built in build/NAME, but for names that match.
run_tests() {
  title "tests in build/$1"
  ctest --test-dir "build/$1" -j "$jobs" --output-on-failure -E "_NOT_BUILT\$${2:+|$2}"
}

check_format() {
  title 'formatting'
  find src include tests \( -name '*.cpp' -o -name '*.h' \) \
    -exec clang-format --dry-run -Werror {} +
}

# check_lint [CHECKS]: with these added to or taken from those of .clang-tidy.
check_lint() {
  title 'lint'
  # Only for the commands: with precompiled headers they are those of one compiler alone.
  cmake -G Ninja -S . -B build/lint > build/lint.log
  run-clang-tidy -quiet -j "$jobs" -p build/lint ${1:+"-checks=$1"} "$PWD/src/.*" \
    > build/lint.log 2>&1 ||
    { grep -E 'warning|error' build/lint.log; return 1; }
}

fuzz() {
  title "fuzzing, $1 seconds for each target"
  cmake --build build/sanitize -j "$jobs" --target fuzz
  for target in number expression circuit pipeline work handout; do
    mkdir -p "build/sanitize/found/$target"
    "build/sanitize/tests/fuzz/fuzz_$target" -max_total_time="$1" -timeout=20 -rss_limit_mb=4096 \
      -print_final_stats=0 -verbosity=0 -dict=tests/fuzz/circuit.dict \
      -artifact_prefix="build/sanitize/failed_${target}_" \
      "build/sanitize/found/$target" "tests/fuzz/corpus/$target" problems
    echo "fuzz_$target: no failure"
  done
}

mkdir -p build
install_missing
check_format
# With the sanitizer build to come, which has most unit tests and links libraries as they usually are,
# this one tries the static program, and of the tests those that need speed. Optimising more would
# cost more minutes than the tests gain. GCC 12 then takes the buffer of a moved string for too small.
static=OFF
targets=all
lint=
if [ "$mode" = --ci ]; then
  static=ON
  targets='ohmfold_program page_samples pdf_answers test_docs test_drawing test_published
           test_structure'
  # What finds faults; how things are written is looked at before a change goes in.
  lint='-readability-*,-modernize-*'
fi
build check "$targets" -DOHMFOLD_TESTS=ON -DOHMFOLD_STATIC=$static -DOHMFOLD_PRECOMPILE=ON \
  -DCMAKE_BUILD_TYPE=RelWithDebInfo \
  -DCMAKE_CXX_FLAGS_RELWITHDEBINFO='-O1 -Wno-array-bounds -Wno-stringop-overflow'
check_lint "$lint"
wait_for_packages
run_tests check
if [ "$mode" = --ci ]; then
  build sanitize 'ohmfold_program test_bridge test_check test_circuit test_cli test_coach test_exact
      test_fuzz test_handout test_language test_programs test_properties test_rules test_solve
      test_views' \
    -DOHMFOLD_TESTS=ON -DOHMFOLD_FUZZ=ON -DOHMFOLD_WERROR=OFF \
    -DOHMFOLD_PRECOMPILE=ON \
    -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_BUILD_TYPE=RelWithDebInfo \
    -DCMAKE_CXX_FLAGS_RELWITHDEBINFO=-O1 \
    -DOHMFOLD_SANITIZE=address,undefined
  fuzz 6
  # Pages and PDFs are the same ones, made more slowly.
  run_tests sanitize '^(browser|latex)$'
fi
