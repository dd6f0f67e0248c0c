#!/usr/bin/env bash
# A really full disk, by hand: runs a published program on a small file system of memory, fills that to the last byte, and looks what the
# program says, whether reading goes on, and whether writing comes back by itself. Takes root, for the mount.
# Usage: tests/full-disk.sh FOLDER-OF-THE-PUBLISHED-PROGRAM
set -uo pipefail
program=$(realpath "$1")
place=$(mktemp -d)
at=http://127.0.0.1:5083
mount -t tmpfs -o size=96m tmpfs "$place" || exit 1
(cd "$program" && exec ./TagPage.Web demo --urls $at --TagPage:DataFolder="$place/data") > "$place.log" 2>&1 &
pid=$!
trap 'kill $pid 2> /dev/null; wait $pid 2> /dev/null; umount "$place"; rmdir "$place"; rm -f "$place.log" "$place.jar"' EXIT

answer() { curl -s -o /dev/null -w '%{http_code}' "$at$1"; }
until [ "$(answer /healthz/ready)" = 200 ]; do kill -0 $pid || exit 1; sleep 1; done
until grep -q password "$place.log"; do sleep 1; done
password=$(grep -o 'password [a-z2-9-]*' "$place.log" | cut -d ' ' -f 2)

sign_in() {
  rm -f "$place.jar"
  local token
  token=$(curl -s -c "$place.jar" $at/account/sign-in | grep -o 'name="__RequestVerificationToken"[^>]*value="[^"]*"' | head -1 | sed 's/.*value="//; s/"$//')
  curl -s -b "$place.jar" -o "$place.jar.html" -w '%{http_code} %{redirect_url}' --data-urlencode "__RequestVerificationToken=$token" \
    -d Input.Name=runa --data-urlencode "Input.Password=$password" $at/account/sign-in
}

wrong=0
expect() { if [[ $2 == "$3"* ]]; then echo "ok     $1: $2"; else echo "WRONG  $1: $2 (should be $3)"; wrong=1; fi; }

expect "room to write" "$(sign_in)" "302 $at/shop"
dd if=/dev/zero of="$place/filler" bs=64k 2> /dev/null
expect "full: a sign-in, which writes" "$(sign_in)" 507
expect "full: it says so" "$(grep -o 'The disk is full' "$place.jar.html" | head -1)" "The disk is full"
expect "full: a page that reads" "$(answer /)" 200
expect "full: alive" "$(answer /healthz/live)" 200
rm "$place/filler"
expect "room again, no restart" "$(sign_in)" "302 $at/shop"
rm -f "$place.jar.html"
kill $pid; wait $pid 2> /dev/null
# Read by a program that has it to itself.
expect "the database is sound" "$("$program/TagPage.Web" check --TagPage:DataFolder="$place/data" 2>&1 | grep -c '^✓ Records: .*undamaged')" 1
exit $wrong
