#!/usr/bin/env bash
# Which classes are wanted first, for the archive of the package:
#   train.sh IMAGE > src/dist/linux/classes.lst
# IMAGE is the folder with the runtime that the profile "dist" made. Run it under a display
# (xvfb-run), with xdotool, when much has moved; the package's test says when it is time.
set -euo pipefail
java=$(realpath "$1")/bin/java
here=$(mktemp -d)
trap 'rm -rf "$here"' EXIT
cd "$here"
run() {
  local list=$1
  shift
  exec "$java" "-Duser.home=$here" "-XX:DumpLoadedClassList=$here/$list.lst" \
    -m wherefrom/wherefrom.Main "$@" 1>&2
}
(run new job new --folder new --layout v8-odd-even --name New)
(run places places --job new)
(run tags tags --job new --stock a4-3x8-63.5x33.9 --out tags.pdf)
(run demo demo --folder demo)
(run export export --job demo --out demo.wherefrom.zip)
run window demo.wherefrom.zip &
window=$!
xdotool search --sync --onlyvisible --name '^Wherefrom' > /dev/null
sleep 8
xdotool windowclose "$(xdotool search --onlyvisible --name '^Wherefrom' | tail -n 1)" || true
sleep 3
kill "$window" 2> /dev/null || true
wait || true
# Without the order in which they came, and without classes that are made anew in each run.
cat ./*.lst | grep -v '^#' | grep -v 'roxy[0-9/]*\$Proxy' | LC_ALL=C sort -u
