# To be sourced. Sets and exports JAVA_HOME to a JDK of at least 21, or says what to install and
# ends the script. Looks at JAVA_HOME, then at the javac on the PATH, then in the usual folders,
# newest first.

LEAST_JDK=21

# Prints the feature version of the JDK in folder $1; nothing when there is no JDK.
jdk_version() {
  [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] || return 0
  local version=""
  if [ -r "$1/release" ]; then
    version=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release")
  fi
  if [ -z "$version" ]; then
    version=$("$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')
  fi
  printf '%s' "$version"
}

jdk_is_enough() {
  local version
  version=$(jdk_version "$1")
  [ -n "$version" ] && [ "$version" -ge "$LEAST_JDK" ]
}

find_jdk() {
  if [ -n "${JAVA_HOME:-}" ] && jdk_is_enough "$JAVA_HOME"; then
    export JAVA_HOME
    return
  fi
  local found="" on_path folder version best=0
  on_path=$(command -v javac || true)
  if [ -n "$on_path" ]; then
    folder=$(dirname "$(dirname "$(readlink -f "$on_path")")")
    jdk_is_enough "$folder" && found=$folder
  fi
  if [ -z "$found" ]; then
    for folder in /usr/lib/jvm/* /opt/*jdk* /opt/java/* /usr/local/*jdk* \
      "$HOME"/.sdkman/candidates/java/* "$HOME"/.jdks/*; do
      version=$(jdk_version "$folder")
      if [ -n "$version" ] && [ "$version" -ge "$LEAST_JDK" ] && [ "$version" -gt "$best" ]; then
        best=$version
        found=$folder
      fi
    done
  fi
  if [ -z "$found" ]; then
    cat >&2 <<END
Tapeline needs a JDK of version $LEAST_JDK or later, and none was found in JAVA_HOME, on the PATH or in
the usual folders. Install one:
  Debian 13 and later:  apt-get install openjdk-21-jdk
  Debian 12:            apt-get install temurin-25-jdk   (after adding Adoptium's package archive,
                        https://adoptium.net/installation/linux)
or unpack one anywhere and set JAVA_HOME to its folder.
END
    exit 1
  fi
  export JAVA_HOME=$found
}

find_jdk
