using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Limits;

namespace RigScenarios.Tests.Drafts;

/// <summary>Three figures of each label are enough for a first answer that is never nonsense.</summary>
public sealed class LabelledRigTests
{
    // A body of 24 W labelled 14.4 V, a heavy prime, a 7-inch monitor, a battery of 98 Wh with 80 % left, a night at -5 °C.
    private static readonly GivenRig Night = Drafting.Blank.With(TypicalDays.All.First(day => day.Key == "night-in-the-cold"))
        .AndOwn("camera", ("label.voltage", "14.4 V"), ("power.record", "24 W"), ("mass", "1100 g"))
        .AndOwn("battery", ("battery.energy", "98 Wh"), ("mass", "700 g"))
        .AndOwn("lens", ("mass", "1900 g"))
        .AndOwn("monitor", ("label.voltage", "12 V"), ("power.record", "18 W"), ("mass", "520 g"))
        .Set("capacity-left", "80 %").Set("ambient", "-5 °C");

    [Fact]
    public void The_first_answer_of_a_night_is_a_plausible_number_of_minutes()
    {
        var answer = Drafting.Answer(Night.Set("blocks", null));
        Assert.Empty(answer.Problems);
        // 98 Wh x 80 % = 78 Wh; with about 90 % of it usable at -5 °C, and 24 W + 18 W / 0.93 = 43 W with the regulator's loss:
        // 98 min; the least voltage and the cold resistance end it before that. Common practice, no source.
        Assert.InRange(answer.Answer!.Simulation.Runtime.Minutes, 60, 100);
        var ofNight = Drafting.Answer(Night);
        Assert.Equal(Verdict.Fails, ofNight.Answer!.Verdict);
        Assert.NotNull(ofNight.Scenario);
        Assert.InRange(ofNight.Answer.Simulation.Runtime.Minutes, 60, 150);
    }

    [Fact]
    public void The_body_hangs_on_the_battery_and_the_monitor_on_a_regulator() =>
        Assert.Equal([("camera", "battery"), ("monitor", "regulator-12v"), ("regulator-12v", "battery")],
            Drafting.Answer(Night).Wiring.Select(line => (line.Thing, line.FedBy)));

    [Fact]
    public void A_lower_least_voltage_from_a_data_sheet_lasts_longer()
    {
        var assumed = Drafting.Answer(Night.Set("blocks", null)).Answer!.Simulation.Runtime;
        var read = Drafting.Answer(Night.Set("blocks", null).With("parts.own-camera.voltage.minimum", "11 V"))
            .Answer!.Simulation.Runtime;
        Assert.InRange(read.Minutes - assumed.Minutes, 0.5, 30);
    }

    [Fact]
    public void What_of_the_label_was_made_of_which_figure_stands_in_the_file()
    {
        var part = Night.Whole().Parts["own-camera"];
        Assert.Equal(14.4, part.Label!.Voltage!.Value.Volts);
        Assert.Equal(["power.standby", "voltage.minimum", "voltage.maximum"], part.Assumed);
        Assert.Contains(Drafting.Answer(Night).Assumed, value => value.Field == "parts.own-camera.voltage.minimum"
            && value.Why.Contains("14.4 V on its label", StringComparison.Ordinal));
        Assert.Equal(["regulators.regulator-12v", "kit.regulator-12v", "devices.camera.fed-by", "devices.monitor.fed-by"],
            Night.Whole().Builds["rig"].Assumed);
    }

    [Fact]
    public void Any_size_that_is_offered_is_taken_as_given()
    {
        foreach (var figure in LabelQuestions.All.Where(figure => figure.Path == "size"))
        {
            Assert.Equal(3, figure.Choices.Count);
            foreach (var choice in figure.Choices)
            {
                var given = Drafting.Blank.AndOwn(figure.Of.Single(), ("size", choice.Text));
                Assert.DoesNotContain(given.Problems,
                    problem => problem.Path.StartsWith("parts.own-", StringComparison.Ordinal));
                var part = Assert.Single(given.Scenario.Parts.Values);
                Assert.Equal(choice.Text, SizeFormat.Text(part.Size!));
                Assert.DoesNotContain("size", OwnPart.Complete(PartFormat.Whole.Write(part)).Assumed);
            }
        }
    }
}
