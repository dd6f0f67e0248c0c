#!/usr/bin/env bash
# Restores, builds for release with the analyzers and runs every test. Ends with "N passed, N failed" and an honest exit
# code: a test that did not run, because its project was ended or hung, counts as failed.
set -uo pipefail
cd "$(dirname "$0")/.." || exit 1

export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 CHECKED=true

find_chromium() {
  [ -n "${CHROMIUM:-}" ] && [ -x "$CHROMIUM" ] && return 0
  local name
  for name in chromium chromium-browser google-chrome google-chrome-stable; do
    command -v "$name" > /dev/null && return 0
  done
  return 1
}

# Chromium without its windows, where it is a package of its own: most browser tests take two thirds of the time in it.
offer_shell() {
  [ -n "${CHROMIUM:-}" ] || command -v chromium-headless-shell > /dev/null && return
  apt-cache show chromium-headless-shell > /dev/null 2>&1 && install chromium-headless-shell
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

offer_shell

log=$(mktemp)
trap 'rm -f "$log"' EXIT

# No other packages than those of the lock files; after a change of packages "dotnet restore" writes these anew.
if ! dotnet build TagPage.sln -c Release --nologo -v quiet -p:RestoreLockedMode=true; then
  echo "The build failed; no test ran."
  echo "0 passed, 1 failed"
  exit 1
fi

# The tests call most methods a few times only: the runtime's profiling (PGO) costs more time than it brings back, and its
# protection of compiled code (W^X) protects nobody here. The tests themselves are built without PGO; the first setting is
# for the programs they start.
export DOTNET_TieredPGO=0 DOTNET_EnableWriteXorExecute=0

# Where there is room in memory, test data lies there: most of a test on a disk is waiting for it to save.
memory=""
if [ -w /dev/shm ] && [ "$(df -Pk /dev/shm | awk 'NR == 2 { print $4 }')" -gt 2000000 ]; then
  # Open to others: some tests start the program as somebody without rights.
  memory=$(mktemp -d /dev/shm/tests.XXXXXX) && chmod a+rx "$memory"
  trap 'rm -rf "$log" "$memory"' EXIT
fi

# The browser's tests start programs from their folder, which memory may not allow.
folder_for() {
  case $1 in *Browser*) echo "${TMPDIR:-/tmp}" ;; *) echo "${memory:-${TMPDIR:-/tmp}}" ;; esac
}

passed=0 failed=0 skipped=0 left_out=""

# What was built, named itself: given a project, dotnet would work that out for a second each time.
built() { echo "$1/bin/Release/net10.0/$(basename "$1").dll"; }

tests_of() {
  dotnet test --test-modules "$(built "$1")" --list-tests 2> /dev/null | sed -n 's/^Discovered \([0-9]*\) tests\.$/\1/p'
}

# What was reported, also by a project that was ended: its last summary.
count() {
  awk -v what="  $1:" 'index($0, what) == 1 { n = $2 } END { print n + 0 }' "$log"
}

# A project that hangs is ended after ten minutes. One that names no failed test and still says no has one all the same.
run_project() {
  local name listed code missing f
  name=$(basename "$1")
  TMPDIR=$(folder_for "$name") dotnet test --test-modules "$(built "$1")" --no-progress --timeout 10m 2>&1 | tee "$log"
  code=${PIPESTATUS[0]}
  f=$(count failed)
  listed=$(count total)
  # Only a run that came to its end knows how many there were.
  { [ "$code" != 0 ] || [ "$listed" = 0 ]; } && listed=$(tests_of "$1")
  missing=$((${listed:-0} - $(count succeeded) - f - $(count skipped)))
  if [ "$missing" -gt 0 ]; then
    echo "$name ended early: $missing of its $listed tests did not run and count as failed."
    left_out="$left_out${left_out:+, }$missing of $name did not run"
    f=$((f + missing))
  elif { [ "$code" != 0 ] || [ "${listed:-0}" = 0 ]; } && [ "$f" = 0 ]; then
    echo "$name failed as a whole (exit code $code, ${listed:-no} tests listed)."
    f=1
  fi
  passed=$((passed + $(count succeeded))) failed=$((failed + f)) skipped=$((skipped + $(count skipped)))
}

# Traces slow every browser test down, so they are recorded when those that failed run once more; the verdict stands.
trace_failures() {
  local method filters=()
  for method in $(sed -n 's/^failed \(TagPage\.Browser\.Tests\.[A-Za-z0-9_.]*\).*/\1/p' "$log" | sort -u); do
    filters+=(--filter-method "$method")
  done
  [ ${#filters[@]} = 0 ] && return
  echo "Recording traces of what failed into TestResults."
  TRACES=1 dotnet test --test-modules "$(built tests/TagPage.Browser.Tests)" --no-progress --timeout 10m "${filters[@]}" > /dev/null 2>&1
}

# One project after the other: the browser needs the machine for itself.
for project in tests/*.Tests; do
  run_project "$project"
  [ "$project" = tests/TagPage.Browser.Tests ] && trace_failures
done

bash tests/advisories.sh
printf '%d passed, %d failed' "$passed" "$failed"
[ "$skipped" -gt 0 ] && printf ', %d skipped' "$skipped"
echo "${left_out:+ ($left_out)}"
[ "$failed" = 0 ] && [ "$passed" -gt 0 ]
