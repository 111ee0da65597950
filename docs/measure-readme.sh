#!/usr/bin/env bash
# Walks through the first commands of README.md on a clean checkout, like somebody who has just found the project, and
# tells how long each takes until a page answers.
#
# Usage: docs/measure-readme.sh [-Dmaven.repo.local=FOLDER]      what follows is handed to each mvn
#
# Needs git, curl, JDK 17 or later, Maven, and that nothing listens on port 8080. Leaves nothing behind.
set -euo pipefail
cd "$(dirname "$0")/.."
work=$(mktemp -d)
child=

end_child() {
  if [ -n "$child" ]; then
    kill -- "-$child" 2>/dev/null || true
    wait "$child" 2>/dev/null || true
    child=
  fi
}

clean_up() {
  end_child
  rm -rf "$work"
}
trap clean_up EXIT
trap 'exit 1' INT TERM HUP

# until_page WHAT COMMAND...: how long a command takes that goes on until its first page answers; then it is ended.
until_page() {
  what=$1
  shift
  begun=$SECONDS
  setsid "$@" >"$work/log" 2>&1 &
  child=$!
  until curl -fs -o /dev/null http://localhost:8080/sign-in; do
    kill -0 "$child" 2>/dev/null || { cat "$work/log" >&2; exit 1; }
    sleep 0.5
  done
  echo "$what: first page after $((SECONDS - begun)) s"
  end_child
}

echo "$(nproc) processors, load $(cut -d ' ' -f 1-3 /proc/loadavg)"
git clone -q . "$work/dapple"
cd "$work/dapple"
until_page "demo on a clean checkout" mvn -B -ntp spring-boot:run -Dspring-boot.run.profiles=demo "$@"
until_page "demo again" mvn -B -ntp spring-boot:run -Dspring-boot.run.profiles=demo "$@"
begun=$SECONDS
mvn -B -ntp -q -DskipTests package "$@" >"$work/log" 2>&1 || { cat "$work/log" >&2; exit 1; }
echo "package: $((SECONDS - begun)) s"
until_page "own installation" java -jar target/dapple.jar
