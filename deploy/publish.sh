#!/usr/bin/env bash
# Makes what an owner installs: one folder for each kind of machine, packed, with .NET inside and the licences of all that is
# shipped, and a file of check sums. Usage: deploy/publish.sh [FOLDER [KIND...]], by default "release" and all four kinds.
set -euo pipefail
cd "$(dirname "$0")/.."

out=$(realpath -m "${1:-release}")
kinds=("${@:2}")
[ ${#kinds[@]} -gt 0 ] || kinds=(linux-x64 linux-arm64 win-x64 osx-arm64)
version=$(git describe --tags --always --dirty 2> /dev/null || echo unknown)

rm -rf "$out"
mkdir -p "$out"
for kind in "${kinds[@]}"; do
  folder=$out/tagpage-$kind
  dotnet publish src/TagPage.Web -c Release -r "$kind" --self-contained -o "$folder" --nologo -v quiet -p:DebugType=none -p:RestoreLockedMode=true
  echo "$version" > "$folder/VERSION"
  cp deploy/tagpage.service deploy/nginx.conf deploy/apache.conf "$folder/"
  bash deploy/bom.sh "$folder" "$kind" "$version"
  tar -C "$out" -czf "$folder.tar.gz" "tagpage-$kind"
  rm -rf "$folder"
done
(cd "$out" && sha256sum -- *.tar.gz > SHA256SUMS && cat SHA256SUMS)
