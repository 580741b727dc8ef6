using CsCheck;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

public sealed class OwnFiguresTests
{
    private static readonly Gen<double?> Maybe = Gen.OneOf(Gen.Const((double?)null),
        Gen.Int[1, 400].Select(tenths => (double?)(tenths / 10.0)));

    private static readonly Gen<(RigRole Role, OwnFigures Own)> Any =
        Gen.Select(Gen.Enum<RigRole>(), Maybe.Array[9],
            Gen.Int[0, 8].Select(index => ((double[])[5, 7.2, 7.4, 9, 11.1, 12, 14.4, 14.8, 24])[index]),
            (role, figures, label) => (role, new OwnFigures
        {
            Name = "Mine",
            Power = figures[0] is { } power ? Power.FromWatts(power) : null,
            Standby = figures[1] is { } standby ? Power.FromWatts(standby) : null,
            Voltage = figures[2] is null ? null : ElectricPotential.FromVolts(label),
            Current = figures[3] is { } current ? ElectricCurrent.FromAmperes(current / 10) : null,
            Energy = figures[4] is { } energy ? Energy.FromWattHours(energy) : null,
            Mass = figures[5] is { } mass ? Mass.FromGrams(mass) : null,
            MinimumVoltage = figures[6] is { } low ? ElectricPotential.FromVolts(low / 4) : null,
            MaximumVoltage = figures[7] is { } high ? ElectricPotential.FromVolts(11 + high) : null,
            OutputVoltage = figures[8] is { } output ? ElectricPotential.FromVolts(output) : null,
        }));

    [Fact]
    public void The_figures_of_a_part_made_from_figures_make_the_same_part_again()
    {
        Any.Where(one => RigQuestions.StillNeeded(one.Role, one.Own).Count == 0).Holds(
            one =>
            {
                var part = OwnPart.From(one.Role, one.Own);
                var again = OwnPart.From(one.Role, OwnPart.FiguresOf(one.Role, part));
                return Same(part, again) && ReferenceEquals(part,
                    OwnPart.Changed(one.Role, part, OwnPart.FiguresOf(one.Role, part)));
            },
            cases: 2000);
    }

    [Fact]
    public void A_part_made_from_figures_passes_the_check_of_parts()
    {
        Any.Where(one => RigQuestions.StillNeeded(one.Role, one.Own).Count == 0 && one.Role != RigRole.Regulator).Holds(
            one =>
            {
                var log = new ReadLog("");
                PartCheck.Run(OrderedMap<Part>.Empty.With("own-it", OwnPart.From(one.Role, one.Own)), "parts", log);
                return !log.HasErrors;
            },
            cases: 2000);
    }

    [Fact]
    public void Changing_a_figure_keeps_what_the_form_does_not_speak_of()
    {
        var own = new OwnFigures { Name = "Brick", Energy = Energy.FromWattHours(98) };
        var part = OwnPart.From(RigRole.Battery, own) with { Note = "Bought used.", Buy = new Money(90, "EUR") };
        part = part with { Battery = part.Battery! with { Capacity = ElectricCharge.FromAmpereHours(6.1), Chemistry = "nmc" } };
        var changed = OwnPart.Changed(RigRole.Battery, part, own with { Mass = Mass.FromGrams(640) });
        Assert.Equal(part with { Mass = Mass.FromGrams(640), Assumed = changed.Assumed }, changed);
        Assert.Equal(["battery.voltage"], changed.Assumed);
    }

    [Theory]
    [InlineData(14.4, 12, 16.8)]
    [InlineData(7.4, 6, 8.4)]
    [InlineData(12, 10.8, 13.2)]
    [InlineData(5, 4.5, 5.5)]
    public void A_label_voltage_stands_for_a_pack_or_for_a_steady_supply(double label, double least, double most)
    {
        var (low, high) = OwnDefaults.Window(ElectricPotential.FromVolts(label));
        Assert.Equal((least, most), (low.Volts, high.Volts));
    }

    [Fact]
    public void Every_default_stands_on_the_page_with_its_reason()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "own-rig.md"));
        foreach (var role in Enum.GetValues<RigRole>().Where(role => role != RigRole.Battery))
            Assert.Contains($"{OwnDefaults.MassOf(role, null).Grams:0} g", page, StringComparison.Ordinal);
        foreach (var text in (string[])["volts of a battery | 14.4 V", "own draw of a plate | 0.3 W",
            "efficiency of a regulator | 85 %", "own draw of a regulator | 0.3 W", "input of a regulator | 11.2 to 16.8 V",
            "140 Wh/kg", "common practice, no source"])
            Assert.Contains(text, page, StringComparison.Ordinal);
        Assert.Equal("14.4 V 0.3 W 0.3 W 85 % 11.2 V 16.8 V",
            string.Join(' ',
            ((IQuantity[])[OwnDefaults.BatteryVoltage, OwnDefaults.PlateOwnDraw, OwnDefaults.RegulatorOwnDraw,
            OwnDefaults.RegulatorEfficiency, OwnDefaults.RegulatorInputMinimum,
            OwnDefaults.RegulatorInputMaximum]).Select(QuantityText.Write)));
        // 140 Wh/kg: 98 Wh weigh 700 g.
        Assert.Equal(700, OwnDefaults.MassOf(RigRole.Battery, Energy.FromWattHours(98)).Grams);
    }

    [Theory]
    [InlineData("assumed: [mass, power.record]", null)]
    [InlineData("assumed: [mas]", "mass")]
    [InlineData("assumed: [power.standby]", null)]
    public void A_part_can_only_assume_a_figure_that_it_has(string line, string? nearest)
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("parts.yaml",
            $"rigscenarios: parts 1\nparts:\n  m:\n    kind: monitor\n    name: M\n    mass: 300 g\n    power: {{record: 9 "
                + $"W}}\n    {line}\n");
        var problems = ScenarioFile.CheckParts(file);
        if (line.Contains("record", StringComparison.Ordinal))
        {
            Assert.Empty(problems);
            return;
        }
        Assert.Equal("parts.m.assumed.1", Assert.Single(problems).Path);
        Assert.Equal(nearest, problems[0].Nearest);
    }

    private static bool Same(Part one, Part other) =>
        one.Assumed.SequenceEqual(other.Assumed) && one with { Assumed = [] } == other with { Assumed = [] };
}
