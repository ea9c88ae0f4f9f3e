#!/usr/bin/env bash
# The Debian package from outside: installed, started, looked at, used, removed, nothing left.
#   deb.sh PACKAGE.deb PICTURES [ROOT]
# As root. PICTURES is a folder for the photographs of the window. ROOT is the folder of a bare
# Debian to do it in, in place of this system. The display is this system's: xvfb, xdotool and
# imagemagick must be here.
set -euo pipefail
deb=$(realpath "$1")
mkdir -p "$2"
pictures=$(realpath "$2")
root=${3:-}
fail() { echo "FAILED: $*" >&2; exit 1; }
inside() { if [ -n "$root" ]; then chroot "$root" "$@"; else "$@"; fi; }
# In the place of a subshell, so that it ends with the process that is killed.
stay() { if [ -n "$root" ]; then exec chroot "$root" "$@"; else exec "$@"; fi; }
export DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8
version=$(dpkg-deb -f "$deb" Version)

# A home that nobody has used, and one display for all.
work=$(mktemp -d "${root}/tmp/wherefrom-deb.XXXXXX")
home=${work#"$root"}
export HOME=$home JDK_JAVA_OPTIONS="-Duser.home=$home"
unset XDG_CONFIG_HOME XDG_DATA_HOME XDG_CACHE_HOME
number=$((90 + RANDOM % 400))
Xvfb ":$number" -screen 0 1280x800x24 -nolisten tcp 2>/dev/null &
display=$!
export DISPLAY=":$number"
window=""
tidy() { kill $window $display 2>/dev/null || true; rm -rf "$work"; }
trap tidy EXIT

# Installed, with nothing but what the package itself asks for.
cp "$deb" "$work/wherefrom.deb"
inside apt-get install -y -qq --no-install-recommends "$home/wherefrom.deb" > "$work/apt" 2>&1 \
  || { tail -n 20 "$work/apt"; fail "it does not install"; }
inside dpkg -L wherefrom > "$work/files"
lacking=$(inside sh -c 'cd /usr/lib/wherefrom/lib
  for each in *.so* server/*.so; do LD_LIBRARY_PATH=.:server ldd "$each"; done' \
  | grep 'not found' | sort -u) || true
[ -z "$lacking" ] || fail "libraries that Depends forgets: $lacking"

# One command, and a job in a file.
said=$(inside wherefrom --version 2>/dev/null)
[ "$said" = "Wherefrom $version" ] || fail "it says \"$said\""
inside wherefrom demo --folder "$home/demo" > /dev/null 2>&1 || fail "no demo"
job=$home/demo.wherefrom.zip
inside wherefrom export --job "$home/demo" --out "$job" > /dev/null 2>&1 || fail "no export"
inside wherefrom stocks > "$work/stocks" 2>/dev/null || fail "no label stock"
[ -s "$work/stocks" ] || fail "no label stock"

# The system knows the file of a job, and who opens it.
grep -q ':application/x-wherefrom-job:\*.wherefrom.zip' "$root/usr/share/mime/globs2" \
  || fail "the file type is not registered"
grep -q '^application/x-wherefrom-job=wherefrom.desktop' "$root/usr/share/applications/mimeinfo.cache" \
  || fail "nothing opens the file type"

# The window opens, is photographed, and shows more than one colour.
photograph() {
  local name=$1
  shift
  stay wherefrom "$@" > "$work/$name.said" 2>&1 &
  window=$!
  timeout 60 xdotool search --sync --onlyvisible --name "^Wherefrom $version\$" > /dev/null \
    || { cat "$work/$name.said"; fail "no window"; }
  sleep 6
  import -window root "$pictures/$name.png"
  [ "$(identify -format %k "$pictures/$name.png")" -gt 50 ] || fail "$name.png is empty"
  kill $window
  wait $window 2>/dev/null || true
  window=""
}
JDK_JAVA_OPTIONS="$JDK_JAVA_OPTIONS -Xlog:class+load:file=$home/classes" photograph first-window
photograph demo "$job"

# The file once more, while the window stands open: no second window, and the sentence is whole.
stay wherefrom > "$work/open.said" 2>&1 &
window=$!
timeout 60 xdotool search --sync --onlyvisible --name "^Wherefrom $version\$" > /dev/null || fail "no window"
sleep 3
inside timeout 20 wherefrom "$job" > "$work/again.said" 2>&1 || fail "the open window took no file"
sleep 6
[ "$(xdotool search --onlyvisible --name "^Wherefrom $version\$" | wc -l)" -eq 1 ] \
  || fail "a second window"
import -window root "$pictures/again.png"
kill $window
wait $window 2>/dev/null || true
window=""
# Most of the program's classes come out of the archive that was made with the package.
all=$(grep -c ' wherefrom\.' "$work/classes")
shared=$(grep ' wherefrom\.' "$work/classes" | grep -c 'shared objects file')
[ $((shared * 10)) -ge $((all * 8)) ] || fail "only $shared of $all classes come from the archive"

# Its folders are where they should be, and nothing else is left in the home.
[ -d "$work/.local/share/wherefrom/jobs" ] || fail "no jobs where the system wants them"
for each in .javacpp .openjfx .wherefrom .pdfbox.cache Wherefrom; do
  [ ! -e "$work/$each" ] || fail "$each lies in the home"
done

# Removed, and nothing of it is left.
inside apt-get purge -y -qq wherefrom > "$work/apt" 2>&1 || { cat "$work/apt"; fail "not removed"; }
while read -r file; do
  case "$file" in *wherefrom*) [ ! -e "$root$file" ] || fail "left: $file" ;; esac
done < "$work/files"
! grep -rq wherefrom "$root/usr/share/mime/globs2" "$root/usr/share/applications" \
  || fail "the file type is still there"
echo "installed, started, looked at, removed: $shared of $all classes from the archive"
