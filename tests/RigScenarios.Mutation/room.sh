#!/usr/bin/env bash
# Mutation testing of one room: room.sh Wiring [Simulation ...]. The first name is the room whose code is changed, one place at a
# time; the tests and checks of all the rooms named are run against each change. The report: artifacts/mutation/ROOM.
# Words are left alone (snapshots of the commands hold them). A change in a table that is made once, when the program starts, is
# told as survived: the tests' process has it already.
set -euo pipefail
cd "$(dirname "$0")"
room=${1:?name a folder of src/RigScenarios, for instance: room.sh Loads Balance}
Rooms=$(IFS=+; echo "$*")
export Rooms DOTNET_NOLOGO=1
dotnet tool restore
dotnet stryker --test-runner mtp --configuration Release --project RigScenarios.csproj \
  --mutate "**/src/RigScenarios/$room/**/*.cs" --reporter Json --reporter Html --reporter Dots \
  --output "../../artifacts/mutation/$room" --skip-version-check
