#!/usr/bin/env bash
# The classes that are wanted first, ready to be mapped, in the place of the runtime's own archive, where
# they are valid wherever its folder lies:
#   archive.sh IMAGE CLASSES
# The bytes follow from the order in which classes came, and a little from how long the names of the
# person and the folders are: so it is done in a folder of a set length, under no name and environment.
# Interpreted, at fixed addresses and with room for all (no collection between), one race is left in
# JDK 17: the finalizer's thread and the main thread both want jdk.internal.misc.VM. Where the
# finalizer's comes first, names and methods lie now so, now so; where the main thread does, always
# alike. As a batch (chrt) a thread that is woken takes the processor from no other, so that the main
# thread nearly always does; a dump in which it did not is not let run to its end, and one that did
# has to come out twice, but for a few words that tell the time. Where it never does, the last one is taken, and that is said.
set -euo pipefail
image=$(realpath "$1")
classes=$(realpath "$2")
work=$(mktemp -d /tmp/wherefrom-XXXXXXXXXX)
dump=""
tidy() { kill -9 $dump 2>/dev/null || true; rm -rf "$work"; }
trap tidy EXIT
rm -f "$image/lib/server/classes.jsa"
cp -a "$image" "$work/image"
cp "$classes" "$work/classes"
cd "$work"
archive=$work/image/lib/server/classes.jsa

begin() {
  rm -f "$archive" "$work/order"
  env -i LC_ALL=C.UTF-8 setarch -R chrt -b 0 "$work/image/bin/java" -Xshare:dump -Xint -XX:+UseG1GC \
    -Duser.name=nobody -Duser.home=/ -Xmx512m -Xms512m -Xmn400m -XX:MetaspaceSize=512m \
    "-Xlog:class+load,class+init:file=$work/order:none:filecount=0" \
    "-XX:SharedClassListFile=$work/classes" "-XX:SharedArchiveFile=$archive" -m wherefrom/wherefrom.Main \
    > "$work/said" 2>&1 &
  dump=$!
}

# Which class came before the one that the race is about, as soon as that is known.
raced() {
  grep -B2 "Initializing 'jdk/internal/misc/VM'" "$work/order" 2>/dev/null | head -n 1 || true
}

# Whether the main thread came first in the dump that has begun.
in_order() {
  until [ -n "$(raced)" ]; do
    kill -0 "$dump" 2>/dev/null || return 1
    sleep 0.02
  done
  [[ "$(raced)" == *VersionProps* ]]
}

# The list is trained now and then; what it names is not always there still. That is no fault.
say_missing() {
  cat "$work/said"
  sed -n -e 's/.*Preload Warning: Cannot find //p' \
    -e 's/.* can be found for class \(.*\)\. The classlist .*/a lambda of \1/p' "$work/said" > "$work/missing"
  if [ -s "$work/missing" ]; then
    echo "$(wc -l < "$work/missing") classes of the archive's list are there no more: train it anew" >&2
    head -n 5 "$work/missing" >&2
  fi
}

# Whether it is the same as one before, but for a few words: the time at which an object was last used
# (SoftReference.timestamp, from the machine's start) and the sums over it, which nobody checks.
alike() {
  [ "$(stat -c %s "$1")" -eq "$(stat -c %s "$archive")" ] || return 1
  { cmp -l "$1" "$archive" || true; } | head -n 1000 | awk '{ print int(($1 - 1) / 4) }' | uniq > "$work/words"
  [ "$(wc -l < "$work/words")" -le 16 ]
}

clear_words() {
  chmod u+w "$archive"
  while read -r word; do
    dd if=/dev/zero of="$archive" bs=4 seek="$word" count=1 conv=notrunc status=none
  done < "$work/words"
}

for ((try = 1; try <= 200; try++)); do
  begin
  if ! in_order; then
    kill -9 "$dump" 2>/dev/null || true
    wait "$dump" 2>/dev/null || true
    continue
  fi
  wait "$dump" || { cat "$work/said" >&2; exit 1; }
  dump=""
  echo "try $try: $(sha256sum < "$archive")"
  for before in "$work"/kept-*; do
    if [ -e "$before" ] && alike "$before"; then
      clear_words
      echo "cleared: $(wc -l < "$work/words") words, then $(sha256sum < "$archive")"
      cp "$archive" "$image/lib/server/classes.jsa"
      say_missing
      exit 0
    fi
  done
  cp "$archive" "$work/kept-$try"
  cp "$archive" "$work/last"
  [ "$(find "$work" -name 'kept-*' | wc -l)" -lt 10 ] || break
done
[ -e "$work/last" ] || { echo "No dump began in the order that is waited for: is the machine very busy?" >&2; exit 1; }
# It serves as well; only that the package of another build may differ by it.
echo "No class archive came out twice: the bytes of this build are not those of another" >&2
say_missing
cp "$work/last" "$image/lib/server/classes.jsa"
