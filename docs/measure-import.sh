#!/usr/bin/env bash
# Measures how long a million readings of forty enclosures take to be stored and judged, in a database on the disk. Prints
# what it found, and the load of the machine.
#
# Usage: docs/measure-import.sh [-Dintake.readings=100000]
#
# Needs JDK 17 or later, Maven, 2 GB of free disk and a quiet machine.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -ntp -q test -Dtest=IntakeMeasure -Dsurefire.failIfNoSpecifiedTests=true -Dtest.processes=1 \
  -Ddapple.test.database=file -Dquick.compiler='-XX:+UseSerialGC -Xmx256m -XX:+TieredCompilation' "$@" \
  | grep -E 'MEASURED|ERROR'
uptime
