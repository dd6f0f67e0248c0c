#!/usr/bin/env bash
# Writes the bill of materials of a published folder into it: bom.json, in CycloneDX 1.6. It names every library with its version, its
# hash and its licence, and .NET where that is packed in. Usage: deploy/bom.sh FOLDER KIND VERSION, after a publish for that kind.
set -euo pipefail
folder=$(realpath "$1") kind=$2 version=$3
cd "$(dirname "$0")/.."

dotnet tool restore > /dev/null
dotnet tool run dotnet-CycloneDX -- src/TagPage.Web/TagPage.Web.csproj --disable-package-restore --runtime "$kind" \
  --set-name TagPage --set-version "$version" --spec-version 1.6 --output-format Json --output "$folder" --filename bom.json > /dev/null

# The maker of the bill sees what the project asks for; .NET itself comes in by the publishing.
runtimes=$(sed -n '/"includedFrameworks"/,/\]/p' "$folder/TagPage.Web.runtimeconfig.json" | tr -d ' \n\r' |
  grep -o '"name":"[^"]*","version":"[^"]*"' | sed 's/"name":"\([^"]*\)","version":"\([^"]*\)"/\1 \2/' || true)
while read -r name its; do
  [ -n "$name" ] || continue
  purl="pkg:nuget/$name.Runtime.$kind@$its"
  sed -i "s|^  \"components\": \[|&\n    {\n      \"type\": \"framework\",\n      \"bom-ref\": \"$purl\",\n      \"name\": \"$name.Runtime.$kind\",\n      \"version\": \"$its\",\n      \"scope\": \"required\",\n      \"licenses\": [{ \"license\": { \"id\": \"MIT\" } }],\n      \"purl\": \"$purl\"\n    },|" "$folder/bom.json"
done <<< "$runtimes"
