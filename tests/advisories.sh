#!/usr/bin/env bash
# Says which of the packages have known advisories, or that nobody could be asked. It judges nothing: whether yesterday's clone is
# tested must not hang on today's network or on an advisory of today. Usage: tests/advisories.sh, after a restore.
cd "$(dirname "$0")/.." || exit 0
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1

config=$(mktemp --suffix .config)
trap 'rm -f "$config"' EXIT

# Sources that packages come from are not complained about when they know no advisories; those that are to be asked for them are.
entries=$(dotnet nuget list source --format Short | sed -n 's/^E[A-Z]* //p' | sed 's/&/\&amp;/g; s/"/\&quot;/g; s/.*/<add key="&" value="&" \/>/')
printf '<configuration><packageSources><clear />%s</packageSources><auditSources><clear />%s</auditSources></configuration>' "$entries" "$entries" > "$config"

said=$(timeout 120 dotnet list TagPage.sln package --vulnerable --include-transitive --no-restore --config "$config" 2>&1)
code=$?
found=$(grep -E '^ +> |has the following vulnerable' <<< "$said")
if [ -n "$found" ]; then
  echo "Advisories about packages, published where they come from:"
  echo "$found"
elif [ "$code" != 0 ] || [ "$(grep -c 'did not provide any vulnerability data' <<< "$said")" -ge "$(grep -c . <<< "$entries")" ]; then
  echo "Advisories: no source of them answered, so nothing is known about these packages."
else
  echo "Advisories: none about any of these packages."
fi
exit 0
