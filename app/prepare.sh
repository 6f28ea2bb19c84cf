# SPDX-License-Identifier: GPL-3.0-or-later
# Sourced by app/start and tests/run: what to install, and how to configure and build. POSIX sh.
#
#   hm_install run build ...   installs the packages of those lists that are missing
#   hm_build FOLDER [OPTION…]  configures FOLDER if needed, and brings it up to date; without an option FOLDER keeps
#                              those it has
#   hm_build_environment FOLDER  lets the programs in FOLDER find their data without being installed
#
# Before sourcing, set hm_root to the folder of the project. All messages go to stderr.

hm_packages_run='libgtk-4-1 libsqlite3-0 libjson-glib-1.0-0 librsvg2-common adwaita-icon-theme fonts-dejavu-core'
hm_packages_build='gcc libc6-dev pkgconf meson ninja-build gettext libgtk-4-dev libsqlite3-dev libjson-glib-dev
  libxml2-utils'
hm_packages_test='libcmocka-dev libatspi2.0-dev libxtst-dev at-spi2-core dbus-daemon xvfb desktop-file-utils appstream
  poppler-utils shared-mime-info units openscad-mcad'
hm_packages_sanitize='libasan8 libubsan1'
hm_packages_valgrind='valgrind libc6-dbg'
hm_packages_fuzz='clang libclang-rt-14-dev'

hm_fresh=no   # yes once something was installed: a configured folder then has to look again

hm_say () { printf 'halfmoon: %s\n' "$*" >&2; }

# Names of the same things where there is no apt-get; used only to tell a person what to look for.
hm_tell_other_systems () {
  hm_say 'this system has no apt-get, so nothing was installed. If the next step stops, install by hand:'
  cat >&2 <<'END'
  Fedora:   gcc pkgconf meson ninja-build gettext gtk4-devel sqlite-devel json-glib-devel libxml2 librsvg2
  Arch:     base-devel meson gettext gtk4 sqlite json-glib libxml2 librsvg
  Homebrew: pkgconf meson gettext gtk4 sqlite json-glib libxml2 adwaita-icon-theme
  tests:    libcmocka-devel at-spi2-core-devel libXtst-devel dbus-daemon xorg-x11-server-Xvfb (Fedora names)
END
}

# The packages of the lists named that are not installed, on one line.
hm_missing_packages () {
  hm_wanted=
  for hm_list in "$@"; do
    case $hm_list in
      run) hm_wanted="$hm_wanted $hm_packages_run" ;;
      build) hm_wanted="$hm_wanted $hm_packages_build" ;;
      test) hm_wanted="$hm_wanted $hm_packages_test" ;;
      sanitize) hm_wanted="$hm_wanted $hm_packages_sanitize" ;;
      valgrind) hm_wanted="$hm_wanted $hm_packages_valgrind" ;;
      fuzz) hm_wanted="$hm_wanted $hm_packages_fuzz" ;;
      *) hm_say "no package list is called “$hm_list”"; exit 2 ;;
    esac
  done
  # shellcheck disable=SC2086,SC2016
  hm_installed=" $(dpkg-query -W -f='${db:Status-Status}/${Package}\n' $hm_wanted 2>/dev/null |
                   sed -n 's,^installed/,,p' | tr '\n' ' ')"
  for hm_package in $hm_wanted; do
    case $hm_installed in *" $hm_package "*) ;; *) printf '%s ' "$hm_package" ;; esac
  done
}

hm_install () {
  if ! command -v apt-get >/dev/null 2>&1; then
    command -v meson >/dev/null 2>&1 && command -v pkg-config >/dev/null 2>&1 &&
      pkg-config --exists 'gtk4 >= 4.8' sqlite3 json-glib-1.0 || hm_tell_other_systems
    return 0
  fi
  hm_missing=$(hm_missing_packages "$@")
  [ -n "$hm_missing" ] || return 0
  hm_sudo=
  if [ "$(id -u)" != 0 ]; then
    if ! command -v sudo >/dev/null 2>&1; then
      hm_say "some packages are missing, and installing needs root. Run as root: apt-get install $hm_missing"
      exit 1
    fi
    hm_sudo=sudo
  fi
  hm_say "installing $hm_missing"
  hm_fresh=yes
  hm_apt_install >/dev/null 2>&1 && return 0
  # The list of packages may be old or absent: fetch it once and try again, this time showing what goes wrong.
  $hm_sudo apt-get update -q >&2 || :
  hm_apt_install >&2 || { hm_say "could not install $hm_missing"; exit 1; }
}

hm_apt_install () {
  # shellcheck disable=SC2086
  $hm_sudo env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends $hm_missing </dev/null
}

# Runs a command quietly; shows what it said only if it fails.
hm_quietly () {
  "$@" >"$hm_build_dir/last-step.log" 2>&1 </dev/null && return 0
  cat "$hm_build_dir/last-step.log" >&2
  hm_say "“$*” failed; what it said stands above and in $hm_build_dir/last-step.log"
  return 1
}

# The options a folder was configured with are remembered, so that only a change of options configures it again.
hm_configure () {
  hm_options=$*
  [ $# -gt 0 ] || hm_options=$(cat "$hm_build_dir/options" 2>/dev/null || :)
  if [ ! -e "$hm_build_dir/build.ninja" ]; then
    hm_quietly meson setup "$@" "$hm_build_dir" "$hm_root"
  elif [ $hm_fresh = no ] && [ "$hm_options" = "$(cat "$hm_build_dir/options" 2>/dev/null)" ]; then
    return 0
  else
    hm_quietly meson setup --reconfigure "$@" "$hm_build_dir" "$hm_root"
  fi && printf '%s\n' "$hm_options" >"$hm_build_dir/options" && printf '%s\n' "$hm_root" >"$hm_build_dir/root"
}

hm_build () {
  hm_build_dir=$1
  shift
  # A folder that was moved or copied along with its build: what is in there names files elsewhere.
  if [ -e "$hm_build_dir/root" ] && [ "$(cat "$hm_build_dir/root")" != "$hm_root" ]; then rm -rf "$hm_build_dir"; fi
  mkdir -p "$hm_build_dir"
  hm_first_time=no
  [ -e "$hm_build_dir/build.ninja" ] || hm_first_time=yes
  # Two starts at once must not build at once.
  exec 9>"$hm_build_dir/lock"
  ! command -v flock >/dev/null 2>&1 || flock 9
  [ $hm_first_time = no ] || hm_say 'building for the first time; this takes a minute or two'
  hm_configure "$@" || exit 1
  hm_quietly ninja -C "$hm_build_dir" || exit 1
  exec 9>&-
}

hm_build_environment () {
  export HALFMOON_DATA_DIR="$1/data" GSETTINGS_SCHEMA_DIR="$1/data/desktop" HALFMOON_LOCALE_DIR="$1/po"
}
