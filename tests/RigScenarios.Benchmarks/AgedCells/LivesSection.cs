using System.Globalization;
using System.Text;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The part of docs/aging.md with usual lives by every set of the band.</summary>
internal static class LivesSection
{
    private static readonly (StoragePlace Place, Kept Kept)[] Habits =
        [(StoragePlace.Fridge, Kept.Half), (StoragePlace.Room, Kept.Half), (StoragePlace.Room, Kept.Full),
            (StoragePlace.WarmStore, Kept.Full)];

    private static readonly Duration ThreeYears = Duration.FromDays(3 * 365.25);

    public static void Write(StringBuilder text)
    {
        text.Append("""

            ## Years

            Two shoots a month that empty half of it, by each set: years until 80 % of the capacity is left, and what is left
            after three. 80 % is the convention at which a battery is replaced; earlier, where it no longer carries the day.
            Beyond 40 years no time is told.

            | kept |
            """);
        foreach (var set in AgingSets.BandFor(AgingSets.Nmc))
            text.Append(CultureInfo.InvariantCulture, $" {set.Name} |");
        text.Append("\n| --- | --- | --- | --- |\n");
        foreach (var (place, kept) in Habits)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {place.Word}, {kept.Word} |");
            var said = LifeInWords.Usual with { Place = place, Kept = kept };
            foreach (var life in AgingBand.Of(AgingSets.Nmc, [], said.Use(ThreeYears)).Lives)
            {
                text.Append(CultureInfo.InvariantCulture,
                    $" {Years(life)} ({life.After(ThreeYears).CapacityLeft.DecimalFractions:0.000}) |");
            }

            text.Append('\n');
        }

        var usual = AgingBand.Of(AgingSets.Nmc, [LifeInWords.Usual.Use(ThreeYears)]);
        var age = usual.Lives[0].Age;
        text.Append('\n').Append(AgedCellsPage.Wrapped(
            $"A battery of whose age nothing is said is taken as new, and the answer says so with one line: three years in a "
            + "room, full, two shoots a month, half emptied, leave "
            + $"{age.CapacityLeft.DecimalFractions:0.000} of the capacity ({usual.Least.DecimalFractions:0.00} to "
            + $"{usual.Greatest.DecimalFractions:0.00} over the sets) and make the resistance {age.ResistanceFactor:0.00} times "
            + "that of the new one."));
    }

    private static string Years(LifeResult life) => life.TimeTo(LifeResult.Replaced) is { } time
        ? (time.Days / 365.25).ToString(time.Days < 3652.5 ? "0.0" : "0", CultureInfo.InvariantCulture) : "over 40";
}
