# SPDX-License-Identifier: EPL-2.0
# What the scripts share. Sourced, not run; expects the variable root.

MAVEN_VERSION=3.9.9
tools="${XDG_CACHE_HOME:-$HOME/.cache}/benchlore-build"
products="$root/releng/org.benchlore.products/target/products"
desktop="$products/org.benchlore.desktop/linux/gtk/x86_64"
terminal="$products/org.benchlore.terminal/linux/gtk/x86_64"

say() { printf '%s\n' "$*" >&2; }

fail() { say "$*"; exit 1; }

# A JDK of 17 or newer, from JAVA_HOME or the path.
need_jdk() {
    local java="${JAVA_HOME:+$JAVA_HOME/bin/}java" version
    command -v "$java" >/dev/null || fail "No Java was found: install a JDK 17 or newer, such as 'apt-get install openjdk-17-jdk-headless'."
    version=$("$java" -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p' | head -n 1)
    [ "${version:-0}" -ge 17 ] || fail "Java ${version:-?} is too old: set JAVA_HOME to a JDK 17 or newer."
    command -v "${java}c" >/dev/null || fail "Java has no compiler here: install a JDK 17 or newer, not only its runtime."
}

# Is this Maven new enough for the build?
is_new_maven() { "$1" -v 2>/dev/null | sed -n 's/^[^A]*Apache Maven \([0-9.]*\).*/\1/p' | grep -Eq '^(3\.(9|[1-9][0-9])|[4-9])'; }

# Prints the Maven to build with. Where the installed one is older than 3.9, it fetches a newer one once.
maven() {
    local own="$tools/apache-maven-$MAVEN_VERSION/bin/mvn" scratch
    if is_new_maven mvn; then command -v mvn; return; fi
    if [ ! -x "$own" ]; then
        command -v mvn >/dev/null || fail "No Maven was found: install one, such as 'apt-get install maven'; 3.6 or newer will do."
        say "Fetching Maven $MAVEN_VERSION once, into $tools ..."
        mkdir -p "$tools"; scratch=$(mktemp -d)
        (cd "$scratch" && mvn -q -B org.apache.maven.plugins:maven-dependency-plugin:3.6.1:unpack \
            -Dartifact=org.apache.maven:apache-maven:$MAVEN_VERSION:zip:bin -DoutputDirectory="$scratch/out") >&2 \
            || fail "Maven $MAVEN_VERSION could not be fetched: check the network, or install Maven 3.9 or newer."
        chmod +x "$scratch/out/apache-maven-$MAVEN_VERSION/bin/mvn"
        mv "$scratch/out/apache-maven-$MAVEN_VERSION" "$tools/"; rm -rf "$scratch"
    fi
    printf '%s\n' "$own"
}

# Builds the products; the lines that tell where it is go to standard error.
build_products() {
    local mvn status; mvn=$(maven)
    say "Building Benchlore (the first time takes some minutes) ..."
    set +e
    "$mvn" -f "$root/pom.xml" -B -ntp clean verify -DskipTests "$@" 2>&1 \
        | grep --line-buffered -E '^\[INFO\] Building |^\[ERROR\]|BUILD|Tests run:' | sed -u 's/^\[INFO\] //' >&2
    status=${PIPESTATUS[0]}
    set -e
    [ "$status" -eq 0 ] || fail "The build failed: 'releng/build -e' shows more."
    prepare_start
}

# Has the archive made that shortens the command line's start; where that does not work, the first run tries again.
prepare_start() { BENCHLORE_STARTUP=wait "$terminal/benchlore" --version > /dev/null 2>&1 || true; }

# Debian packages that a window needs; installs them where this user may, else says how.
need_packages() {
    local missing=() line
    command -v Xvfb >/dev/null || missing+=(xvfb)
    command -v openbox >/dev/null || missing+=(openbox)
    command -v dbus-run-session >/dev/null || missing+=(dbus)
    ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so\.0' || missing+=(libgtk-3-0)
    fc-list 2>/dev/null | grep -qi dejavu || missing+=(fonts-dejavu-core fontconfig)
    [ -d /usr/share/icons/Adwaita ] || missing+=(adwaita-icon-theme)
    [ ${#missing[@]} -eq 0 ] && return
    line="apt-get install -y --no-install-recommends ${missing[*]}"
    if command -v apt-get >/dev/null && [ "$(id -u)" -eq 0 ]; then
        say "Installing: ${missing[*]}"
        { apt-get update -qq && DEBIAN_FRONTEND=noninteractive $line -qq; } >&2 || fail "Installing failed: run '$line'."
    else
        fail "The window tests need more programs. Run: sudo apt-get update && sudo $line"
    fi
}

# A folder for the files that tests write: in memory where there is room, since they copy a library of a thousand small
# files again and again; else among the system's temporary files. Whoever asks removes it.
test_folder() {
    local free; free=$(df -Pk /dev/shm 2>/dev/null | awk 'NR == 2 { print $4 }')
    local memory; memory=$(awk '/^MemAvailable/ { print $2 }' /proc/meminfo 2>/dev/null)
    if [ -w /dev/shm ] && [ "${free:-0}" -gt 4000000 ] && [ "${memory:-0}" -gt 8000000 ]; then
        mktemp -d /dev/shm/benchlore-tests-XXXXXX
    else
        mktemp -d
    fi
}
