using CsCheck;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Files.Editing;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

public sealed class OwnPartTests
{
    /// <summary>A thing of each question with any of its figures.</summary>
    private static readonly Gen<(RigQuestion Question, MapNode Given)> Any =
        Gen.Select(Gen.Int[0, RigQuestions.All.Count - 1], Gen.Bool.Array[30], Gen.Double[0.2, 1], (index, said, part) =>
        {
            var question = RigQuestions.All[index];
            var given = (MapNode)PartFormat.Whole.Write(new Part { Kind = question.OwnKind, Name = "Mine" });
            foreach (var (figure, _) in LabelQuestions.Of(question.Key).Zip(said).Where(pair => pair.Second
                || pair.First.Needed.Contains(question.Key)))
                given = GivenTree.With(given, figure.Path, Drawn(figure, part));
            return (question, given);
        });

    [Fact]
    public void What_is_given_of_a_completed_part_is_what_was_given() => Any.Holds(
        one => TreeDifference.Same(Said(one.Given), Said(OwnPart.Given(OwnPart.Complete(one.Given)))), cases: 2000);

    [Fact]
    public void A_completed_part_passes_the_check_of_parts() => Any.Holds(
        one =>
        {
            var log = new ReadLog("");
            PartCheck.Run(OrderedMap<Part>.Empty.With("own-it", OwnPart.Complete(one.Given)), "parts", log);
            return !log.HasErrors;
        },
        cases: 2000);

    [Fact]
    public void A_marked_figure_that_somebody_changed_in_the_file_stays_as_it_is()
    {
        var part = OwnPart.Complete(GivenTree.With(GivenTree.With(new MapNode([], TextPlace.None), "kind", "monitor"),
            "power.record", "9 W")) with { Mass = Mass.FromGrams(431), Note = "Bought used." };
        Assert.Equal(PartFormat.Whole.Write(part).ToString(), OwnPart.Given(part).ToString());
        Assert.Equal(431, OwnPart.Complete(OwnPart.Given(part)).Mass!.Value.Grams);
    }

    [Fact]
    public void What_is_measured_goes_before_what_is_assumed()
    {
        var given = GivenTree.With(new MapNode([], TextPlace.None), "kind", "battery");
        given = GivenTree.With(GivenTree.With(given, "battery.energy", "98 Wh"), "battery.capacity", "6.1 Ah");
        var part = OwnPart.Complete(GivenTree.With(given, "mass", "640 g"));
        Assert.Equal(["battery.voltage"], part.Assumed);
        Assert.Equal((640, 6.1, 14.4), (part.Mass!.Value.Grams, part.Battery!.Capacity!.Value.AmpereHours,
            part.Battery.Voltage.Volts));
    }

    [Theory]
    [InlineData(14.4, 12, 16.8)]
    [InlineData(7.4, 6, 8.4)]
    [InlineData(12, 10.8, 13.2)]
    [InlineData(5, 4.5, 5.5)]
    public void A_label_voltage_stands_for_a_battery_or_for_a_steady_supply(double label, double least, double most)
    {
        var (low, high) = OwnDefaults.Window(ElectricPotential.FromVolts(label));
        Assert.Equal((least, most), (low.Volts, high.Volts));
    }

    [Fact]
    public void Every_default_stands_on_the_page_with_its_reason()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "own-rig.md"));
        foreach (var kind in RigQuestions.All.Select(question => question.OwnKind).Where(kind => kind != PartKind.Battery))
            Assert.Contains($"{OwnDefaults.MassOf(new Part { Kind = kind })!.Value.Grams:0} g", page, StringComparison.Ordinal);
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
        Assert.Equal(700, OwnDefaults.MassOf(new Part { Kind = PartKind.Battery,
            Battery = new Battery { Energy = Energy.FromWattHours(98), Voltage = OwnDefaults.BatteryVoltage } })!.Value.Grams);
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

    /// <summary>A figure about as large as its example; least voltages below greatest ones.</summary>
    private static string Drawn(LabelQuestion figure, double part)
    {
        if (figure.Choices.Count > 0)
            return figure.Choices[(int)(part * 2.9)].Text;
        if (figure.Unit.Length == 0)
            return figure.Example;
        var number = double.Parse(figure.Example.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        var factor = figure.Path.EndsWith("maximum", StringComparison.Ordinal) ? 1 + part : part;
        return FormattableString.Invariant($"{Math.Round(number * factor, 2)} {figure.Unit}");
    }

    /// <summary>What it says, whatever its order and spelling.</summary>
    private static FileNode Said(FileNode given)
    {
        PartFormat.Whole.TryRead(given, "", new ReadLog(""), out var part);
        return PartFormat.Whole.Write(part!);
    }
}
