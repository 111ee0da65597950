#!/usr/bin/env bash
# Measures the demo with its readings and with a hundred times as many, which come in as a sheet through the page: how long
# the sheet takes, what pages take before and after, and a year's record. The program has 256 MB.
#
# Usage: docs/measure-collection.sh [-Dmeasure.times=10]
#
# Needs JDK 17 or later, Maven, target/dapple.jar (mvn package), 4 GB of free disk and a quiet machine.
set -euo pipefail
cd "$(dirname "$0")/.."
[ -f target/dapple.jar ] || { echo "There is no target/dapple.jar. Make it with: mvn package" >&2; exit 1; }
mvn -B -ntp -q test -Dtest=CollectionMeasure -Dsurefire.failIfNoSpecifiedTests=true -Dtest.processes=1 \
  -Ddapple.jar="$PWD/target/dapple.jar" -Ddapple.program.compiler=-XX:+TieredCompilation "$@" | grep -E 'MEASURED|ERROR'
uptime
