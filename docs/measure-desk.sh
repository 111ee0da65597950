#!/usr/bin/env bash
# Measures the desk in a real browser: from a move of a dragged lamp until its map, zones and checks are painted (200
# moves, median and 95th percentile), what processor time that takes, and how long searches for rigs take in five enclosures of the demo. Prints what it found.
#
# Usage: docs/measure-desk.sh
#
# Needs JDK 17 or later, Maven, Chromium and chromedriver, and a quiet machine.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -ntp -q test -Dtest=DeskMeasure -Dsurefire.failIfNoSpecifiedTests=true "$@" | grep -E 'moved lamp|rigs proposed|ERROR'
