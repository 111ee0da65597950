#!/bin/sh
# Measures what pages ask of the database and of the network: statements, and bytes of a first visit, on demo data.
#
# Usage: docs/measure-pages.sh
#
# Needs java 17 or later, curl, gzip and target/dapple.jar (mvn package). DAPPLE_JAR names another jar, JAVA another
# java. Leaves nothing behind.
set -eu

ROOT=$(cd "$(dirname "$0")/.." && pwd)
JAR=${DAPPLE_JAR:-$ROOT/target/dapple.jar}
JAVA=${JAVA:-java}
CHILD=

[ -f "$JAR" ] || { echo "There is no $JAR. Make it with: mvn package" >&2; exit 1; }
WORK=$(mktemp -d)

clean_up() {
  if [ -n "$CHILD" ]; then
    kill "$CHILD" 2>/dev/null || true
    wait "$CHILD" 2>/dev/null || true
  fi
  rm -rf "$WORK"
}
trap clean_up EXIT
trap 'exit 1' INT TERM HUP

"$JAVA" -XX:+UseSerialGC -Xmx256m -jar "$JAR" --spring.profiles.active=demo --server.port=0 "--dapple.data=$WORK/data" \
  --logging.level.org.hibernate.SQL=debug --logging.level.org.springframework.jdbc.core.JdbcTemplate=debug \
  > "$WORK/log" 2>&1 &
CHILD=$!
PORT=$(tail --pid="$CHILD" -n +1 -f "$WORK/log" | sed -n '/Tomcat started on port/{s/.*port \([0-9]*\).*/\1/p;q}')
[ -n "$PORT" ] || { cat "$WORK/log" >&2; exit 1; }
BASE=http://127.0.0.1:$PORT

get() {
  curl -fs -b "$WORK/cookies" -c "$WORK/cookies" -H 'Accept-Encoding: gzip' "$BASE$1"
}

# Lines of the log that have a statement of Hibernate's, or of the session's.
count() {
  grep -c "$1" "$WORK/log" || true
}

# Lets the program finish what it does after an answer: one request, without a session, that logs no statement.
settle() {
  curl -fs -o /dev/null "$BASE/actuator/health"
}

statements() {
  get "$1" > "$WORK/page"
  settle
  hibernate=$(count 'org.hibernate.SQL ')
  session=$(count 'Executing prepared SQL statement')
  get "$1" > "$WORK/page"
  settle
  echo "$1: $(($(count 'org.hibernate.SQL ') - hibernate)) statements," \
    "and $(($(count 'Executing prepared SQL statement') - session)) for the session"
}

CSRF=$(get /sign-in | gzip -dcf | sed -n 's/.*name="_csrf" value="\([^"]*\)".*/\1/p' | head -n 1)
curl -fs -o /dev/null -b "$WORK/cookies" -c "$WORK/cookies" --data-urlencode "_csrf=$CSRF" \
  -d signInName=supervisor -d password=dapple "$BASE/sign-in"

for page in / /review /enclosures/1 /animals/1; do
  statements "$page"
done

echo
get /review > "$WORK/review"
gzip -dcf < "$WORK/review" > "$WORK/review.html"
grep -oE '(href|src)="/(css|js|webjars|icon)/[^"]*"' "$WORK/review.html" | cut -d '"' -f 2 | sort -u > "$WORK/linked"
grep '^/css/' "$WORK/linked" | while read -r sheet; do
  get "$sheet" | gzip -dcf | grep -oE '/font/[^")]*' || true
done | sort -u > "$WORK/fonts"
cat "$WORK/linked" "$WORK/fonts" > "$WORK/parts"
total=$(wc -c < "$WORK/review")
echo "$total bytes /review"
while read -r part; do
  bytes=$(get "$part" | wc -c)
  total=$((total + bytes))
  echo "$bytes bytes $part"
done < "$WORK/parts"
echo "$total bytes in all: the first visit of Review, compressed"
