#!/bin/sh
# Worked solutions as LaTeX, as PDFs: every problem compiles without a warning, and its answers stand
# in the text of the PDF. So do a booklet, text that would do harm, and fragments in a document of
# somebody else.
#
#   sh tests/latex/run.sh PROGRAM PDF_ANSWERS FOLDER
#
# FOLDER is emptied and keeps what was made. Ends with 77 where there is no pdflatex or pdftotext.
set -eu
program=$1
pdf_answers=$2
folder=$3
source=$(cd "$(dirname "$0")/../.." && pwd)
jobs=${JOBS:-2}

for tool in pdflatex pdftotext; do
  command -v "$tool" > /dev/null || { echo "skipped: no $tool here"; exit 77; }
done
for package in siunitx.sty tikz.sty amsmath.sty; do
  kpsewhich "$package" > /dev/null || { echo "skipped: no $package here"; exit 77; }
done

rm -rf "$folder"
mkdir -p "$folder"
cd "$folder"

# What the program writes, each as a document of its own.
for file in "$source"/problems/*.circuit; do
  name=$(basename "$file" .circuit)
  "$program" solve "$file" --as latex --redraws steps --output "$name.tex" > /dev/null 2> "$name.err" ||
    [ -s "$name.tex" ] || { cat "$name.err"; exit 1; }
done
"$program" solve "$source/tests/latex/hostile.circuit" --as latex --output hostile.tex
first=$source/problems/02-seed-trays.circuit
second=$source/problems/36-loaded-scale.circuit
"$program" solve "$first" "$second" --as latex --symbols zigzag --answer-key --output booklet.tex

# Two fragments in a document of somebody else, with what they need taken from a whole document.
mkdir fragments
"$program" solve "$first" --as latex --fragment --output fragments/first.tex
"$program" solve "$second" --as latex --fragment --output fragments/second.tex
{
  printf '%s\n' '\documentclass{article}'
  sed -n '/^% Begin of what fragments need/,/^% End of what fragments need/p' booklet.tex
  printf '%s\n' '\begin{document}\section{Ours}Text.' \
    '\input{fragments/first}\input{fragments/second}' '\end{document}'
} > host.tex

# Twice, so that contents are settled.
cat > compile.sh <<'END'
for run in 1 2; do
  pdflatex -halt-on-error -interaction=nonstopmode "$1.tex" > "$1.out" 2>&1 ||
    { echo "$1.tex does not compile:"; grep -A 3 '^!' "$1.out"; exit 1; }
done
pdftotext -layout "$1.pdf" "$1.txt"
END
ls ./*.tex | sed 's/\.tex$//' | xargs -P "$jobs" -n 1 sh compile.sh

# Whatever LaTeX complains of is a fault, in the last run.
if grep -E 'Warning|Overfull|Underfull|Undefined|undefined|Missing' ./*.log; then exit 1; fi
echo "$(ls ./*.pdf | wc -l) documents compile without a warning"

# Copied text keeps its digits, and contents lead to pages.
grep -q 'Problem 2: A scale under load' booklet.txt
grep -q 'Ours' host.txt
tr -d ' \n' < hostile.txt | grep -qF '\input{/etc/hostname}$x$%&#_a_~^{}--'
"$pdf_answers" "$source/problems" .
