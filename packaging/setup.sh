# SPDX-License-Identifier: Apache-2.0
# Shared by the two commands; sourced, not run. POSIX sh.

root=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)

say() { printf '\n== %s\n' "$*"; }
stop() { printf 'Baywright: %s\n' "$*" >&2; exit 1; }

# install_packages LIST... : installs those of the listed packages that are missing.
install_packages() {
  command -v dpkg-query >/dev/null 2>&1 || stop "This script knows Debian 12. Elsewhere install what packaging/packages.build lists and build with CMake."
  missing=""
  for package in $(cat "$@" | grep -v '^#'); do
    state=$(dpkg-query -W -f '${Status}' "$package" 2>/dev/null || true)
    [ "$state" = "install ok installed" ] || missing="$missing $package"
  done
  [ -n "$missing" ] || return 0
  say "Installing:$missing"
  if [ "$(id -u)" = 0 ]; then as_root=""
  elif command -v sudo >/dev/null 2>&1; then as_root="sudo"
  else stop "These packages are missing and there is neither root nor sudo to install them:$missing"; fi
  $as_root apt-get update -q || stop "The package lists could not be read. Is the machine online?"
  # shellcheck disable=SC2086
  $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $missing ||
    stop "The packages could not be installed; the lines above say why."
}

# jobs: as many compilers as there are cores, but no more than memory allows (1.5 GB each).
jobs() {
  cores=$(nproc)
  room=$(awk '/MemAvailable/ { print int($2 / 1500000) }' /proc/meminfo)
  [ "$room" -ge 1 ] || room=1
  if [ "$room" -lt "$cores" ]; then echo "$room"; else echo "$cores"; fi
}

# build FLAVOUR FOLDER [cmake options...] : configures and builds, quiet unless it fails.
build() {
  flavour=$1; folder=$2; shift 2
  say "Building ($flavour)"
  mkdir -p "$folder"
  cmake -S "$root" -B "$folder" -G Ninja -C "$root/packaging/flavours/$flavour.cmake" "$@" >"$folder/configure.log" 2>&1 ||
    { cat "$folder/configure.log"; stop "The build could not be configured."; }
  cmake --build "$folder" -j "$(jobs)" >"$folder/build.log" 2>&1 ||
    { tail -n 80 "$folder/build.log"; stop "The build failed."; }
}
