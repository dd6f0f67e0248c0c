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

# What travels in files of ours and is no library of the project: the reader for cameras, and the fonts of labels and bills.
add() {
  local name=$1 its=$2 licence=$3 file=$4
  sed -i "s|^  \"components\": \[|&\n    {\n      \"type\": \"file\",\n      \"bom-ref\": \"file:$name\",\n      \"name\": \"$name\",\n      \"version\": \"$its\",\n      \"scope\": \"required\",\n      \"hashes\": [{ \"alg\": \"SHA-256\", \"content\": \"$(sha256sum < "$file" | cut -d ' ' -f 1)\" }],\n      \"licenses\": [{ \"license\": { \"id\": \"$licence\" } }]\n    },|" "$folder/bom.json"
}
reader=$(grep -o 'zxing-wasm [0-9.]*' docs/licences.md | head -1 | cut -d ' ' -f 2)
for file in wwwroot/zxing/*; do add "zxing-wasm/$(basename "$file")" "$reader" MIT "$file"; done
for file in src/TagPage.Labels/Fonts/*.ttf; do add "$(basename "$file")" "as shipped" OFL-1.1 "$file"; done
