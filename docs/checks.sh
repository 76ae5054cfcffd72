#!/bin/sh
# Makes docs/checks.md from the rows that the tests wrote: sh docs/checks.sh FOLDER
set -eu
ls "$1"/*.tsv >/dev/null 2>&1 || { echo "checks.sh: no rows in $1" >&2; exit 1; }
cat <<'HEAD'
# Checks against the outside

Every value below stands in a test. Expected comes from the source named; computed is what Ramwright gave in the same
run. This page is made by `./test`; do not edit it.

How far a source can be leaned on: **Found**: seen on a published page. **Recomputed**: worked out again by other means
than the code under test. **FromMemory**: quoted without the page at hand; confirm it before leaning on it.
**OwnNumbers**: own inputs put by other means through a published formula, so there is no printed answer.
**Practice**: common practice of the trade, no published source.

HEAD
LC_ALL=C sort -u "$1"/*.tsv | LC_ALL=C sort -t "$(printf '\t')" -k1,1V -s | awk -F '\t' '
  { gsub(/[|]/, "\\|"); split($1, part, "-"); if (part[1] != room) { room = part[1]; section[++n] = room }
    row[room] = row[room] "| " $1 " | " $2 " | " $3 " | " $4 " | " $5 " | " $6 " | " $7 " |\n"; total++ }
  END {
    printf "%d values.\n", total
    for (i = 1; i <= n; i++)
      printf "\n## %s\n\n| id | what | expected | computed | tolerance | source | standing |\n|---|---|---:|---:|---|---|---|\n%s", section[i], row[section[i]]
  }'
