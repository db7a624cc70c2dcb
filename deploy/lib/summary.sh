# To be sourced, with ROOT set. Counts what the test reports of all modules say.

clear_reports() {
  find "$ROOT" -path '*/target/surefire-reports' -prune -exec rm -rf {} +
}

# Sums an attribute of the testsuite elements: tests, failures, errors or skipped.
count_of() {
  find "$ROOT" -path '*/target/surefire-reports/TEST-*.xml' -exec \
    sed -n "s/.*<testsuite [^>]*[[:space:]]$1=\"\([0-9]*\)\".*/\1/p" {} + |
    awk '{ sum += $1 } END { print sum + 0 }'
}

# summary STATUS SECONDS
summary() {
  local tests failed skipped
  tests=$(count_of tests)
  failed=$(($(count_of failures) + $(count_of errors)))
  skipped=$(count_of skipped)
  if [ "$1" -ne 0 ] && [ "$failed" -eq 0 ]; then
    echo "The build itself failed."
    failed=1
  fi
  echo
  printf 'Took %d min %d s\n' $(($2 / 60)) $(($2 % 60))
  echo "$((tests - failed - skipped)) passed, $failed failed, $skipped skipped"
}
