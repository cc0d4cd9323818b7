# What ./lyewright and ./check share: finding Java and Maven, installing them where they are missing, one build at a time.
# Sourced by a POSIX shell with $root set to the repository. Everything said goes to standard error.

OLDEST_JAVA=17

say() {
    printf 'lyewright: %s\n' "$*" >&2
}

# Sets java_version (such as 17.0.15) and java_major for the Java at $1, without starting it where its release file tells.
read_java_version() {
    java_version=
    if [ -r "$1/release" ]; then
        while IFS='=' read -r key value; do
            [ "$key" = JAVA_VERSION ] && java_version=${value#\"} && java_version=${java_version%\"*}
        done <"$1/release"
    elif [ -x "$1/bin/java" ]; then
        java_version=$("$1/bin/java" -version 2>&1 | sed -n 's/.* version "\([0-9][^"]*\)".*/\1/p')
    fi
    java_major=${java_version%%[!0-9]*}
    [ -n "$java_major" ]
}

# Is there a Java new enough at $1, with the program $2 (java or javac)?
java_serves() {
    [ -x "$1/bin/$2" ] && read_java_version "$1" && [ "$java_major" -ge "$OLDEST_JAVA" ]
}

# Sets java_home to a Java that has the program $1: $JAVA_HOME, the one on the PATH, else one under /usr/lib/jvm.
find_java() {
    java_home=${JAVA_HOME:-}
    [ -n "$java_home" ] && java_serves "$java_home" "$1" && return 0
    if program=$(command -v "$1"); then
        program=$(readlink -f "$program")
        java_home=${program%/bin/*}
        java_serves "$java_home" "$1" && return 0
    fi
    for java_home in /usr/lib/jvm/*; do
        java_serves "$java_home" "$1" && return 0
    done
    java_home=
    return 1
}

# Runs its arguments as root; fails where that cannot be.
as_root() {
    if [ "$(id -u)" = 0 ]; then
        "$@"
    elif command -v sudo >/dev/null; then
        sudo "$@"
    else
        return 1
    fi
}

# Installs the first of the Debian packages named that the machine's lists know.
apt_install() {
    for package in "$@"; do
        if apt-cache show "$package" 2>/dev/null | grep -q '^Package:'; then
            as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$package" >&2
            return
        fi
    done
    return 1
}

# $1: what is missing and what it is for; then the Debian packages that would do.
install_missing() {
    why=$1
    shift
    if ! command -v apt-get >/dev/null; then
        say "$why Install it (on Debian it is one of: $*), then try again."
        exit 1
    fi
    say "$why Installing it with apt-get."
    if ! { as_root apt-get update >&2 && apt_install "$@"; }; then
        say "It could not be installed. Run this yourself, then try again: sudo apt-get update && sudo apt-get install $1"
        exit 1
    fi
}

need_java() {
    find_java java && return
    install_missing "Java $OLDEST_JAVA or newer is missing; Lyewright runs on it." \
        openjdk-17-jdk-headless openjdk-21-jdk-headless openjdk-25-jdk-headless
    find_java java || { say "Java was installed but is not found; set JAVA_HOME to where it is."; exit 1; }
}

# Java with its compiler, and Maven; exports JAVA_HOME for it.
need_build_tools() {
    if ! find_java javac; then
        install_missing "A Java compiler, $OLDEST_JAVA or newer, is missing; Lyewright is built with it from its sources." \
            openjdk-17-jdk-headless openjdk-21-jdk-headless openjdk-25-jdk-headless
        find_java javac || { say "Java was installed but is not found; set JAVA_HOME to where it is."; exit 1; }
    fi
    if ! command -v mvn >/dev/null; then
        install_missing "Maven is missing; Lyewright is built with it." maven
    fi
    export JAVA_HOME="$java_home"
}

# The browser in which the tests look at the pages; $CHROMIUM names another one.
need_browser() {
    [ -z "${CHROMIUM:-}" ] || return 0
    for browser in /usr/bin/chromium-headless-shell /usr/bin/chromium /usr/bin/chromium-browser /usr/bin/google-chrome; do
        [ ! -x "$browser" ] || return 0
    done
    install_missing "Chromium is missing; the tests look at the pages in it." chromium-headless-shell chromium chromium-browser
}

# Chromium without windows, which takes two thirds of the time that one with windows does; where it cannot be had, that one serves.
want_quick_browser() {
    [ -x /usr/bin/chromium-headless-shell ] || { as_root apt-get update && apt_install chromium-headless-shell; } >&2 || true
}

# Plain text and no progress bars.
maven() {
    LYEWRIGHT_BUILDING=yes mvn -B -ntp -Dstyle.color=never "$@" </dev/null
}

# One build at a time in this work tree: others wait here until it is done. The lock is let go when
# this shell and the Maven it started have ended.
take_lock() {
    [ -z "${LYEWRIGHT_BUILDING:-}" ] || { say "a build cannot start another one"; exit 1; }
    [ -w "$root/build" ] || { say "nothing can be built here: $root is not yours to write to"; exit 1; }
    if command -v flock >/dev/null; then
        exec 9>"$root/build/lock"
        flock -n 9 || { say "waiting for another build of this work tree to end"; flock 9; }
    else
        until mkdir "$root/build/lock.d" 2>/dev/null; do
            say "another build is running (if none is, remove $root/build/lock.d)"
            sleep 2
        done
        trap 'rmdir "$root/build/lock.d" 2>/dev/null' EXIT
        trap 'exit 130' INT TERM HUP
    fi
}

release_lock() {
    if command -v flock >/dev/null; then
        exec 9>&-
    else
        rmdir "$root/build/lock.d"
        trap - EXIT INT TERM HUP
    fi
}
