#!/usr/bin/env bash
# Installs what the tests need, builds with warnings as errors, runs everything.
# Ends with one line: N passed, N failed.
set -uo pipefail
cd "$(dirname "$0")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 LC_ALL=C.UTF-8

install_chromium() {
  command -v chromium >/dev/null && return 0
  command -v apt-get >/dev/null || return 0
  local as_root=""
  [ "$(id -u)" -eq 0 ] || as_root="sudo"
  echo "installing chromium for the browser tests"
  $as_root apt-get update -qq && $as_root apt-get install -y -qq --no-install-recommends chromium fonts-dejavu-core >/dev/null
}

install_chromium || { echo "chromium cannot be installed" >&2; }

if ! dotnet build Configurator.sln -c Release -v quiet -nologo -warnaserror; then
  echo "the build failed"
  echo "0 passed, 1 failed"
  exit 1
fi

# The long runs are explicit tests: tests/nightly.sh takes them too.
extra=(--filter-not-trait Length=nightly)
[ "${NIGHTLY:-}" != 1 ] || extra=(--explicit on)

passed=0 failed=0
for project in tests/*.Tests; do
  name=$(basename "$project")
  log=$(mktemp)
  "$project/bin/Release/net10.0/$name" --progress off --no-ansi --show-live-output on "${extra[@]}" 2>&1 |
    sed -uE 's/^OUTPUT: \[.*\] /  /' | tee "$log"
  status=${PIPESTATUS[0]}
  good=$(sed -n 's/^ *succeeded: *\([0-9]*\).*/\1/p' "$log" | tail -1)
  bad=$(sed -n 's/^ *failed: *\([0-9]*\).*/\1/p' "$log" | tail -1)
  skipped=$(sed -n 's/^ *skipped: *\([0-9]*\).*/\1/p' "$log" | tail -1)
  rm -f "$log"
  # A run that died, found no test, or left one out counts as a failure.
  [ "$status" -eq 0 ] || [ "${bad:-0}" -gt 0 ] || bad=1
  [ "${good:-0}" -gt 0 ] || bad=$((${bad:-0} + 1))
  passed=$((passed + ${good:-0}))
  failed=$((failed + ${bad:-0} + ${skipped:-0}))
done

echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
