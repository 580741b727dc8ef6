using RigScenarios.Drafts;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

public sealed class ProposedWiringTests
{
    private static DraftThing Own(double watts, double? least, double? most, int count = 1) => new()
    {
        Role = RigRole.Monitor,
        Count = count,
        Own = new OwnFigures
        {
            Name = "My monitor",
            Power = Power.FromWatts(watts),
            MinimumVoltage = least is { } low ? ElectricPotential.FromVolts(low) : null,
            MaximumVoltage = most is { } high ? ElectricPotential.FromVolts(high) : null,
        },
    };

    private static WiringLine Line(RigDraft draft, string thing) =>
        Drafting.Answer(draft).Wiring.Single(line => line.Thing == thing);

    [Fact]
    public void What_takes_the_bricks_voltage_hangs_on_the_plate_and_a_small_body_on_the_lightest_regulator_that_fits()
    {
        var lines = Drafting.Answer(Drafting.Small).Wiring.ToDictionary(line => line.Thing);
        Assert.Equal("plate", lines["monitor"].FedBy);
        Assert.Equal("dummy-battery-7v6", lines["camera"].FedBy);
        Assert.Equal("plate", lines["dummy-battery-7v6"].FedBy);
        Each.Of(lines.Values, line => Assert.True(line.Proposed));
        Assert.Equal("It takes 6.8 to 8.6 V, but the battery gives 11.6 to 16.8 V: through Dummy battery 7.6 V with "
            + "regulator, the lightest that gives a voltage it takes (7.6 V) and carries its 2.8 A.", lines["camera"].Why);
    }

    [Fact]
    public void Without_a_plate_the_battery_itself_feeds() =>
        Assert.Equal("battery", Line(Drafting.Small.Without("plate"), "monitor").FedBy);

    [Fact]
    public void A_regulator_that_can_not_carry_the_current_is_passed_over()
    {
        // 4.5 A at 7.6 V: 34 W would be 4.3 A at 8 V and 4.6 A at 7.4 V, and both of those carry 4 A; the one of 7.6 V carries 5
        // A.
        var answer = Drafting.Answer(Drafting.Small.With("monitor", Own(34, 7, 8.6)));
        Assert.StartsWith("dummy-battery-7v6", answer.Wiring.Single(line => line.Thing == "monitor").FedBy,
            StringComparison.Ordinal);
        // Both could not share one: together they draw 55 W / 7.6 V = 7.2 A.
        Assert.NotEqual(answer.Wiring.Single(line => line.Thing == "camera").FedBy,
            answer.Wiring.Single(line => line.Thing == "monitor").FedBy);
        Assert.NotNull(answer.Scenario);
    }

    [Fact]
    public void Two_things_share_a_regulator_that_carries_both()
    {
        var draft = Drafting.Small.With("monitor", Own(9, 7, 8.6));
        Assert.Equal(Line(draft, "camera").FedBy, Line(draft, "monitor").FedBy);
    }

    [Fact]
    public void A_regulator_that_is_on_the_rig_goes_before_a_lighter_one_of_the_list()
    {
        var draft = Drafting.Small.With("camera-power",
            new DraftThing { Role = RigRole.Regulator, Part = "dummy-battery-7v4-wide" });
        Assert.Equal("camera-power", Line(draft, "camera").FedBy);
    }

    [Fact]
    public void Where_nothing_fits_it_says_so_and_counts_without_it()
    {
        var answer = Drafting.Answer(Drafting.Small.With("monitor", Own(9, 2, 3)));
        var line = answer.Wiring.Single(line => line.Thing == "monitor");
        Assert.Equal("", line.FedBy);
        Assert.StartsWith("Nothing fits", line.Why, StringComparison.Ordinal);
        Assert.Equal("things.monitor.fed-by", Assert.Single(answer.Problems).Path);
        Assert.Equal(Drafting.Answer(Drafting.Small.Without("monitor")).Answer!.Simulation.Runtime,
            answer.Answer!.Simulation.Runtime);
        Assert.Contains("My monitor", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_stops_early_is_hung_on_the_plate_with_its_voltage_named()
    {
        var line = Line(Drafting.Small.With("monitor", Own(9, 13, 17)), "monitor");
        Assert.Equal("plate", line.FedBy);
        Assert.Contains("13 V", line.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_voltage_that_is_not_known_is_named_as_such()
    {
        var answer = Drafting.Answer(Drafting.Small.With("monitor", Own(9, null, null)));
        Assert.Contains("not known", answer.Wiring.Single(line => line.Thing == "monitor").Why, StringComparison.Ordinal);
        Assert.Contains(answer.Cautions, caution => caution.Contains("My monitor", StringComparison.Ordinal));
    }

    [Fact]
    public void A_listed_regulator_can_be_chosen_by_its_id_and_is_put_on_the_rig()
    {
        var draft = Drafting.Small.With("camera", Drafting.Small.Things["camera"] with { FedBy = "dummy-battery-8v" });
        var answer = Drafting.Answer(draft);
        var line = answer.Wiring.Single(line => line.Thing == "camera");
        Assert.Equal("dummy-battery-8v", line.FedBy);
        Assert.False(line.Proposed);
        Assert.Contains(line.Choices, choice => choice.Value == "dummy-battery-7v6");
        Assert.True(answer.Scenario!.Builds["rig"].Regulators.ContainsKey("dummy-battery-8v"));
    }

    [Fact]
    public void Every_choice_that_is_offered_for_a_device_is_accepted_when_it_is_taken()
    {
        foreach (var choice in Line(Drafting.Small,
            "camera").Choices.Where(choice => choice.Value is not "battery" and not "plate"))
        {
            var line = Line(Drafting.Small.With("camera", Drafting.Small.Things["camera"] with { FedBy = choice.Value }),
                "camera");
            Assert.Equal((choice.Value, false), (line.FedBy, line.Proposed));
        }
    }

    [Fact]
    public void A_feed_that_is_no_longer_on_the_rig_is_proposed_anew()
    {
        var draft = Drafting.Small.Without("plate").With("monitor", Drafting.Small.Things["monitor"] with { FedBy = "plate" });
        var line = Line(draft, "monitor");
        Assert.Equal(("battery", true), (line.FedBy, line.Proposed));
    }
}
