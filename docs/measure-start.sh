#!/bin/sh
# Measures how long the packaged program takes to its first page, and how much memory it then holds.
#
# Usage: docs/measure-start.sh [RUNS]      RUNS is 5 unless given
#
# Needs java 17 or later, curl and target/dapple.jar (mvn package), and Linux for the memory figure. DAPPLE_JAR names
# another jar, JAVA another java. Leaves nothing behind.
# shellcheck disable=SC2086 # OPTIONS is several words.
set -eu

RUNS=${1:-5}
ROOT=$(cd "$(dirname "$0")/.." && pwd)
JAR=${DAPPLE_JAR:-$ROOT/target/dapple.jar}
JAVA=${JAVA:-java}
OPTIONS="-XX:+UseSerialGC -Xmx256m"
CHILD=

[ -f "$JAR" ] || { echo "There is no $JAR. Make it with: mvn package" >&2; exit 1; }
JAR=$(cd "$(dirname "$JAR")" && pwd)/$(basename "$JAR")
WORK=$(mktemp -d)

end_child() {
  if [ -n "$CHILD" ]; then
    kill "$CHILD" 2>/dev/null || true
    wait "$CHILD" 2>/dev/null || true
    CHILD=
  fi
}

clean_up() {
  end_child
  rm -rf "$WORK"
}
trap clean_up EXIT
trap 'exit 1' INT TERM HUP

# The time, in milliseconds.
now_millis() {
  echo $(($(date +%s%N) / 1000000))
}

median() {
  sort -n | awk '{ a[NR] = $1 } END { print NR % 2 ? a[(NR + 1) / 2] : (a[NR / 2] + a[NR / 2 + 1]) / 2 }'
}

# Waits for the port that the program has chosen, without using the processors meanwhile; fails if the program ends.
await_port() {
  tail --pid="$CHILD" -n +1 -f "$WORK/log" | sed -n '/Tomcat started on port/{s/.*port \([0-9]*\).*/\1/p;q}' | grep . \
    || { cat "$WORK/log" >&2; exit 1; }
}

# start FOLDER DATA JAVA-ARGUMENTS...: starts in FOLDER. Sets CHILD, BASE, and MILLIS to the time until the first page.
start() {
  folder=$1
  data=$2
  shift 2
  : > "$WORK/log"
  begin=$(now_millis)
  (cd "$folder" && exec "$JAVA" $OPTIONS "$@" --spring.profiles.active=demo --server.port=0 \
    "--dapple.data=$data") > "$WORK/log" 2>&1 &
  CHILD=$!
  BASE=http://127.0.0.1:$(await_port)
  curl -fs -o /dev/null "$BASE/sign-in"
  MILLIS=$(($(now_millis) - begin))
}

# Signs in as the supervisor of the demo and opens Review.
open_review() {
  rm -f "$WORK/cookies"
  csrf=$(curl -fs -c "$WORK/cookies" "$BASE/sign-in" | sed -n 's/.*name="_csrf" value="\([^"]*\)".*/\1/p' | head -n 1)
  curl -fs -o /dev/null -b "$WORK/cookies" -c "$WORK/cookies" --data-urlencode "_csrf=$csrf" \
    -d signInName=supervisor -d password=dapple "$BASE/sign-in"
  curl -fs -b "$WORK/cookies" "$BASE/review" | grep -q 'href="/enclosures/' \
    || { echo "Review did not open." >&2; exit 1; }
}

resident_kilobytes() {
  awk '/^VmRSS/ { print $2 }' "/proc/$CHILD/status"
}

# repeat NAME FOLDER JAVA-ARGUMENTS...: RUNS starts on the demo's data; prints each, and keeps the figures in files.
repeat() {
  name=$1
  folder=$2
  shift 2
  run=1
  while [ "$run" -le "$RUNS" ]; do
    start "$folder" "$WORK/data" "$@"
    open_review
    kilobytes=$(resident_kilobytes)
    end_child
    echo "$MILLIS" >> "$WORK/$name.millis"
    echo "$kilobytes" >> "$WORK/$name.kilobytes"
    echo "$name, run $run: first page after $MILLIS ms, $((kilobytes / 1024)) MiB resident after Review"
    run=$((run + 1))
  done
}

echo "$("$JAVA" -version 2>&1 | head -n 1), $OPTIONS, $(nproc) processors, load $(cut -d ' ' -f 1-3 /proc/loadavg)"
"$JAVA" -Djarmode=tools -jar "$JAR" extract --destination "$WORK/app"
NAME=$(basename "$JAR")

start "$WORK" "$WORK/data" -jar "$JAR"
echo "first start ever of the demo, plain jar: first page after $MILLIS ms"
end_child

# The archive holds good only in the folder, and for the jars and the Java, that it was made with.
(cd "$WORK/app" && "$JAVA" $OPTIONS -XX:ArchiveClassesAtExit=dapple.jsa -Xlog:cds*=error -Dspring.context.exit=onRefresh \
  -jar "$NAME" --spring.profiles.active=demo --server.port=0 "--dapple.data=$WORK/data") > "$WORK/log" 2>&1 \
  || { cat "$WORK/log" >&2; exit 1; }

start "$WORK/app" "$WORK/other-data" -XX:SharedArchiveFile=dapple.jsa -jar "$NAME"
echo "first start ever of the demo, class archive: first page after $MILLIS ms"
end_child

repeat plain "$WORK" -jar "$JAR"
repeat archive "$WORK/app" -XX:SharedArchiveFile=dapple.jsa -jar "$NAME"

for name in plain archive; do
  echo "$name, median of $RUNS: $(median < "$WORK/$name.millis") ms," \
    "$(median < "$WORK/$name.kilobytes" | awk '{ printf "%.0f", $1 / 1024 }') MiB"
done
echo "archive to plain: $(echo "$(median < "$WORK/archive.millis") $(median < "$WORK/plain.millis")" \
  | awk '{ printf "%.2f", $1 / $2 }')"
