#!/usr/bin/env bash
# Makes the pictures of docs/pictures.md anew from the demo: needs JDK 17, Maven, Chromium and chromedriver.
set -euo pipefail
cd "$(dirname "$0")/.."
mvn -B -ntp test-compile failsafe:integration-test@default failsafe:verify@default -Dpictures=true -Dit.test=PicturesIT "$@"
