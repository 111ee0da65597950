#!/usr/bin/env bash
# Counts taps and measures times of the phone's page in a real browser: one point from the scanned door to stored, and a
# round of 20 doors with three points each. Prints what it found.
#
# Usage: docs/measure-walk.sh
#
# Needs JDK 17 or later, Maven, Chromium and chromedriver, and a quiet machine.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -ntp -q test -Dtest=WalkMeasure -Dsurefire.failIfNoSpecifiedTests=true "$@" | grep -E 'one point|a round of|ERROR'
