#!/usr/bin/env bash
# Restores, builds and runs every test. Ends with "N passed, N failed" and an honest exit code.
set -uo pipefail
cd "$(dirname "$0")/.." || exit 1

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

find_chromium() {
  [ -n "${CHROMIUM:-}" ] && [ -x "$CHROMIUM" ] && return 0
  local name
  for name in chromium chromium-browser google-chrome google-chrome-stable; do
    command -v "$name" > /dev/null && return 0
  done
  return 1
}

# Draws the PDFs of labels, so that what a printer would see is read back.
find_poppler() {
  command -v pdftoppm > /dev/null && command -v pdftotext > /dev/null && command -v pdffonts > /dev/null
}

# The package of a program is named alike everywhere but for poppler.
install_command() {
  if command -v apt-get > /dev/null; then echo "apt-get update && apt-get install -y $1"
  elif command -v dnf > /dev/null; then echo "dnf install -y $1"
  elif command -v pacman > /dev/null; then echo "pacman -S --noconfirm ${1/poppler-utils/poppler}"
  elif command -v apk > /dev/null; then echo "apk add $1"
  elif command -v zypper > /dev/null; then echo "zypper install -y ${1/poppler-utils/poppler-tools}"
  fi
}

install() {
  command=$(install_command "$1")
  if [ -n "$command" ] && [ "$(id -u)" = 0 ]; then
    DEBIAN_FRONTEND=noninteractive sh -c "$command"
  elif [ -n "$command" ] && sudo -n true 2> /dev/null; then
    sudo -n env DEBIAN_FRONTEND=noninteractive sh -c "$command"
  fi
}

if ! find_poppler; then
  install poppler-utils
  if ! find_poppler; then
    echo "Without poppler-utils the tests that read labels back from PDFs are skipped, and count as skipped below."
    [ -n "$command" ] && echo "  sudo sh -c '$command'"
  fi
fi

if ! find_chromium; then
  install chromium
  if ! find_chromium; then
    if [ -n "$command" ]; then
      echo "The browser tests need Chromium. Install it, then start again:"
      echo "  sudo sh -c '$command'"
    else
      echo "The browser tests need Chromium. Install your distribution's package, or set CHROMIUM to the program's path."
    fi
    echo "0 passed, 1 failed"
    exit 1
  fi
fi

log=$(mktemp)
trap 'rm -f "$log"' EXIT

if ! dotnet build TagPage.sln --nologo -v quiet; then
  echo "The build failed; no test ran."
  echo "0 passed, 1 failed"
  exit 1
fi

# One project after the other: the browser needs the machine for itself.
# A project that hangs is ended after ten minutes and counts as failed.
dotnet test --solution TagPage.sln --no-build --no-progress --timeout 10m --max-parallel-test-modules 1 2>&1 | tee "$log"
code=$?

# A failed count that is missing, or nothing run at all, must not look like success.
awk -v code="$code" '
  /^  failed:/ { failed += $2 } /^  succeeded:/ { passed += $2 } /^  skipped:/ { skipped += $2 }
  END {
    if (passed + 0 == 0 || (code != 0 && failed + 0 == 0)) failed = failed + 1
    printf "%d passed, %d failed", passed, failed
    if (skipped > 0) printf ", %d skipped", skipped
    print ""
    exit failed > 0
  }' "$log"
