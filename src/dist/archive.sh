#!/usr/bin/env bash
# The classes that are wanted first, ready to be mapped, in the place of the runtime's own archive, where
# they are valid wherever its folder lies:
#   archive.sh IMAGE CLASSES
# Interpreted and at fixed addresses. Even so the threads of Java race, and a dump comes out in one of a
# few ways, in about two of three cases in the same: so it is made until one way has come out three times.
set -euo pipefail
image=$(realpath "$1")
classes=$(realpath "$2")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
archive=$image/lib/server/classes.jsa
for ((dump = 1; dump <= 15; dump++)); do
  rm -f "$archive"
  setarch -R "$image/bin/java" -Xshare:dump -Xint -XX:+UseG1GC -Xmx512m \
    "-XX:SharedClassListFile=$classes" "-XX:SharedArchiveFile=$archive" -m wherefrom/wherefrom.Main
  sum=$(sha256sum < "$archive" | cut -d' ' -f1)
  echo "$sum" >> "$work/sums"
  [ "$(grep -c "$sum" "$work/sums")" -lt 3 ] || exit 0
done
echo "No class archive came out three times" >&2
exit 1
