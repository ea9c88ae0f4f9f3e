#!/usr/bin/env bash
# Two builds of one commit give the same bytes:
#   twice.sh [COMMIT]
# Packs the commit (the last one if none is named) in two fresh clones, in folders of different names,
# and compares the jar, the Debian package and the ZIP files. Takes two whole builds without tests.
# KEEP=FOLDER keeps both clones in that folder; OPTIONS are further words for Maven.
set -euo pipefail
project=$(git -C "$(dirname "$0")" rev-parse --show-toplevel)
commit=$(git -C "$project" rev-parse "${1:-HEAD}")
work=${KEEP:-$(mktemp -d)}
mkdir -p "$work"
[ -n "${KEEP:-}" ] || trap 'rm -rf "$work"' EXIT

pack() {
  git clone -q --no-hardlinks "$project" "$1"
  git -C "$1" checkout -q "$commit"
  # Options are words.
  # shellcheck disable=SC2086
  (cd "$1" && mvn -B -q -ntp -Pdist -DskipTests ${OPTIONS:-} package > "$1.log" 2>&1) \
    || { tail -n 20 "$1.log"; exit 1; }
  (cd "$1/target" && sha256sum wherefrom.jar wherefrom_*.deb wherefrom-*.zip) > "$1.sums"
  (cd "$1/target/dist" && find wherefrom-linux -type f -print0 | sort -z | xargs -0 sha256sum) \
    > "$1.files"
}
pack "$work/one"
pack "$work/another-folder"
[ "$(wc -l < "$work/one.sums")" -eq 7 ] || { echo "not seven packages" >&2; exit 1; }
cat "$work/one.sums"
if ! cmp -s "$work/one.sums" "$work/another-folder.sums"; then
  echo "Not the same:" >&2
  diff "$work/one.sums" "$work/another-folder.sums" >&2 || true
  diff "$work/one.files" "$work/another-folder.files" >&2 || true
  exit 1
fi
echo "The same bytes twice: $commit"
