#!/usr/bin/env bash
# Upgrade and going back, by hand: publishes this source as the old version and, with a migration more, as the new one; takes a demo
# shop from one to the other and back by docs/publish.md and docs/bad-day.md, with a migration that fails and one that is killed
# on the way, and looks each time what is in it. Takes curl, openssl and some minutes, writes only into a folder of its own. Usage: tests/upgrade.sh
set -uo pipefail
cd "$(dirname "$0")/.."
place=$(mktemp -d)
data=$place/data
at=http://127.0.0.1:5084
pid=
trap '[ -z "$pid" ] || kill -9 $pid 2> /dev/null; wait 2> /dev/null; rm -rf "$place"' EXIT

wrong=0
expect() { if [[ $2 == $3 ]]; then echo "ok     $1: $2"; else echo "WRONG  $1: $2 (should be $3)"; wrong=1; fi; }

# Publishes into $place/$1 with a migration of the text $2, or with none.
version() {
  rm -rf "$place/source/src/TagPage.Records/Storage/Migrations/0002-trial.sql"
  [ -z "$2" ] || echo "$2" > "$place/source/src/TagPage.Records/Storage/Migrations/0002-trial.sql"
  dotnet publish "$place/source/src/TagPage.Web" -c Release -o "$place/$1" --nologo -v quiet || exit 1
}

start() {
  (cd "$place/$1" && exec ./TagPage.Web demo --urls $at --TagPage:DataFolder="$data") > "$place/log" 2>&1 &
  pid=$!
  until curl -sf -o /dev/null $at/healthz/ready; do kill -0 $pid 2> /dev/null || { pid=; return 1; }; sleep 0.2; done
  until grep -q '^Reminder' "$place/log"; do sleep 0.2; done
}
stop() { kill $pid; wait $pid 2> /dev/null; pid=; }
# A start that should not succeed: what it says.
refusal() { if start "$1"; then stop; echo started; else cat "$place/log"; fi; }

# What the form of a page is sent with.
token() { curl -s -b "$place/jar" -c "$place/jar" "$at$1" | grep -o 'name="__RequestVerificationToken"[^>]*value="[^"]*"' | head -1 | sed 's/.*value="//; s/"$//'; }
sign_in() {
  rm -f "$place/jar"
  curl -s -o /dev/null -w '%{redirect_url}' -b "$place/jar" -c "$place/jar" --data-urlencode "__RequestVerificationToken=$(token /account/sign-in)" \
    -d Input.Name=runa --data-urlencode "Input.Password=$password" $at/account/sign-in
}
add_string() { curl -s -o /dev/null -w '%{redirect_url}' -b "$place/jar" --data-urlencode "__RequestVerificationToken=$(token /shop/strings/new)" -d "Input.Name=$1" -d Input.Material=Polyester -d Input.GaugeMm=1.25 -d "Input.FormKey=$(openssl rand -hex 16)" $at/shop/strings/new; }
has_string() { curl -s -b "$place/jar" $at/shop/strings | grep -c "$1"; }
# Every page the demo prints, without what is different at each showing.
pages() { for page in $tag $found $reminder; do curl -s "$page" | sed -E 's/value="(CfDJ8[^"]*|[0-9a-f]{32})"//g'; done | sha256sum | cut -d ' ' -f 1; }
records() { sha256sum "$data/tagpage.db" | cut -d ' ' -f 1; }
sound() { "$place/$1/TagPage.Web" check --TagPage:DataFolder="$data" 2>&1 | grep -c '^✓ Records: .*undamaged'; }
backups() { find "$data/backups" -name '*0002-trial*.db' | sort; }

mkdir "$place/source" && git archive HEAD | tar -x -C "$place/source"
more='CREATE TABLE trial (racket_id INTEGER PRIMARY KEY REFERENCES racket (id), turn INTEGER NOT NULL) STRICT;
  INSERT INTO trial SELECT id, 7 FROM racket; ALTER TABLE string_kind ADD COLUMN trial TEXT;'
long='INSERT INTO trial SELECT -n, n FROM (WITH RECURSIVE c (n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM c WHERE n < 400000000) SELECT max(n) AS n FROM c);'
version old ""
version failing "$more INSERT INTO nowhere VALUES (1);"
version slow "$more $long"
version new "$more"

start old
password=$(grep -o 'password [a-z2-9-]*' "$place/log" | cut -d ' ' -f 2)
read -r tag found reminder < <(grep -E '^(Tag page|Found page|Reminder) ' "$place/log" | grep -o 'http[^ ]*' | tr '\n' ' ')
sign_in > /dev/null
add_string "Kept Twelve" > /dev/null
expect "entered in the old version" "$(has_string "Kept Twelve")" 1
before=$(pages)
stop
at_first=$(records)

said=$(refusal failing)
expect "a migration that fails" "$said" "?*"
expect "is told without a stack trace" "$(grep -c '^ *at ' <<< "$said")" 0
expect "and leaves the records as they were" "$(records)" "$at_first"

(cd "$place/slow" && exec ./TagPage.Web demo --urls $at --TagPage:DataFolder="$data") > "$place/log" 2>&1 &
pid=$!
until [ "$(backups | wc -l)" = 2 ] || ! kill -0 $pid 2> /dev/null; do sleep 0.1; done
sleep 3
expect "a migration that is killed with -9 was still at it" "$(kill -9 $pid && echo killed)" killed
wait $pid 2> /dev/null; pid=
start old && expect "the old version starts as if nothing had been" "$(pages)" "$before"
stop

start new
expect "the new version shows the same" "$(pages)" "$before"
sign_in > /dev/null
expect "has what was entered" "$(has_string "Kept Twelve")" 1
add_string "Lost Thirteen" > /dev/null
expect "and takes more" "$(has_string "Lost Thirteen")" 1
stop
expect "it is sound" "$(sound new)" 1
expect "one backup for each of the three tries" "$(backups | wc -l)" 3
upgraded=$(records)

expect "the old version refuses it" "$(refusal old)" "*made by a newer TagPage*"
expect "and leaves it as it was" "$(records)" "$upgraded"

expect "going back with restore" "$("$place/old/TagPage.Web" restore "$(backups | tail -1)" --TagPage:DataFolder="$data" > "$place/log" 2>&1; echo $?)" 0
start old
expect "shows the same" "$(pages)" "$before"
sign_in > /dev/null
expect "has what was entered before the upgrade" "$(has_string "Kept Twelve")" 1
expect "and not what came after" "$(has_string "Lost Thirteen")" 0
stop
expect "it is sound" "$(sound old)" 1

start new && expect "a second upgrade" "$(pages)" "$before"
stop
mkdir "$place/database-before" && mv "$data"/tagpage.db* "$place/database-before/" && cp "$(backups | tail -1)" "$data/tagpage.db"
start old && expect "going back by hand shows the same" "$(pages)" "$before"
stop
expect "it is sound" "$(sound old)" 1
exit $wrong
