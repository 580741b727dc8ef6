using RigScenarios.Batteries;
using RigScenarios.Parts;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>A network at one voltage.</summary>
internal sealed record StaticNetworkCase(string Id, WiringNetwork Network, ElectricPotential Terminals,
    OrderedMap<string> States);

/// <summary>A pack's run through a network.</summary>
internal sealed record NetworkRunCase(
    string Id, WiringNetwork Network, Pack Pack, Temperature Ambient, DischargeStart Start, IReadOnlyList<WiringBlock> Blocks,
    DischargeOptions Options);

/// <summary>A file of network cases.</summary>
internal sealed record NetworkCaseFile(IReadOnlyList<StaticNetworkCase> Static, IReadOnlyList<NetworkRunCase> Runs);
