#!/usr/bin/env bash
# The launcher as a user meets it: builds, answers, exit codes 0 holds, 1 does not hold, 2 bad input; never a stack trace.
set -u
cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." || exit 3
out=$(mktemp -d) && trap 'rm -rf "$out"' EXIT
failed=0 passed=0
expect() { # exit code, words that must appear, arguments...
  local code=$1 words=$2; shift 2
  ./dustwright "$@" >"$out/text" 2>&1; local got=$?
  if [ "$got" = "$code" ] && grep -qF -- "$words" "$out/text" && ! grep -qE '^\s+at [a-z]+\.|Exception in thread' "$out/text"; then
    passed=$((passed + 1))
  else
    failed=$((failed + 1)); printf 'launcher: expected exit %s and "%s" from: dustwright %s\ngot exit %s:\n' "$code" "$words" "$*" "$got"; tail -n 20 "$out/text"
  fi
}
expect 0 "verify" --help
expect 0 "holds" verify examples/bakery/plant.yaml
expect 1 "does not hold" verify examples/bakery-one-main/plant.yaml
expect 0 "A1" solve examples/bakery/plant.yaml --open A1
expect 2 "no inlet" solve examples/bakery/plant.yaml --open NOPE
expect 2 "no file" verify no/such/plant.yaml
expect 2 "Unknown" solve examples/bakery/plant.yaml --opne A1
expect 0 "\$schema" schema plant
expect 0 "report.html" report examples/bakery/plant.yaml --out "$out/report"
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
