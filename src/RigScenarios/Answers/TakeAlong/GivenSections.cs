using RigScenarios.Builds;
using RigScenarios.Days;
using UnitsNet;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>What an estimate starts from: batteries, what devices draw, the blocks of the days, masses and places. All of it was
/// given or is a part's own figure.</summary>
internal static class GivenSections
{
    public static IEnumerable<SheetSection> Of(RigAnswer answer)
    {
        yield return Batteries(answer);
        yield return Devices(answer);
        for (var i = 0; i < answer.Plan.Days.Count; i++)
            yield return Blocks(answer, answer.Plan.Days[i], i);
        if (answer.Balance is not null)
            yield return Masses(answer);
    }

    private static SheetSection Batteries(RigAnswer answer) => new("Batteries", SheetForm.Table,
        [.. answer.Plan.Batteries.Select(battery => new[]
        {
            SheetWords.Thing(battery.Key), $"{battery.Value.Part.Battery!.Voltage.Volts:0.#}",
            battery.Value.Part.Battery.Energy.WattHours is > 0 and var energy ? $"{energy:0.#}" : "not given",
            $"{battery.Value.Charge.Percent:0}",
            battery.Value.KnownAge.CapacityLeft is { } left ? $"{left.Percent:0}" : "not given",
        })])
    {
        Columns = ["Battery", "V", "Wh", "Charged, %", "Capacity left, %"], GoesAs = 4, Things = "batteries",
        Note = string.Join(" ", ChargerWords.Given(answer.Plan)),
    };

    private static SheetSection Devices(RigAnswer answer) => new("What draws power", SheetForm.Table,
        [.. answer.Powered.Devices.Select(device => new[]
        {
            (device.Value.Count > 1 ? $"{device.Value.Count} × " : "") + SheetWords.Thing(device.Key),
            Watts(device.Value.Draw.Standby), Watts(device.Value.Draw.Record),
            device.Value.Voltage?.Minimum is { } least ? $"{least.Volts:0.##}" : "not given",
            device.Value.Essential ? "yes" : "",
        })])
    {
        Columns = ["Device", "Standby, W", "Recording, W", "Least, V", "Essential"], GoesAs = 5, Keeps = 6,
        Things = "devices",
    };

    private static SheetSection Blocks(RigAnswer answer, ShootingDay day, int number) => new(
        answer.Plan.Days.Count > 1 ? $"Blocks of day {number + 1}" : "Blocks of the day", SheetForm.Table,
        [.. day.Blocks.Values.Select((block, i) => new[]
        {
            block.Title ?? day.Blocks.Keys.ElementAt(i), AnswerTimes.Length(block.Length), States(answer.TheBuild, block),
        })])
    {
        Columns = ["Block", "Length", "What runs"], GoesAs = 2, Keeps = 3, Things = $"blocks of day {number + 1}",
    };

    private static SheetSection Masses(RigAnswer answer) => new("Masses and places, mm", SheetForm.Table,
        [.. answer.Balance!.Rig.Places.OrderByDescending(place => answer.Balance.Rig.Things[place.Key].Mass?.Kilograms ?? 0)
            .Select(place => new[]
        {
            SheetWords.Thing(place.Key),
            answer.Balance.Rig.Things[place.Key].Mass is { } mass ? $"{mass.Kilograms:0.00}" : "not given",
            PlaceSections.On(place.Value), SheetWords.Millimetres(place.Value.Forward),
            SheetWords.Millimetres(place.Value.Left), SheetWords.Millimetres(place.Value.Up),
        })])
    {
        Columns = ["Part", "kg", "On", "Forward", "Left", "Up"], GoesAs = 1, Keeps = 5, Things = "masses and places",
    };

    private static string Watts(Power? power) => power is { } known ? $"{(double)known.Watts:0.#}" : "not given";

    /// <summary>What runs in a block, and its takes.</summary>
    internal static string States(Build build, DayBlock block)
    {
        var groups = build.Devices.Keys.GroupBy(block.StateOf).Where(group => group.Key != PowerState.Off)
            .OrderByDescending(group => group.Key)
            .Select(group => group.Count() == build.Devices.Count ? $"all {SheetWords.State(group.Key)}"
                : $"{SheetWords.State(group.Key)}: {string.Join(", ", group.Select(SheetWords.Thing))}").ToList();
        var cycle = block.Cycle is { } takes
            ? $"; takes of {AnswerTimes.Length(takes.Take)}, resets of {AnswerTimes.Length(takes.Reset)}" : "";
        return groups.Count == 0 ? "all off" : string.Join("; ", groups) + cycle;
    }
}
