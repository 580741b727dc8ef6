using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>One line of a packing list.</summary>
/// <param name="Battery">The batteries.</param>
/// <param name="Check">What the rules on a single battery say.</param>
/// <param name="Count">How many of them this person carries.</param>
public sealed record PackingLine(PackedBattery Battery, FlightCheck Check, int Count);

/// <summary>How much of a limit on number a person has used.</summary>
/// <param name="What">What is counted, in words.</param>
/// <param name="Used">How many the list has.</param>
/// <param name="Limit">The limit.</param>
public sealed record NumberUsed(string What, int Used, Sourced<int> Limit)
{
    /// <summary>How many more would be within the limit.</summary>
    public int Left => Limit.Value - Used;
}

/// <summary>What one person carries on the flight.</summary>
/// <param name="Traveller">Who.</param>
/// <param name="Lines">The batteries, the largest first.</param>
/// <param name="Numbers">Limits on number that the list touches.</param>
public sealed record PackingList(string Traveller, IReadOnlyList<PackingLine> Lines, IReadOnlyList<NumberUsed> Numbers)
{
    /// <summary>Energy of all batteries of the list.</summary>
    public Energy Energy => Energy.FromWattHours(Lines.Sum(line => line.Count * line.Battery.Rated.Energy.WattHours));
}

/// <summary>Batteries that can't fly with the travellers.</summary>
/// <param name="Battery">The batteries.</param>
/// <param name="Count">How many of them.</param>
/// <param name="StoppedBy">The rule that stops them.</param>
/// <param name="Margin">By how much, in Wh or in number, in words.</param>
/// <param name="Remedy">What can be done.</param>
/// <param name="AsCargo">What they would be as air cargo; null where covering the contacts is all that it takes.</param>
public sealed record LeftBehind(PackedBattery Battery, int Count, Sourced<string> StoppedBy, string Margin, string Remedy,
    CargoCheck? AsCargo);

/// <summary>What the transport rules say of a journey.</summary>
public sealed record TravelAnswer
{
    /// <summary>The journey.</summary>
    public required Journey Journey { get; init; }

    /// <summary>The edition that was used.</summary>
    public required RulesInForce Rules { get; init; }

    /// <summary>A list for each traveller who carries a battery; empty where nobody flies.</summary>
    public IReadOnlyList<PackingList> Lists { get; init; } = [];

    /// <summary>Whether no other share of the same batteries gives the one who carries most fewer watt-hours.</summary>
    public bool ShareProven { get; init; } = true;

    /// <summary>What can't fly with the travellers.</summary>
    public IReadOnlyList<LeftBehind> Left { get; init; } = [];

    /// <summary>The batteries as air cargo; empty unless a leg is cargo.</summary>
    public IReadOnlyList<CargoCheck> Consignment { get; init; } = [];

    /// <summary>The batteries by road; empty unless a leg is road.</summary>
    public IReadOnlyList<RoadCheck> Road { get; init; } = [];

    /// <summary>Lines of the lists that need the airline's approval beforehand.</summary>
    public IEnumerable<(string Traveller, PackingLine Line)> Approvals =>
        Lists.SelectMany(list => list.Lines.Where(line => line.Check.NeedsApproval).Select(line => (list.Traveller, line)));

    /// <summary>Whether everything goes as it is packed, on every leg, given the approvals.</summary>
    public bool EverythingGoes => Left.Count == 0 && Consignment.All(line => line.StoppedBy is null);
}
