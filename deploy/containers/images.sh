# To be sourced, after engine.sh and find-jdk.sh. The images of the servers and of the services:
# official ones where an image registry is in reach, else made here from Debian's packages.

OFFICIAL_POSTGRES=postgres:17
OFFICIAL_KAFKA=apache/kafka:4.1.1
OFFICIAL_JAVA=eclipse-temurin:25-jre

has_image() { docker image inspect "$1" > /dev/null 2>&1; }

pulled() { has_image "$1" || timeout 600 docker pull --quiet "$1" > /dev/null 2>&1; }

# build_image NAME FOLDER [OPTIONS]: says what went wrong when it does.
build_image() {
  local name=$1 folder=$2 said
  shift 2
  if ! said=$(docker build --quiet --tag "$name" "$@" "$folder" 2>&1); then
    printf '%s\n' "The image $name could not be built:" "$said" >&2
    exit 1
  fi
}

# Makes build/NAME with the files of deploy/containers/NAME and what else is named.
stage() {
  local name=$1
  shift
  rm -rf "$CONTAINERS/build/$name"
  mkdir -p "$CONTAINERS/build/$name"
  cp -r "$@" "$CONTAINERS/build/$name"
  echo "$CONTAINERS/build/$name"
}

# Sets POSTGRES_IMAGE and JAVA_IMAGE; kafka_image must wait for the libraries that the build brings.
base_images() {
  if pulled $OFFICIAL_POSTGRES && pulled $OFFICIAL_KAFKA && pulled $OFFICIAL_JAVA; then
    echo "Images: official ones from the registry."
    POSTGRES_IMAGE=$OFFICIAL_POSTGRES KAFKA_IMAGE=$OFFICIAL_KAFKA JAVA_IMAGE=$OFFICIAL_JAVA
    return
  fi
  echo "Images: no registry in reach, so they are made here from Debian's packages."
  POSTGRES_IMAGE=tapeline/postgres KAFKA_IMAGE="" JAVA_IMAGE=tapeline/java
  has_image tapeline/debian || debian_image
  has_image $POSTGRES_IMAGE || build_image $POSTGRES_IMAGE "$ROOT/deploy/containers/postgres" \
    --build-arg BASE=tapeline/debian
  has_image $JAVA_IMAGE || java_image
}

debian_image() {
  install_missing debootstrap=debootstrap
  local release folder
  release=$(. /etc/os-release && echo "${VERSION_CODENAME:-stable}")
  folder=$CONTAINERS/build/debian
  rm -rf "$folder"
  mkdir -p "$folder"
  if ! debootstrap --variant=minbase "$release" "$folder" > "$CONTAINERS/debootstrap.log" 2>&1; then
    echo "Debian's base system could not be brought; see .local/containers/debootstrap.log" >&2
    exit 1
  fi
  tar -C "$folder" -c . | docker import - tapeline/debian > /dev/null
  rm -rf "$folder"
}

# The runtime is cut from the JDK that builds the services: glibc's of the same Debian or an older one.
java_image() {
  local folder
  folder=$(stage java "$ROOT/deploy/containers/java/Dockerfile")
  "$JAVA_HOME/bin/jlink" --strip-debug --no-header-files --no-man-pages \
    --add-modules java.se,jdk.unsupported,jdk.crypto.ec,jdk.localedata,jdk.zipfs,jdk.naming.dns,jdk.management \
    --output "$folder/runtime"
  build_image $JAVA_IMAGE "$folder" --build-arg BASE=tapeline/debian
}

# Sets KAFKA_IMAGE. Needs deploy/local-stack built: the broker's libraries are among its own.
kafka_image() {
  [ -z "$KAFKA_IMAGE" ] || return 0
  KAFKA_IMAGE=tapeline/kafka
  build_image $KAFKA_IMAGE "$(stage kafka "$ROOT"/deploy/containers/kafka/* "$ROOT/deploy/local-stack/target/lib")" \
    --build-arg JAVA_IMAGE="$JAVA_IMAGE"
}

# Needs everything built.
service_images() {
  local service folder
  for service in $SERVICES; do
    folder=$(stage "$service" "$ROOT/deploy/containers/service/Dockerfile" \
      "$ROOT/deploy/containers/healthy" "$ROOT/$service-service/target/quarkus-app")
    # The archive of loaded classes fits the JDK of this machine only.
    rm -f "$folder"/quarkus-app/*.jsa
    build_image "tapeline/$service-service" "$folder" --build-arg JAVA_IMAGE="$JAVA_IMAGE"
  done
  folder=$(stage stack "$ROOT/deploy/containers/stack/Dockerfile" "$ROOT/deploy/containers/healthy" \
    "$ROOT/deploy/local-stack/target/lib")
  cp "$ROOT/deploy/local-stack/target/local-stack-1.0-SNAPSHOT.jar" "$folder/lib"
  build_image tapeline/stack "$folder" --build-arg JAVA_IMAGE="$JAVA_IMAGE"
}

# The settings of the set: secrets made once, kept for the next start.
container_settings() {
  local file=$CONTAINERS/settings-$SET secrets=$CONTAINERS/secrets
  random() { head -c "$1" /dev/urandom | base64 | tr '+/' '-_' | tr -d '=\n'; }
  if ! [ -e "$secrets" ]; then
    (
      umask 077
      cat > "$secrets.part" <<SECRETS
TAPELINE_DATABASE_PASSWORD=$(random 24)
TAPELINE_SESSION_KEY=$(random 48)
TAPELINE_LINK_KEY=$(random 48)
TAPELINE_KAFKA_CLUSTER=$(random 16)
SECRETS
      mv "$secrets.part" "$secrets"
    )
  fi
  # A set that was made before the sheets had a key gets one.
  grep -q '^TAPELINE_SHEET_KEY=' "$secrets" || echo "TAPELINE_SHEET_KEY=$(random 48)" >> "$secrets"
  (
    umask 077
    cat "$secrets" - > "$file" <<SETTINGS
TAPELINE_POSTGRES_IMAGE=$POSTGRES_IMAGE
TAPELINE_KAFKA_IMAGE=$KAFKA_IMAGE
TAPELINE_PORT=${TAPELINE_PORT:-8080}
TAPELINE_PUBLIC_URL=${TAPELINE_PUBLIC_URL:-http://localhost:${TAPELINE_PORT:-8080}}
SETTINGS
  )
}
