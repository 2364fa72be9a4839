#!/bin/sh
# Tests the pages in a browser: run.sh SOURCE WORK PAGE_SAMPLES
#
# Installs what package-lock.json says into WORK, writes pages there and opens them. Ends with code 77,
# skipped, where node, npm, Chromium or pdftotext is missing, or the packages cannot be had.
set -eu
source=$1
work=$2
samples=$3

skip() {
  echo "skipped: $*"
  exit 77
}

OHMFOLD_CHROMIUM=$(command -v chromium || command -v chromium-browser) || skip 'there is no Chromium'
for program in node npm pdftotext pdftoppm; do
  command -v "$program" > /dev/null || skip "there is no $program"
done

mkdir -p "$work/pages"
cp "$source"/tests/browser/*.mjs "$source"/tests/browser/package.json \
  "$source"/tests/browser/package-lock.json "$work"
cd "$work"
if ! cmp -s package-lock.json installed-lock.json; then
  npm ci --no-audit --no-fund > npm.log 2>&1 || skip 'the packages cannot be installed'
  cp package-lock.json installed-lock.json
fi
rm -f pages/*
"$samples" pages "$source"/problems/*.circuit

export OHMFOLD_CHROMIUM OHMFOLD_SOURCE="$source" OHMFOLD_PAGES="$work/pages"
exec node --test --test-concurrency=2
