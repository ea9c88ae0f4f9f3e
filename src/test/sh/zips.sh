#!/usr/bin/env bash
# The ZIP files for other systems from outside: what is in each, whether its natives are of its system,
# whether each library that one of them links to is there or is named as the system's own.
#   zips.sh TARGET
# TARGET is the folder with the ZIP files. Wants unzip, file, readelf and llvm-objdump. The one for this
# system is started, too, with the Java that is installed.
set -euo pipefail
target=$(realpath "$1")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "FAILED: $*" >&2; exit 1; }

# What the system brings, as READ-ME-FIRST.txt asks for it; the rest must lie beside.
linux='^(lib(c|m|dl|rt|pthread|stdc\+\+|gcc_s|asound|pulse|xcb|xcb-shm)\.so\.[0-9]+|ld-linux.*)$'
linux_arm='^lib(drm|va|va-drm)\.so\.2$'
mac='^/(usr/lib|System/Library)/'
windows='^(KERNEL32|msvcrt|USER32|ADVAPI32|SHELL32|ole32|OLEAUT32|GDI32|WS2_32|PSAPI|SHLWAPI|AVICAP32|CRYPT32|bcrypt|Secur32|ncrypt|MFPlat|VCRUNTIME140|VCRUNTIME140_1|MSVCP140|api-ms-win-.*)\.dll$'

# The libraries that one links to, by their last names.
linked() {
  case "$1" in
    *.dll) llvm-objdump -p "$1" | sed -n 's/.*DLL Name: //p' ;;
    *.dylib) llvm-objdump --macho --dylibs-used "$1" | sed -n '2,$s/^[[:space:]]*\([^ ]*\).*/\1/p' ;;
    *) readelf -d "$1" | sed -n 's/.*(NEEDED).*\[\(.*\)\]/\1/p' ;;
  esac
}

look() {
  local system=$1 kind=$2 script=$3 of_the_system=$4
  local zip folder native library count=0
  zip=$(echo "$target"/wherefrom-*-"$system".zip)
  unzip -q "$zip" -d "$work/$system" || fail "$zip does not open"
  folder=$(echo "$work/$system"/wherefrom-*)
  for each in READ-ME-FIRST.txt LICENSE licenses/THIRD-PARTY.txt licenses/SBOM.json \
    licenses/FFMPEG.txt licenses/LGPL-3.txt licenses/GPL-2-CE.txt "$script"; do
    [ -s "$folder/$each" ] || fail "$system lacks $each"
  done
  [ -x "$folder/$script" ] || fail "$script of $system cannot be started"
  # JavaFX brings its natives within its jars.
  for jar in "$folder"/fx/*.jar; do
    unzip -q -o "$jar" '*.so' '*.dll' '*.dylib' -d "$work/$system-fx" 2>/dev/null || true
  done
  while read -r native; do
    count=$((count + 1))
    file -b "$native" | grep -Eq "$kind" || fail "$native is no $kind: $(file -b "$native")"
    case "$native" in *-fx/*) continue ;; esac
    while read -r library; do
      [ -e "$folder/natives/$(basename "$library")" ] && continue
      find "$folder/natives" -name "$(basename "$library")" | grep -q . && continue
      echo "$library" | grep -Eiq "$of_the_system" || fail "$native links to $library"
    done < <(linked "$native")
  done < <(find "$folder/natives" "$work/$system-fx" -type f \( -name '*.so*' -o -name '*.dll' -o -name '*.dylib' \))
  [ "$count" -ge 20 ] || fail "$system has only $count natives"
  echo "$system: $count natives, $(stat -c %s "$zip") bytes"
}

look linux-x86_64 'ELF 64-bit LSB .*x86-64' wherefrom "$linux"
look linux-arm64 'ELF 64-bit LSB .*ARM aarch64' wherefrom "$linux|$linux_arm"
look windows-x86_64 'PE32\+ executable \(DLL\).*x86-64' wherefrom.bat "$windows"
look macosx-x86_64 'Mach-O 64-bit x86_64' wherefrom "$mac"
look macosx-arm64 'Mach-O 64-bit arm64' wherefrom "$mac"
file "$work"/windows-x86_64/*/wherefrom.bat | grep -q CRLF || fail "wherefrom.bat has no line ends of Windows"

# The start scripts: this system's starts; without Java it says what is missing.
start=$(echo "$work"/linux-x86_64/*/wherefrom)
cmp "$start" "$(echo "$work"/macosx-arm64/*/wherefrom)"
said=$(HOME=$work JDK_JAVA_OPTIONS="-Duser.home=$work" "$start" --version 2>/dev/null)
[[ "$said" == "Wherefrom "* ]] || fail "it says \"$said\""
if JAVA_HOME=$work/none "$start" --version > "$work/said" 2>&1; then fail "it starts without Java"; fi
grep -q "needs Java 17" "$work/said" || fail "without Java it says $(cat "$work/said")"
echo "started: $said"
