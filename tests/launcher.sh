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
spoilt() { # sed script; prints a copy of the bakery with that change
  local file; file=$(mktemp -p "$out" XXXXXX.yaml)
  sed -E "$1" examples/bakery/plant.yaml >"$file"
  cmp -s "$file" examples/bakery/plant.yaml && echo "launcher: nothing changed by $1" >&2
  printf '%s' "$file"
}
bakery=examples/bakery/plant.yaml

# what a user does
expect 0 "Usage: dustwright" --help
expect 2 "Usage: dustwright"
expect 0 "Holds in" verify $bakery
expect 1 "Does not hold in" verify examples/bakery-one-main/plant.yaml
expect 0 "inlet A1 alone" solve $bakery --open A1
expect 0 "all inlets closed" solve $bakery --open none
expect 0 "stands" solve $bakery --running none
expect 1 "Does not hold here: Dust settles in run HP" solve examples/bakery-one-main/plant.yaml --open A1
expect 0 "dustwright/verify/2" verify $bakery --open A1 --format json
expect 1 "its air does not pass the tubing" explain examples/bakery-one-main/plant.yaml 1
expect 0 "\$schema" schema plant
expect 0 "_dustwright" completion
expect 0 "report.html" report $bakery --out "$out/report"
[ "$(umask)" != 0022 ] || [ "$(stat -c %a "$out/report/report.pdf" 2>/dev/null || echo 644)" = 644 ] || {
  failed=$((failed + 1)); echo "launcher: others may not read the report"; }

# what a user mistypes
expect 2 "There is no inlet NOPE" solve $bakery --open NOPE
expect 2 "named twice" solve $bakery --open A1,A1
expect 2 "There is no producer P9" solve $bakery --running P9
expect 2 "Unknown option" solve $bakery --opne A1
expect 2 "See: dustwright solve --help" solve
expect 2 "There is no finding 999" explain $bakery 999
expect 2 "There is no file" verify no/such/plant.yaml
expect 2 "is a folder" verify examples
expect 2 "a file of that name is in the way" report $bakery --out README.md

# what a plant file gets wrong
expect 2 "does not say at what pressure" verify "$(spoilt 's/rated: 350 scfm/rated: 350 cfm/')"
expect 2 "a number without a unit" verify "$(spoilt 's/altitude: 40 m/altitude: 40/')"
expect 2 'did you mean "altitude"' verify "$(spoilt 's/altitude:/altitute:/')"
expect 2 "where a vacuum or pressure difference belongs" verify "$(spoilt 's/set: 8.5 inHg/set: 8.5 inHg abs/')"
expect 2 "steers how text is shown" verify "$(spoilt 's/^  name: .*/  name: "a\\u202Eb"/')"
expect 2 "it is no ordinary file" verify /dev/null
: >"$out/empty.yaml"
expect 2 "the file is empty" verify "$out/empty.yaml"
printf 'a: &a [x]\nb: [*a, *a]\n' >"$out/bomb.yaml"
expect 2 "without anchors" verify "$out/bomb.yaml"
head -c 40000000 /dev/zero | tr '\0' '#' >"$out/large.yaml"
expect 2 "larger than" verify "$out/large.yaml"
head -c 4096 /dev/urandom >"$out/noise.yaml"
expect 2 "not UTF-8" verify "$out/noise.yaml"

expect 2 "above 0" cover $bakery --time-limit 0
expect 2 "could not be read" cover $bakery --resume no/such.json

# the studio answers on this machine
expect 2 "There is no file" studio no/such/plant.yaml
expect 2 "a port is a number" studio $bakery --port 70000
expect 2 "not UTF-8" studio "$out/noise.yaml" --keep "$out/kept.db"
expect 2 "once people are set up" studio $bakery --listen 0.0.0.0 --keep "$out/kept.db"
expect 2 "12 to 200 letters" studio --person "A. Engineer" --role designer --keep "$out/kept.db" <<<short
expect 0 "may sign in as designer" studio --person "A. Engineer" --role designer --keep "$out/kept.db" <<<"long and dull words"
expect 0 "designer  A. Engineer" studio --people --keep "$out/kept.db"
expect 2 "a role is viewer" studio --person "A. Engineer" --role owner --keep "$out/kept.db"
expect 2 "can be read by others" studio --people --keep 'jdbc:postgresql://127.0.0.1/none?password=none'
expect 2 "127.0.0.1:1/none" studio --people --keep 'jdbc:postgresql://127.0.0.1:1/none?user=none'

# what must be said aloud
expect 0 "Nothing asked. Solved in" verify bench/networks/bridge.yaml
expect 0 "3 users at once are not asked" verify "$(spoilt '/^  design sets:/,/^$/d')"
echo "$passed passed, $failed failed"
[ "$failed" = 0 ]
