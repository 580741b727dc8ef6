using RigScenarios.Drafts;

namespace RigScenarios.Tests.Drafts;

public sealed class ProposedWiringTests
{
    private static readonly GivenRig NoMonitor = Drafting.Small.Without("monitor");

    private static GivenRig Own(double watts, double? least, double? most) => NoMonitor.AndOwn("monitor",
        [("name", "My monitor"), ("power.record", FormattableString.Invariant($"{watts} W")),
        .. least is { } low ? [("voltage.minimum", FormattableString.Invariant($"{low} V"))] : (ReadOnlySpan<(string, string)>)[],
        .. most is { } high ? [("voltage.maximum", FormattableString.Invariant($"{high} V"))]
            : (ReadOnlySpan<(string, string)>)[]]);

    private static WiringLine Line(GivenRig given, string thing) =>
        Drafting.Answer(given).Wiring.Single(line => line.Thing == thing);

    [Fact]
    public void What_takes_the_batterys_voltage_hangs_on_the_plate_and_a_small_body_on_the_lightest_regulator_that_fits()
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
        // 34 W would be 4.3 A at 8 V and 4.6 A at 7.4 V, and both of those carry 4 A; the one of 7.6 V carries 5 A.
        var answer = Drafting.Answer(Own(34, 7, 8.6));
        Assert.StartsWith("dummy-battery-7v6", answer.Wiring.Single(line => line.Thing == "monitor").FedBy,
            StringComparison.Ordinal);
        // Both could not share one: together they draw 55 W / 7.6 V = 7.2 A.
        Assert.NotEqual(answer.Wiring.Single(line => line.Thing == "camera").FedBy,
            answer.Wiring.Single(line => line.Thing == "monitor").FedBy);
        Assert.NotNull(answer.Scenario);
    }

    [Theory]
    // 90 % of the 5 A of the dummy battery are 4.5 A, so 34.2 W at 7.6 V.
    [InlineData(34.1, "dummy-battery-7v6")]
    [InlineData(34.3, "")]
    public void A_proposed_regulator_has_a_tenth_of_its_current_left(double watts, string feed) =>
        Assert.StartsWith(feed, Line(NoMonitor.Without("camera").AndOwn("camera",
            ("power.record", FormattableString.Invariant($"{watts} W")), ("voltage.minimum", "7.42 V"),
            ("voltage.maximum", "7.7 V")), "camera").FedBy, StringComparison.Ordinal);

    [Theory]
    // 7.6 V is 2 % above 7.45 V, and 1.3 % above 7.5 V.
    [InlineData(7.45, "dummy-battery-7v6")]
    [InlineData(7.5, "")]
    public void A_proposed_regulator_gives_2_percent_more_than_the_least_voltage(double least, string feed) =>
        Assert.Equal(feed, Line(Own(9, least, 7.7), "monitor").FedBy);

    [Theory]
    [InlineData("14.4 V")]
    [InlineData("14.8 V")]
    public void What_is_labelled_for_the_batterys_own_voltage_is_fed_directly(string label)
    {
        var line = Line(NoMonitor.AndOwn("monitor", ("label.voltage", label), ("power.record", "18 W")), "monitor");
        Assert.Equal(("plate", true), (line.FedBy, line.Proposed));
        Assert.Contains("It is made for a battery of", line.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_label_of_just_what_a_regulator_gives_is_fed_by_it() => Assert.Equal("regulator-12v",
        Line(NoMonitor.AndOwn("monitor", ("label.voltage", "12 V"), ("power.record", "18 W")), "monitor").FedBy);

    [Fact]
    public void Two_things_share_a_regulator_that_carries_both()
    {
        var given = Own(9, 7, 8.6);
        Assert.Equal(Line(given, "camera").FedBy, Line(given, "monitor").FedBy);
    }

    [Fact]
    public void A_regulator_that_is_on_the_rig_goes_before_a_lighter_one_of_the_list() => Assert.Equal("regulator",
        Line(Drafting.Small.And("regulator", "dummy-battery-7v4-wide"), "camera").FedBy);

    [Fact]
    public void Where_nothing_fits_it_says_so_and_counts_without_it()
    {
        var answer = Drafting.Answer(Own(9, 2, 3));
        var line = answer.Wiring.Single(line => line.Thing == "monitor");
        Assert.Equal("", line.FedBy);
        Assert.StartsWith("Nothing fits", line.Why, StringComparison.Ordinal);
        Assert.Equal("builds.rig.devices.monitor.fed-by", Assert.Single(answer.Problems).Path);
        Assert.Equal(Drafting.Answer(NoMonitor).Answer!.Simulation.Runtime, answer.Answer!.Simulation.Runtime);
        Assert.Contains("My monitor", answer.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void What_only_stops_early_is_hung_on_the_plate_with_its_voltage_named()
    {
        var line = Line(Own(9, 13, 17), "monitor");
        Assert.Equal("plate", line.FedBy);
        Assert.Contains("13 V", line.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_voltage_that_is_not_known_is_named_as_such()
    {
        var answer = Drafting.Answer(Own(9, null, null));
        Assert.Contains("not known", answer.Wiring.Single(line => line.Thing == "monitor").Why, StringComparison.Ordinal);
        Assert.Contains(answer.Cautions, caution => caution.Contains("My monitor", StringComparison.Ordinal));
    }

    [Fact]
    public void A_listed_regulator_can_be_chosen_by_its_id_and_is_put_on_the_rig()
    {
        var answer = Drafting.Answer(Drafting.Small.Feed("camera", "dummy-battery-8v"));
        var line = answer.Wiring.Single(line => line.Thing == "camera");
        Assert.Equal("dummy-battery-8v", line.FedBy);
        Assert.False(line.Proposed);
        Assert.Contains(line.Choices, choice => choice.Value == "dummy-battery-7v6");
        Assert.True(answer.Scenario!.Builds["rig"].Regulators.ContainsKey("dummy-battery-8v"));
    }

    [Fact]
    public void Every_choice_that_is_offered_for_a_device_is_accepted_when_it_is_taken()
    {
        Each.Of(Line(Drafting.Small, "camera").Choices, choice =>
        {
            var given = Drafting.Small.Feed("camera", choice.Value);
            Assert.Equal((choice.Value, false), Line(given, "camera") is var line ? (line.FedBy, line.Proposed) : default);
            Assert.True(Line(given.Feed("camera", ""), "camera").Proposed);
        });
    }

    [Fact]
    public void A_regulator_that_was_only_proposed_can_be_fed_and_stays()
    {
        var given = Drafting.Small.Feed("dummy-battery-7v6", "battery");
        Assert.Equal(("battery", false), Line(given, "dummy-battery-7v6") is var line ? (line.FedBy, line.Proposed) : default);
        Assert.Equal(("dummy-battery-7v6", true),
            Line(given, "camera") is var camera ? (camera.FedBy, camera.Proposed) : default);
    }

    [Fact]
    public void A_feed_that_is_taken_off_the_rig_is_proposed_anew()
    {
        var line = Line(Drafting.Small.Feed("monitor", "plate").Without("plate"), "monitor");
        Assert.Equal(("battery", true), (line.FedBy, line.Proposed));
    }
}
