#!/usr/bin/env bash
# All tests, on a bare Debian machine with Java, Maven and Git: what drives the browser and what backs
# a PostgreSQL up is installed when it is missing. Anything given is handed on to Maven.
set -euo pipefail
cd "$(dirname "$0")/../.."

missing=()
command -v chromium >/dev/null && command -v chromedriver >/dev/null || missing+=(chromium chromium-driver)
command -v pg_dump >/dev/null || missing+=(postgresql-client)
if [ ${#missing[@]} -gt 0 ]; then
  root=()
  [ "$(id -u)" -eq 0 ] || root=(sudo)
  "${root[@]}" apt-get update -qq
  "${root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "${missing[@]}"
fi

exec mvn -B -ntp verify "$@"
