# To be sourced, with ROOT set. Finds a container engine, or installs Debian's and starts one that
# keeps everything under .local/containers; sets compose to the command that runs the compose file.

CONTAINERS=$ROOT/.local/containers
OWN_SOCKET=unix://$CONTAINERS/run/docker.sock
SET=tapeline
engine_pid=""

need_engine() {
  mkdir -p "$CONTAINERS/run"
  if docker info > /dev/null 2>&1; then
    echo "Container engine: the one that runs here."
  elif DOCKER_HOST=$OWN_SOCKET docker info > /dev/null 2>&1; then
    export DOCKER_HOST=$OWN_SOCKET
    echo "Container engine: the one that an earlier run started in .local/containers."
  else
    install_engine
    start_engine
  fi
  need_compose
}

# Installs what of "PROGRAM=PACKAGE" is missing.
install_missing() {
  local pair missing=""
  for pair in "$@"; do
    command -v "${pair%%=*}" > /dev/null || missing+=" ${pair#*=}"
  done
  [ -n "$missing" ] || return 0
  if ! command -v apt-get > /dev/null || [ "$(id -u)" -ne 0 ]; then
    echo "Install what is missing for the containers: apt-get install$missing" >&2
    exit 1
  fi
  echo "Installing$missing ..."
  apt-get update -qq > /dev/null
  # shellcheck disable=SC2086 # the names are words
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing > /dev/null
}

install_engine() {
  install_missing dockerd=docker.io docker=docker.io iptables=iptables
}

start_engine() {
  if [ "$(id -u)" -ne 0 ]; then
    echo "No container engine answers, and only root can start one. Start Docker, or run as root." >&2
    exit 1
  fi
  export DOCKER_HOST=$OWN_SOCKET
  dockerd --data-root="$CONTAINERS/data" --exec-root="$CONTAINERS/run/exec" \
    --pidfile="$CONTAINERS/run/dockerd.pid" -H "$OWN_SOCKET" --storage-driver overlay2 \
    > "$CONTAINERS/dockerd.log" 2>&1 &
  engine_pid=$!
  local tries=0
  until docker info > /dev/null 2>&1; do
    tries=$((tries + 1))
    if [ "$tries" -gt 60 ] || ! kill -0 "$engine_pid" 2> /dev/null; then
      echo "The container engine did not start; the end of .local/containers/dockerd.log says why:" >&2
      tail -5 "$CONTAINERS/dockerd.log" >&2
      exit 1
    fi
    sleep 0.5
  done
  echo "Container engine: started in .local/containers."
}

# Ends the engine that this run started; another's goes on.
stop_engine() {
  [ -n "$engine_pid" ] || return 0
  kill "$engine_pid" 2> /dev/null || true
  wait "$engine_pid" 2> /dev/null || true
  engine_pid=""
}

need_compose() {
  if docker compose version > /dev/null 2>&1; then
    compose="docker compose"
  else
    install_missing docker-compose=docker-compose
    compose=docker-compose
  fi
}

# The set of that name: one for use, one for tests.
in_compose() {
  $compose --project-name "$SET" --project-directory "$ROOT/deploy/containers" \
    --env-file "$CONTAINERS/settings-$SET" --file "$ROOT/deploy/containers/compose.yaml" "$@"
}

# Waits until a part is healthy; ends with what the unhealthy parts said when it takes too long.
await_healthy() {
  local part=$1 seconds=0 container
  container=$(in_compose ps --quiet "$part")
  until [ "$(docker inspect --format '{{.State.Health.Status}}' "$container")" = healthy ]; do
    if [ "$seconds" -gt 180 ]; then
      echo "The part $part is not healthy after 3 minutes. The parts, and the end of what they said:" >&2
      in_compose ps >&2
      in_compose logs --tail=15 >&2
      return 1
    fi
    sleep 1
    seconds=$((seconds + 1))
  done
}
