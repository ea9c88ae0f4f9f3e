#!/usr/bin/env bash
# The whole job from outside, with nothing but the finished program and a PDF rasteriser:
#   outside.sh WHEREFROM... -- RASTERISER...
# WHEREFROM is the command that runs the program; RASTERISER gets a PDF file, the dots per inch
# and a folder, and leaves a PNG file there for each page.
set -euo pipefail

wherefrom=()
while [ "$1" != "--" ]; do wherefrom+=("$1"); shift; done
shift
rasterise=("$@")
here=$(mktemp -d)
trap 'rm -rf "$here"' EXIT
job=$here/job
fail() { echo "FAILED: $*" >&2; exit 1; }

"${wherefrom[@]}" job new --folder "$job" --layout v8-odd-even --name "From outside"
"${wherefrom[@]}" places --job "$job" > "$here/places"
[ "$(wc -l < "$here/places")" = 74 ] || fail "not 74 places"
"${wherefrom[@]}" tags --job "$job" --stock a4-3x8-63.5x33.9 --out "$here/tags.pdf"

# Every tag that is printed is read again, from pictures of the sheets.
mkdir "$here/pictures"
"${rasterise[@]}" "$here/tags.pdf" 300 "$here/pictures"
"${wherefrom[@]}" read "$here/pictures" > "$here/read"
cut -f2 "$here/read" | sort > "$here/digits.read"
cut -f2 "$here/places" | sort > "$here/digits.issued"
diff "$here/digits.issued" "$here/digits.read" || fail "read is not what was issued"

# Out, in the order in which they were read.
cut -f2 "$here/read" | "${wherefrom[@]}" out --job "$job" - > "$here/out"
[ "$(cut -f2 "$here/out" | grep -c '^out$')" = 74 ] || fail "not 74 out"
[ "$("${wherefrom[@]}" to-fit --job "$job" | tail -n 1)" = "74 to fit" ] || fail "not 74 to fit"

# Back: all but the first pushrod.
pushrods=$(grep 'pushrod	' "$here/places")
first=$(head -n 1 <<< "$pushrods")
second=$(sed -n 2p <<< "$pushrods")
grep -vF "$first" "$here/places" | awk -F '\t' '{ print $2, $1 }' \
  | "${wherefrom[@]}" fit --job "$job" - > "$here/fits"
[ "$(grep -c '^right place$' "$here/fits")" = 73 ] || fail "not 73 right"

# The one that is left, at another's place.
status=0
"${wherefrom[@]}" took-out --job "$job" "$(cut -f2 <<< "$second")" > /dev/null
"${wherefrom[@]}" fit --job "$job" "$(cut -f2 <<< "$first")" "$(cut -f1 <<< "$second")" \
  > "$here/swapped" || status=$?
[ "$status" = 1 ] || fail "a swapped part ended with status $status"
[ "$(head -n 1 "$here/swapped")" = "wrong place" ] || fail "verdict $(head -n 1 "$here/swapped")"
"${wherefrom[@]}" fit --job "$job" "$(cut -f2 <<< "$second")" "$(cut -f1 <<< "$second")" > /dev/null

[ "$("${wherefrom[@]}" to-fit --job "$job" | tail -n 1)" = "1 to fit" ] || fail "not 1 to fit"
"${wherefrom[@]}" check --job "$job" > /dev/null || fail "the logbook is not sound"
echo "74 read, 74 out, 73 right, 1 stopped, 1 to fit"
