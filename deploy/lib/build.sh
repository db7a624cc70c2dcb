# To be sourced, after find-jdk.sh, with ROOT set to the root of the checkout. Packages the parts
# whose sources are newer than what was built from them.
#
# The services are packaged with an archive of their loaded classes (class data sharing), which
# more than halves the time that four of them need to start on two cores.

SERVICES="sizing fitting inventory notify"
FAST_START="-Dquarkus.package.jar.aot.enabled=true -Dquarkus.package.jar.aot.phase=build"

need_maven() {
  if ! command -v mvn > /dev/null; then
    echo "Tapeline is built with Maven, which was not found: apt-get install maven" >&2
    exit 1
  fi
}

# True when a source in the folders $2.. is newer than file $1, or $1 is not there.
older_than_sources() {
  local built=$1
  shift
  [ -e "$built" ] || return 0
  [ -n "$(find "$@" -name target -prune -o -type f -newer "$built" -print -quit)" ]
}

# Prints the modules that have to be packaged.
stale_modules() {
  local service
  for service in $SERVICES; do
    if older_than_sources "$ROOT/$service-service/target/quarkus-app/quarkus-run.jar" \
      "$ROOT/pom.xml" "$ROOT/event-journal/pom.xml" "$ROOT/event-journal/src/main" \
      "$ROOT/$service-service/pom.xml" "$ROOT/$service-service/src/main"; then
      echo "$service-service"
    fi
  done
  if older_than_sources "$ROOT/deploy/local-stack/target/local-stack-1.0-SNAPSHOT.jar" \
    "$ROOT/pom.xml" "$ROOT/deploy/local-servers/pom.xml" "$ROOT/deploy/local-servers/src/main" \
    "$ROOT/deploy/local-stack/pom.xml" "$ROOT/deploy/local-stack/src/main"; then
    echo "deploy/local-stack"
  fi
}

build_stale() {
  local stale
  stale=$(stale_modules | paste -sd, -)
  if [ -z "$stale" ]; then
    return
  fi
  need_maven
  # A class whose source was moved or removed would stay behind and be packaged with the rest.
  local module
  for module in ${stale//,/ }; do
    rm -rf "$ROOT/$module/target/classes"
    case $module in
      *-service) rm -rf "$ROOT/event-journal/target/classes" ;;
      *) rm -rf "$ROOT/deploy/local-servers/target/classes" ;;
    esac
  done
  echo "Building $(echo "$stale" | sed 's/,/, /g') (a few minutes the first time) ..."
  # shellcheck disable=SC2086 # the flags are words
  if ! (cd "$ROOT" && mvn -B -q -DskipTests $FAST_START -pl "$stale" -am package); then
    echo "The build failed; what is above says why. Nothing was started." >&2
    exit 1
  fi
}
