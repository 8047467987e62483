#!/usr/bin/env bash
# Everything that tests/run.sh runs, and the long runs: large models, many random cases.
# Ends with one line: N passed, N failed.
NIGHTLY=1 exec bash "$(dirname "$0")/run.sh"
