# To be sourced by deploy/test, after engine.sh and images.sh.

# Ends with 0 when all tests passed. Leaves neither containers nor an engine of its own behind.
container_tests() {
  SET=tapeline-test
  TAPELINE_PORT=$(free_port)
  trap end_container_tests EXIT
  need_engine
  build_stale
  base_images
  kafka_image
  service_images
  container_settings

  local status=0
  server_tests || status=$?
  main_job_in_containers || status=$?
  return "$status"
}

# The journal against servers that Testcontainers starts, and of each service what rests on its servers:
# tables made anew, locks, many at once, one chain of events.
server_tests() {
  echo "Tests against servers in containers ..."
  export TAPELINE_TEST_SERVERS=containers
  export TAPELINE_TEST_POSTGRES_IMAGE=$POSTGRES_IMAGE TAPELINE_TEST_KAFKA_IMAGE=$KAFKA_IMAGE
  case ${DOCKER_HOST:-} in
    # The engine runs on this machine, also when this machine is itself a container.
    "" | unix://*) export TESTCONTAINERS_HOST_OVERRIDE=localhost ;;
  esac
  # Its helper that cleans up after a killed run is an image of a registry.
  [ "$POSTGRES_IMAGE" = "$OFFICIAL_POSTGRES" ] || export TESTCONTAINERS_RYUK_DISABLED=true
  maven_tests test-containers.log -Dgroups=containers test
}

# The whole set as the compose file describes it, with nothing in it, and the main job against it.
main_job_in_containers() {
  echo "Starting the whole set in containers on port $TAPELINE_PORT ..."
  in_compose down --volumes > /dev/null 2>&1
  in_compose up --detach > "$ROOT/.local/compose.log" 2>&1 && await_healthy gateway || return 1
  echo "All parts are healthy; the main job against them ..."
  TAPELINE_ADDRESS=http://localhost:$TAPELINE_PORT \
    maven_tests test-set.log -pl deploy/acceptance -am -Dgroups=main-job test
}

end_container_tests() {
  in_compose down --volumes > /dev/null 2>&1 || true
  stop_engine
}

free_port() {
  local port
  for port in 18080 18180 18280 18380 18480; do
    if ! (exec 3<> "/dev/tcp/127.0.0.1/$port") 2> /dev/null; then
      echo "$port"
      return
    fi
  done
  echo 18580
}
