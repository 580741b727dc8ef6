using System.Globalization;
using RigScenarios.Batteries;
using RigScenarios.Builds;
using RigScenarios.Costs;
using RigScenarios.Numerics;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Answers.Exercises;

/// <summary>What makes the day end early: batteries that hold less, things that take more.</summary>
internal static class PowerCauses
{
    // Degrees, the mildest first.
    private static readonly int[] CapacitiesPercent = [84, 76, 68, 60, 52, 44];

    private static readonly int[] ChargesPercent = [82, 72, 62, 52, 42];

    private const string Look = "Look at the question of power: does the rig take more than it should, or does it get less?";

    /// <summary>A pause that is worth leaving something on in.</summary>
    private static readonly Duration Pause = Duration.FromMinutes(10);

    private static readonly Temperature Cool = Temperature.FromDegreesCelsius(10);

    public static IEnumerable<CauseToTry> Of(RigAnswer sound, SeededSequence draws) =>
        [.. Batteries(sound, draws), .. LeftOn(sound), .. Hungrier(sound), .. Regulators(sound)];

    private static IEnumerable<CauseToTry> Batteries(RigAnswer sound, SeededSequence draws)
    {
        var scenario = sound.Scenario;
        if (scenario.Batteries.Count > 0)
        {
            foreach (var (name, battery) in scenario.Batteries)
            {
                yield return Worn($"batteries.{name}", name, battery.Item, sound, scenario.AgeOf(battery), draws);
                yield return NotCharged($"batteries.{name}", name, battery.Charge, draws);
            }
            yield break;
        }
        var own = sound.TheBuild.Battery;
        yield return Worn($"builds.{sound.Build}.battery", own.Item, own.Item, sound, scenario.AgeOf(own), draws);
        yield return NotCharged($"builds.{sound.Build}.battery", own.Item, own.Charge, draws);
        if (scenario.ColdestAir is { } air && air < Cool)
            yield return new("warmth", QuestionKind.Power, [Cold(sound, own, air, 0), Cold(sound, own, air, 8)]);
    }

    // Capacity and resistance go together along the usual line, so that the battery is one that there could be.
    private static CauseToTry Worn(string path, string name, string item, RigAnswer sound, KnownAge age, SeededSequence draws)
    {
        var (part, price) = (sound.Scenario.PartOf(item)!, NewThing.Of(sound.Scenario, item).Each);
        var (slot, off) = ($"age of {name}", draws.Below(4));
        var now = age.CapacityLeft?.Percent ?? 100;
        var thing = LimitSentences.Element(name);
        return new(slot, QuestionKind.Power, [.. CapacitiesPercent.Select(left => left - off)
            .Where(left => left < now - 5).Select(left =>
            {
                var growth = (1 + (0.025 * (100 - left))).ToString("0.0", CultureInfo.InvariantCulture);
                return new PlantedCause
                {
                    Slot = slot, Kind = CauseKind.WornBattery,
                    Words = $"The {thing} is worn: {left} % of its capacity is left, and it has {growth} times the resistance "
                        + "of a new one.",
                    Settings = [new($"{path}.capacity-left", $"{left} %"), new($"{path}.resistance-growth", growth)],
                    Repair = new($"Take a new {part.Name} in place of the {thing}", [new($"{path}.capacity-left", "100 %"),
                        new($"{path}.resistance-growth", "1")], ChangeEffort.Buy, slot) { Price = price },
                    Hints = [Look, $"Look at the {thing}: does it hold what its label says?",
                        $"Compare {path}.capacity-left with a new one's 100 %: how many watt-hours are left of the label's?"],
                };
            })]);
    }

    private static CauseToTry NotCharged(string path, string name, Ratio? charge, SeededSequence draws)
    {
        var (slot, off, thing) = ($"charge of {name}", draws.Below(5), LimitSentences.Element(name));
        return new(slot, QuestionKind.Power, charge is { Percent: < 99 } ? [] : [.. ChargesPercent
            .Select(left => left - off).Select(left => new PlantedCause
            {
                Slot = slot, Kind = CauseKind.ChargeForgotten,
                Words = $"The {thing} is not charged: it begins the day at {left} %.",
                Settings = [new($"{path}.charge", $"{left} %")],
                Repair = new($"Charge the {thing} fully before the day", [new($"{path}.charge", "100 %")], ChangeEffort.Nothing,
                    slot),
                Hints = [Look, $"Look at the {thing}: with how much does it begin the day?",
                    $"What does {path}.charge say, and who would have seen to it the evening before?"],
            })]);
    }

    private static PlantedCause Cold(RigAnswer sound, BatteryInUse battery, Temperature air, double colder)
    {
        var (path, celsius) = ($"builds.{sound.Build}.battery.start-temperature", air.DegreesCelsius - colder);
        var was = battery.StartTemperature is { } start ? BatteryChanges.Text(start.DegreesCelsius, "°C") : "20 °C";
        return new()
        {
            Slot = "warmth", Kind = CauseKind.ColdBattery,
            Words = $"The {LimitSentences.Element(battery.Item)} was left in the cold: it begins the day at {celsius:0.#} °C.",
            Settings = [new(path, BatteryChanges.Text(celsius, "°C"))],
            Repair = new($"Keep the battery at {was}, in an inner pocket, until it goes on", [new(path, was)],
                ChangeEffort.Nothing, "warmth"),
            Hints = [Look, "Look at the battery: where did it spend the night?",
                $"What does {path} say, and what does the cold do to the resistance of a cell?"],
        };
    }

    /// <summary>Devices on standby in every pause in which they are meant to be off.</summary>
    private static IEnumerable<CauseToTry> LeftOn(RigAnswer sound)
    {
        foreach (var (name, _) in sound.TheBuild.Devices)
        {
            var pauses = (from day in sound.Days.Distinct()
                          from block in sound.Scenario.Days[day].Blocks
                          where block.Value.StateOf(name) == PowerState.Off && block.Value.Length >= Pause
                          select (Path: $"days.{day}.blocks.{block.Key}.states.{name}", Block: block.Value, block.Key)).ToList();
            if (pauses.Count == 0)
                continue;
            var (slot, thing) = ($"state of {name}", LimitSentences.Element(name));
            var length = AnswerTimes.Length(Duration.FromSeconds(pauses.Sum(pause => pause.Block.Length.Seconds)));
            yield return new(slot, QuestionKind.Power,
            [
                new()
                {
                    Slot = slot, Kind = CauseKind.LeftOn,
                    Words = $"The {thing} is left on while nothing is shot: {length} on standby ("
                        + $"{string.Join(", ", pauses.Select(pause => $"\"{pause.Block.Title ?? pause.Key}\""))}).",
                    Settings = [.. pauses.Select(pause => new FieldSetting(pause.Path, "standby"))],
                    Repair = new($"Switch the {thing} off in those pauses",
                        [.. pauses.Select(pause => new FieldSetting(pause.Path, "off"))], ChangeEffort.Nothing, slot),
                    Hints = [Look, "Look at the blocks of the day: what is on in them that nobody needs?",
                        $"Look at the {thing} in the pauses: how long is it on, and what does it draw then?"],
                },
            ]);
        }
    }

    /// <summary>A monitor or a transmitter that draws more than the one that was planned.</summary>
    private static IEnumerable<CauseToTry> Hungrier(RigAnswer sound)
    {
        foreach (var name in sound.TheBuild.Devices.Keys.Where(name => CausesToTry.MayHaveSpare(sound.Scenario, name)))
        {
            var part = sound.Scenario.PartOf(name)!;
            if (part.Kind is not (PartKind.Monitor or PartKind.Transmitter) || part.Power?.Record is not { } draw)
                continue;
            var (slot, thing) = ($"part {name}", LimitSentences.Element(name));
            yield return new(slot, QuestionKind.Power,
            [
                .. CausesToTry.Others(sound.Scenario, name)
                    .Where(other => other.Part.Power?.Record is { } more && more.Watts > draw.Watts)
                    .OrderBy(other => other.Part.Power!.Record!.Value.Watts)
                    .Select(other => CausesToTry.Exchanged(sound, name, (slot, CauseKind.HungryDevice), other.Id,
                        $"A {other.Part.Name} is on the rig as {thing}: it draws {other.Part.Power!.Record!.Value.Watts:0.#} W, "
                            + $"the {part.Name} that was planned {draw.Watts:0.#} W.",
                        [Look, $"Look at what each device draws: which one takes more than one of its kind has to?",
                            $"Compare the {thing} with the others of its kind in the parts library and in the kit."])),
            ]);
        }
    }

    /// <summary>A regulator that wastes more and stops earlier.</summary>
    private static IEnumerable<CauseToTry> Regulators(RigAnswer sound)
    {
        foreach (var name in sound.TheBuild.Regulators.Keys)
        {
            var (part, slot) = (sound.Scenario.PartOf(name)!, $"part {name}");
            var thing = LimitSentences.Element(name);
            if (part.Regulator is not { } data)
                continue;
            yield return new(slot, QuestionKind.Power,
            [
                .. CausesToTry.Others(sound.Scenario, name).Where(other => other.Part.Regulator is { } worse
                        && Math.Abs(worse.OutputVoltage.Volts - data.OutputVoltage.Volts) < 1
                        && worse.InputMinimum > data.InputMinimum)
                    .OrderBy(other => other.Part.Regulator!.InputMinimum.Volts)
                    .Select(other => CausesToTry.Replaced(sound, name, (slot, CauseKind.EarlyRegulator), other.Id,
                        $"The {thing} is a {other.Part.Name}, which stops below {other.Part.Regulator!.InputMinimum.Volts:0.#} "
                            + $"V at its inlet; a {part.Name} runs down to {data.InputMinimum.Volts:0.#} V.",
                        [Look, $"Look at what is between the battery and the camera: what does each part need to go on?",
                            $"Compare the least input voltage of the {thing} with the voltage of the battery near its end."])),
            ]);
        }
    }
}
