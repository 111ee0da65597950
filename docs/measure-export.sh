#!/usr/bin/env bash
# Measures a year's record of a million readings at 40 enclosures, from a database on the disk, in a process of 256 MB: how
# long it takes until the file is complete, and what memory it needs. Prints what it found, and the load of the machine.
#
# Usage: docs/measure-export.sh [-Dexport.readings=100000]
#
# Needs JDK 17 or later, Maven, 2 GB of free disk and a quiet machine.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -ntp -q test -Dtest=ExportMeasure -Dsurefire.failIfNoSpecifiedTests=true -Dtest.processes=1 \
  -Ddapple.test.database=file -Dquick.compiler='-XX:+UseSerialGC -Xmx256m' "$@" | grep -E 'MEASURED|ERROR'
uptime
