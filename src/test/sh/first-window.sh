#!/usr/bin/env bash
# The first window of the package against an empty window of JavaFX packaged alike: jlink of the same
# modules of JavaFX, the same options, an archive made in the same way.
#   first-window.sh DIST [PAIRS [JOB.wherefrom.zip]]
# DIST is target/dist after "mvn -Pdist package". Prints for each pair the processor time of the whole
# process, then the time that passed, up to the second pulse with the window on the glass; at the end
# least and median of both and their ratios. The two take turns, so that other load falls on both.
# With JOB that job lies on the shelf. PULSES=30 measures half a second on, when what waited for the
# first picture is done too. Wants Xvfb and xdotool; WITH="-Xlog..." adds options to both.
set -euo pipefail
dist=$(realpath "$1")
pairs=${2:-15}
job=${3:+$(realpath "$3")}
sources=$(realpath "$(dirname "$0")/../java/wherefrom/ui/bench")
work=$(mktemp -d)
trap 'kill "$display" 2>/dev/null || true; rm -rf "$work"' EXIT
whole=$dist/wherefrom-linux
java=$(dirname "$(readlink -f "$(command -v javac)")")
options="-XX:TieredStopAtLevel=1 -XX:CompileThresholdScaling=3 -XX:+UnlockDiagnosticVMOptions -XX:ArchiveRelocationMode=0 -Dorg.bytedeco.javacpp.pathsFirst=true -Dorg.bytedeco.javacpp.cacheLibraries=false"
TIMEFORMAT='%3U %3S %3R'

number=$((90 + RANDOM % 400))
Xvfb ":$number" -screen 0 1280x800x24 -nolisten tcp 2>/dev/null &
display=$!
export DISPLAY=":$number" XDG_CONFIG_HOME=$work/config XDG_DATA_HOME=$work/data XDG_CACHE_HOME=$work/cache

# Both are watched by the same probe, on the class path.
"$java/javac" -d "$work/probe" --module-path "$dist/fx" --add-modules javafx.graphics \
  "$sources/StartProbe.java"
# The empty window as a module with a runtime of its own.
mkdir "$work/empty"
sed 's/^package .*/package empty;/' "$sources/EmptyWindow.java" > "$work/empty/EmptyWindow.java"
echo "module empty { requires javafx.graphics; exports empty; }" > "$work/empty/module-info.java"
"$java/javac" -d "$work/module" --module-path "$dist/fx" "$work/empty/"*.java
"$java/jmod" create --class-path "$work/module" "$work/empty.jmod"
"$java/jlink" --module-path "$dist/jmods:$work/empty.jmod" --add-modules empty,java.logging,java.management \
  --no-header-files --no-man-pages "--add-options=$options" --output "$work/image"

# Up to its first window, in this image: user, system and passed seconds.
up() {
  local image=$1 module=$2 main=$3
  # Options are words.
  # shellcheck disable=SC2086
  { time "$image/bin/java" ${WITH:-} "-Dpulses=${PULSES:-2}" "-Duser.home=$work" -cp "$work/probe" --add-modules "$module" \
    wherefrom.ui.bench.StartProbe "$main" > "$work/said" 2>&1; } 2>&1
  grep -q '^up ' "$work/said" || { cat "$work/said" >&2; exit 1; }
}
empty() { up "$work/image" empty empty.EmptyWindow; }
whole() { up "$whole" wherefrom wherefrom.Main; }

# Its archive, trained as the package's is: started by itself, without the probe, and shown for a while.
"$work/image/bin/java" "-Duser.home=$work" "-XX:DumpLoadedClassList=$work/wanted.lst" -m empty/empty.EmptyWindow &
trained=$!
timeout 60 xdotool search --sync --onlyvisible --name '^Wherefrom$' > /dev/null
sleep 3
kill "$trained"
wait "$trained" || true
setarch -R "$work/image/bin/java" -Xshare:dump -Xint -XX:+UseG1GC -Xmx512m \
  "-XX:SharedClassListFile=$work/wanted.lst" "-XX:SharedArchiveFile=$work/image/lib/server/classes.jsa" \
  -m empty/empty.EmptyWindow > /dev/null 2>&1
if [ -n "$job" ]; then
  "$whole/bin/java" "-Duser.home=$work" -m wherefrom/wherefrom.Main \
    import --folder "$work/data/wherefrom/jobs" "$job" > /dev/null
fi

# One of each that does not count.
empty > /dev/null
whole > /dev/null
for ((pair = 1; pair <= pairs; pair++)); do
  echo "$(empty) $(whole)"
done | awk '{ printf "%.3f %.3f  %.3f %.3f\n", $1 + $2, $4 + $5, $3, $6 }' | tee "$work/times"
column() { cut -d' ' -f"$1" <(tr -s ' ' < "$work/times") | sort -n; }
least() { column "$1" | head -n 1; }
middle() { column "$1" | awk '{ a[NR] = $1 } END { print a[int((NR + 1) / 2)] }'; }
say() {
  awk -v w="$1" -v n="$2" -v e="$3" -v o="$4" \
    'BEGIN { printf "%s, %s: empty %.3f s, whole %.3f s, ratio %.2f\n", w, n, e, o, o / e }'
}
say "processor time" least "$(least 1)" "$(least 2)"
say "processor time" median "$(middle 1)" "$(middle 2)"
say "time passed" least "$(least 3)" "$(least 4)"
say "time passed" median "$(middle 3)" "$(middle 4)"
