using RigScenarios.Balance;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases.Balance;

/// <summary>One rig of a balance case file, with what is asked about it.</summary>
internal sealed record BalanceCase(
    string Id,
    PlacedBuild Build,
    IReadOnlyList<string> Removable,
    FluidHead Head,
    ShoulderQuestion? Shoulder,
    StandQuestion? Stand,
    IReadOnlyList<PlaceQuestion> Places,
    EnvelopeQuestion? Envelope);

internal sealed record ShoulderQuestion(ShoulderSupport Support, Length CounterweightAt);

internal sealed record StandQuestion(
    Stand Stand, Angle Slope, IReadOnlyList<Angle> Pans, Length ForceHeight, Wind Wind, Length BallastHeight, Angle WantedTip);

internal sealed record PlaceQuestion(string Part, LengthRange Range, Length CentreX);

internal sealed record EnvelopeQuestion(
    RigVariable First, RigVariable Second, IReadOnlyList<IQuantity> FirstValues,
    IReadOnlyList<(IQuantity First, IQuantity Second)> Points);
