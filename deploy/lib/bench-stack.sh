# For benchmarks: a stack with data of its own, and the classes of a module's tests. Sourced; needs ROOT.

# Prints the class path of a module's tests.
bench_classes() {
  (cd "$ROOT" && mvn -B -q -ntp -pl "$1" -am test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/bench.classpath) >&2
  echo "$ROOT/$1/target/test-classes:$ROOT/$1/target/classes:$(cat "$ROOT/$1/target/bench.classpath")"
}

# start_bench_stack NAME [--demo]: with no data, or with the demo season; stopped when the script ends.
# TAPELINE_PORT says where.
start_bench_stack() {
  local load=--empty
  [ "${2:-}" = --demo ] && load=""
  export TAPELINE_DATA=$ROOT/deploy/acceptance/target/bench-$1
  local said=$TAPELINE_DATA.log
  mkdir -p "$TAPELINE_DATA"
  : > "$said" # what an earlier run said must not be taken for this one's
  # shellcheck disable=SC2086 # no word when the demo is loaded
  "$ROOT/deploy/start" --fresh $load > "$said" 2>&1 &
  stack=$!
  trap stop_bench_stack EXIT
  until grep -q "Ctrl-C stops everything" "$said"; do
    if ! kill -0 "$stack" 2> /dev/null; then
      cat "$said" >&2
      exit 1
    fi
    sleep 1
  done
}

stop_bench_stack() {
  kill "$stack" 2> /dev/null || true
  wait "$stack" 2> /dev/null || true
}
