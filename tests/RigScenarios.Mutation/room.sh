#!/usr/bin/env bash
# Mutation testing of one room: room.sh Wiring [Simulation ...]. The first name is the room whose code is changed, one place at a
# time; the tests and checks of all the rooms named are run against each change. The report: artifacts/mutation/ROOM.
# A large room takes hours: `Every=4 room.sh Balance` changes every fourth block of 20 lines of each file, which is an even sample.
# Words are left alone (snapshots of the commands hold them). A change in a table that is made once, when the program starts, is
# told as survived: the tests' process has it already.
set -euo pipefail
cd "$(dirname "$0")"
room=${1:?name a folder of src/RigScenarios, for instance: room.sh Loads Balance}
Rooms=$(IFS=+; echo "$*")
export Rooms DOTNET_NOLOGO=1

# Places are told in characters from the start of a file.
sampled() {
  find "../../src/RigScenarios/$room" -name '*.cs' | sort | while read -r file; do
    awk -v every="$1" -v file="**/src/RigScenarios/$room/${file##*"/$room/"}" '
      (NR - 1) % 20 == 0 { block++; from = at }
      { at += length($0) + 1; chosen = (block - 1 + shift) % every == 0 }
      FNR == 1 { shift = length(file) % every; chosen = (block - 1 + shift) % every == 0 }
      chosen && NR % 20 == 0 { spans = spans "{" from ".." at "}"; from = at }
      END { if (chosen && from < at) spans = spans "{" from ".." at "}"; if (spans) print file spans }' "$file"
  done
}

changed=(--mutate "**/src/RigScenarios/$room/**/*.cs")
if [ "${Every:-1}" -gt 1 ]; then
  changed=()
  while read -r place; do changed+=(--mutate "$place"); done < <(sampled "$Every")
fi
dotnet tool restore
dotnet stryker --test-runner mtp --configuration Release --project RigScenarios.csproj \
  "${changed[@]}" --reporter Json --reporter Html --reporter Dots \
  --output "../../artifacts/mutation/$room" --skip-version-check
