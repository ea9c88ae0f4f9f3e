#!/usr/bin/env bash
# Between the two days, from outside, on the demo engine, with nothing but the finished program:
#   between.sh WHEREFROM...
# WHEREFROM is the command that runs the program. Where pdftotext is installed, what was written as
# PDF is read again.
set -euo pipefail

wherefrom=("$@")
here=$(mktemp -d)
trap 'rm -rf "$here"' EXIT
demo=$here/demo
small=$here/small
calls=0

fail() { echo "FAILED: $*" >&2; cat "$here/said" >&2; exit 1; }

# run STATUS COMMAND...: what it says, on both streams, goes to $here/said.
run() {
  local wanted=$1 status=0
  shift
  "${wherefrom[@]}" "$@" > "$here/said" 2>&1 || status=$?
  calls=$((calls + 1))
  [ "$status" = "$wanted" ] || fail "status $status, not $wanted: $*"
}

says() { grep -qF -- "$1" "$here/said" || fail "not said: $1"; }
silent() { ! grep -qF -- "$1" "$here/said" || fail "said: $1"; }
lines() { [ "$(grep -cF -- "$2" "$here/said")" = "$1" ] || fail "not $1 lines with: $2"; }
first() { [ "$(head -n 1 "$here/said")" = "$1" ] || fail "the first line is not: $1"; }

# Tabs stand between cells.
t=$'\t'
tag() { grep -F "$t$1$t" "$here/places" | cut -f2; }
card() { grep -F "$t$1$t" "$here/places" | cut -f1; }

run 0 demo --folder "$demo"
run 0 check --job "$demo"

# ---- the stop that waits in the demo is taken back
run 0 resume --job "$demo"
says "A stop is waiting"
run 0 undo --job "$demo"
says "Undone: "
run 0 places --job "$demo"
cp "$here/said" "$here/places"
[ "$(wc -l < "$here/places")" = 103 ] || fail "not 103 places"

# ---- inspect
run 0 inspect --job "$demo"
says "cylinder 7, intake, rocker${t}rocker-faces rocker-cracks"
rocker=$(tag "cylinder 7, intake, rocker")
run 0 inspect --job "$demo" "$rocker"
says "rocker-faces${t}not-looked${t}Cup, tip and ball seat"
run 0 inspect --job "$demo" "$rocker" --check rocker-faces --answer pass
says "rocker-faces: pass"
run 0 inspect --job "$demo" "$rocker" --check rocker-cracks --answer suspect --note "a line"
run 0 decide propose --job "$demo" "$rocker"
says "no proposal"
says "Rocker: Any crack? suspect."
run 2 inspect --job "$demo" "$rocker" --check lobe-look --answer pass
says "Use one of: rocker-faces, rocker-cracks."
run 0 inspect --job "$demo" lobe@2IN --check lobe-look --answer fail --note "pitted"
says "rule 5: "

# ---- measure: a journal two by two, a bore, a spring, a lifter; limits with their source
run 0 tool add --job "$demo" --name "other micrometer" --step 0.0001in --error 0.0001in \
  --repeat 0.0001in
run 0 tool zero --job "$demo" --name "other micrometer" --shows 0.0003in
says "more than its card allows"
run 0 tool zero --job "$demo" --name "other micrometer" --shows 0in
run 0 measure --job "$demo" main-journal@M2 --plan main-journal --tool "other micrometer" \
  2.6092in/2.6093in 2.6086in 2.6091in 2.6087in
says "out-of-round${t}0.000"
says "taper${t}"
says "accept"
says "oil-clearance${t}main 2${t}Oil clearance"
run 0 measure --job "$demo" bore@B2 --plan bore --tool "bore gauge" \
  3.8750in 3.8730in 3.8702in 3.8740in 3.8720in 3.8700in
says "taper${t}0.00"
says "at most 0.0050 in (invented for the demo"
run 1 measure --job "$demo" "$(tag 'cylinder 1, intake, lifter')" --plan lifter-crown \
  --tool dial 0.0381in
says "was it 0.0381 mm by any chance?"
says "Nothing is kept."
run 0 measure --job "$demo" "$(tag 'cylinder 1, intake, lifter')" --plan lifter-crown \
  --tool dial 0.0381mm
says "accept"
spring=$(tag "cylinder 5, exhaust, valve spring")
run 2 limit set --job "$demo" --plan spring-square --result value --upper 0.060in --source " "
says "Say where the limit is printed"
run 0 measure --job "$demo" "$spring" --plan spring-square --tool caliper 0.0610in
says "no limit"
run 0 limit set --job "$demo" --plan spring-square --result value --upper 0.060in \
  --source "typed for this script"
run 0 measure --job "$demo" "$spring"
says "undecided${t}at most 0.060 in (typed for this script)"
run 0 measure --job "$demo" --undecided
says "cylinder 5, exhaust, valve spring, Spring out of square"
says "cylinder 5, intake, pushrod, Pushrod runout"

# ---- compare: the worn lobe, the short spring, the stud that stands proud
run 1 compare --job "$demo" --plan lobe-lift
lines 1 odd
says "6EX${t}0.2410"
run 1 compare --job "$demo" --plan spring-free
says "4 EX${t}1.9760"
run 1 compare --job "$demo" --plan stud-height --bank left
lines 1 suspect
says "3 IN${t}+0.0110 in${t}suspect"
run 0 compare --job "$demo" --plan pushrod-length

# ---- decide: asked for every part, who is not decided about is not cleared
fits() { run "$1" fit --job "$demo" "$(tag "$2")" "$(card "$2")"; first "$3"; }
run 0 decide ask --job "$demo" every
fits 1 "cylinder 1, intake, rocker" "not cleared"
run 0 undo --job "$demo"
run 0 decide --job "$demo" --as reuse --reason "every test passed" \
  "$(tag 'cylinder 1, intake, rocker')"
fits 0 "cylinder 1, intake, rocker" "right place"
run 0 decide ask --job "$demo" suspect
fits 1 "cylinder 3, exhaust, lifter" "must be new"
run 0 undo --job "$demo"
run 1 decide --job "$demo" --as reuse --reason "looks good" "$(tag 'cylinder 3, exhaust, lifter')"
first "not decided"
run 0 decide buy --job "$demo"
says "16${t}lifters"
run 0 decide set --job "$demo" --as replace --reason "as a set" pushrod
lines 16 replace
run 0 undo --job "$demo"
says "16 pushrods: replace"

# ---- washing, into a basket and back, by count and by scan
run 0 wash --job "$demo" --basket 4 "$(tag 'cylinder 5, intake, rocker')" \
  "$(tag 'cylinder 5, exhaust, rocker')" "$(tag 'cylinder 6, intake, rocker')"
run 0 wash list --job "$demo"
lines 3 "basket 4"
run 0 back --job "$demo" "$(tag 'cylinder 6, intake, rocker')"
run 1 wash count --job "$demo" --basket 4 --pieces 3
run 1 wash count --job "$demo" --basket 4 --pieces 2
says "Did the tags stay on"
run 0 wash count --job "$demo" --basket 4 --pieces 2 --tags on
run 0 wash list --job "$demo"
silent "basket 4"

# ---- the machine shop: slip, by scan, by count, by value
run 0 shop new --job "$demo"
first 2
run 0 shop send --job "$demo" --visit 2 --wanted "reface the tips" \
  "$(tag 'cylinder 5, intake, rocker')" "$(tag 'cylinder 5, exhaust, rocker')"
run 0 shop add --job "$demo" --visit 2 --what block --count 1 --wanted "bore all eight" \
  --size 3.8900in --within 0.0005in
run 0 shop add --job "$demo" --visit 2 --what "head dowels" --count 4 --wanted "stay with it" \
  --do-not-lose
run 0 shop slip --job "$demo" --visit 2 --out "$here/slip.pdf"
says "7 pieces"
fits 1 "cylinder 5, intake, rocker" "not cleared"
run 0 undo --job "$demo"
run 0 shop back --job "$demo" --done "refaced" "$(tag 'cylinder 5, intake, rocker')"
run 0 shop count --job "$demo" --visit 2 --line 2 --pieces 3
says "3 back"
run 1 shop count --job "$demo" --visit 2 --line 1 --pieces 1 --size 3.8931in
says "NOT within"
run 0 shop list --job "$demo" --away
says "visit 2${t}2${t}head dowels"
says "1 of 4 away"
silent "cylinder 5, intake, rocker"
says "cylinder 5, exhaust, rocker"

# ---- tags lost: told by their lengths, agreed on one by one
lost=()
for place in "2, exhaust" "7, intake" "1, exhaust" "4, intake"; do
  lost+=("$(tag "cylinder $place, pushrod")")
done
run 0 wash --job "$demo" --basket 9 "${lost[@]}"
lengths=(A=7.9251in B=7.9149in C=7.9231in D=7.9219in)
run 0 retag propose --job "$demo" --kind pushrod --with pushrod-length=caliper "${lengths[@]}"
lines 4 "can't tell"
retag() {
  run "$1" retag accept --job "$demo" --kind pushrod --with "pushrod-length=$2" --mark "$3" \
    "${lengths[@]}"
}
retag 2 caliper A
says "say with --as which it is"
retag 0 "micrometer 7-8 in" A
says "cylinder 2, exhaust, pushrod"
again=$(cut -f2 "$here/said")
[ "$again" != "${lost[0]}" ] || fail "the tag has no new issue"
run 1 fit --job "$demo" "${lost[0]}" "$(card 'cylinder 2, exhaust, pushrod')"
first "retired"
run 0 undo --job "$demo"

# ---- money: a plan that passes the budget, out as a table and in again
run 0 money list --job "$demo"
says "left."
run 0 money note --job "$demo" --what "block bored" --state quoted --amount 240
says "is over the budget by"
run 0 money effect --job "$demo" --change new-flat-cam
run 0 money move --job "$demo" --line 6 --state paid
run 0 money export --job "$demo" --out "$here/money.csv"
grep -q '^oil pump,.*,paid,' "$here/money.csv" || fail "the table has no paid oil pump"
printf 'what,about,state,amount,note,currency\nspark plugs,,paid,32.80,,EUR\n' > "$here/more.csv"
run 0 money import --job "$demo" "$here/more.csv"
says "Lines added: 1."
printf 'what,about,state,amount,note,currency\nhoses,,paid,many,,EUR\n' > "$here/wrong.csv"
run 2 money import --job "$demo" "$here/wrong.csv"
says "many"
run 0 money list --job "$demo"
says "spark plugs"
silent "hoses"

# ---- a check that is answered
run 0 plan checks --job "$demo"
says "rule-25:rocker-and-stud@3EX${t}open"
run 0 plan answer --job "$demo" --answer pass "rule-25:rocker-and-stud@3EX"
run 0 plan checks --job "$demo"
silent "rule-25:rocker-and-stud@3EX"

# ---- the build record
run 0 record --job "$demo" --out "$here/record.pdf" --csv "$here/record.csv"
says "OVER"
for words in "hollow: a coin shows light" "invented for the demo" "NOT BACK" "pitted"; do
  grep -qiF "$words" "$here/record.csv" || fail "the record's table has no: $words"
done
if command -v pdftotext > /dev/null; then
  pdftotext -layout "$here/slip.pdf" "$here/said"
  says "MACHINE SHOP, VISIT 2"
  says "Demo: V8 of the launch"
  says "bore all eight"
  says "3.8900 in"
  says "DO NOT LOSE"
  says "head dowels"
  pdftotext -layout "$here/record.pdf" "$here/said"
  says "BUILD RECORD"
  says "Demo: V8 of the launch"
  says "NOT CHECKED"
  says "outranks this tool"
fi
run 0 check --job "$demo"

# ---- a new job carried to its end: a used flat lifter on another cam must be new
run 0 job new --folder "$small" --layout inline-4 --name "Small four"
run 0 places --job "$small"
cp "$here/said" "$here/places"
pairs() { awk -F '\t' '{ print $2, $1 }' "$here/places"; }
# fed STATUS COMMAND...: codes come on standard input.
fed() { run "$@" < "$here/fed"; }
cut -f2 "$here/places" > "$here/fed"
fed 0 out --job "$small" -
run 0 plan change --job "$small" new-flat-cam
says "rule 1"
says "8 lifters"
fit() { run "$1" fit --job "$small" "$(tag "$2")" "$(card "$2")"; first "$3"; }
fit 0 "cylinder 2, intake, lifter" "right place"
run 0 took-out --job "$small" "$(tag 'cylinder 2, intake, lifter')"
run 0 plan made --job "$small" 1
fit 1 "cylinder 2, intake, lifter" "must be new"
says "worn in to its own lobe"
run 0 undo --job "$small"
grep -F ', lifter' "$here/places" | cut -f2 > "$here/fed"
fed 0 replace --job "$small" --reason "must be new" -
run 0 plan checks --job "$small"
cut -f1 "$here/said" > "$here/checks"
run 0 places --job "$small"
cp "$here/said" "$here/places"
pairs > "$here/fed"
fed 1 fit --job "$small" -
[ "$(grep -cx "not cleared" "$here/said")" = 8 ] || fail "not 8 pushrods held"
says "a check is open (rule 1): look at the lower end of each old pushrod"
lines 34 "this is where it belongs"
run 1 finish --job "$small" valvetrain
says "To fit: cylinder 1, intake, pushrod"
grep -oE '^(rule-1:pushrod-ends|rule-11:[^'"$t"']*)' "$here/checks" > "$here/open"
while read -r check; do run 0 plan answer --job "$small" --answer pass "$check"; done < "$here/open"
grep -F ', pushrod' "$here/places" | awk -F '\t' '{ print $2, $1 }' > "$here/fed"
fed 0 fit --job "$small" -
lines 8 "this is where it belongs"

# ---- debris, and whether it reached the mains
run 0 debris map --job "$small"
run 0 debris found --job "$small" filter-pleats copper --note "a pinch"
says "suspect"
run 1 debris map --job "$small"
says "Did it reach the mains? not answered"
says "still to look at"
run 0 debris opened --job "$small" all-bearings --answer pass --note "even gray"
says "Did it reach the mains? no"
run 0 debris map --job "$small"

# What the debris asks of bearings that are in keeps their sections open until it is answered.
run 1 finish --job "$small" mains
says "Fitted, but"
run 0 plan checks --job "$small"
grep -oE "^rule-22:[^$t]*" "$here/said" > "$here/open"
while read -r check; do run 0 plan answer --job "$small" --answer pass "$check"; done < "$here/open"

# ---- to the first start
for section in mains rods; do
  run 0 finish --job "$small" "$section"
  silent "first start"
done
run 0 finish --job "$small" valvetrain
says "Before the first start:"
says "Caution${t}Have a fire extinguisher in reach."
says "Open check${t}"
says "Prime the oil${t}"
run 0 to-fit --job "$small"
first "0 to fit"
echo "$calls calls: the demo is carried from the first look to its record, a four to its first start"
