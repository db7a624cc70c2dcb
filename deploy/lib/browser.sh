# To be sourced. Installs Debian's chromium when no browser is there.

need_browser() {
  if command -v chromium > /dev/null || command -v chromium-browser > /dev/null; then
    return
  fi
  if ! command -v apt-get > /dev/null || [ "$(id -u)" -ne 0 ]; then
    echo "The browser tests need chromium. Install it: apt-get install --no-install-recommends chromium" >&2
    exit 1
  fi
  echo "Installing chromium for the browser tests ..."
  apt-get update -qq > /dev/null
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends chromium > /dev/null
}
