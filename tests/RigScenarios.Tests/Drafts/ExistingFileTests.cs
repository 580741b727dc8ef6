using CsCheck;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>Changing one build and one day of a file leaves everything else of it alone.</summary>
public sealed class ExistingFileTests
{
    private static readonly Scenario Harbour = Drafting.Scenarios
        .Single(scenario => scenario.Title == "Winter harbour documentary");

    private static readonly Gen<(Scenario Scenario, string Build, string Day, int Change)> AnyChange =
        Gen.Select(Gen.Int[0, Drafting.Pairs.Count - 1], Gen.Int[0, 10_000],
            (pair, change) => (Drafting.Pairs[pair].Scenario, Drafting.Pairs[pair].Build, Drafting.Pairs[pair].Day, change));

    private static GivenRig Tripod => Drafting.Open(Harbour, "tripod", "day-one");

    [Fact]
    public void A_thing_that_another_build_uses_is_not_changed_under_it()
    {
        var after = Tripod.Choose("camera", "compact-body-a").Whole();
        Assert.Equal(TextOf(Harbour, "builds.shoulder"), TextOf(after, "builds.shoulder"));
        Assert.Equal("compact-body-b", after.Kit["camera"].Part);
        Assert.Equal("compact-body-a", after.Kit["camera-2"].Part);
        Assert.True(after.Builds["tripod"].Devices["camera-2"].Essential);
        Each.Of(after.Days["day-one"].Blocks.Values,
            block => Assert.Equal(block.StateOf("camera"), block.StateOf("camera-2")));
        Assert.Equal(TextOf(Harbour, "days.day-two"), TextOf(after, "days.day-two"));
    }

    [Fact]
    public void A_thing_taken_off_leaves_the_kit_only_if_nothing_else_speaks_of_it()
    {
        var after = Tripod.Without("transmitter").Without("long-lens").Without("top-handle").Whole();
        Assert.False(after.Kit.ContainsKey("long-lens"));
        // Other days name the transmitter; the other build has the handle.
        Assert.True(after.Kit.ContainsKey("transmitter"));
        Assert.True(after.Kit.ContainsKey("top-handle"));
        Assert.Equal(["cage", "long-rods", "lens-support", "monitor-arm", "head", "legs"], after.Builds["tripod"].Carries);
    }

    [Theory]
    [InlineData("{batteries: [flat]}", true)]
    [InlineData("{packed: {flat: {charge: 28 %}}}", true)]
    [InlineData("{}", false)]
    public void A_battery_that_a_journey_names_stays_in_the_kit(string journey, bool stays)
    {
        var scenario = SmallScenario.Read(SmallScenario.Text() + $"\njourneys:\n  out: {journey}\n");
        var after = Drafting.Open(scenario, "one", "day").Without("flat").And("battery", "brick-98wh").Whole();
        Assert.Equal(stays, after.Kit.ContainsKey("flat"));
        Assert.StartsWith("battery", after.Builds["one"].Battery.Item, StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_that_the_file_can_not_see_is_copied_into_it_and_one_that_it_sees_is_not()
    {
        Assert.Empty(Tripod.And("monitor", "eyepiece-monitor").Whole().Parts);
        var alone =
            Harbour with { Library = new OrderedMap<Part>(Harbour.Library.Where(part => part.Key != "eyepiece-monitor")) };
        var after = Drafting.Open(alone, "tripod", "day-one").And("monitor", "eyepiece-monitor").Whole();
        Assert.Equal(["eyepiece-monitor"], after.Parts.Keys);
        // Opened again the copy is no part of what is given, and comes back as it is.
        var again = Drafting.Open(after, "tripod", "day-one");
        Assert.Empty(again.Scenario.Parts);
        Assert.Equal(ScenarioFile.Text(after), ScenarioFile.Text(again.Whole()));
    }

    [Fact]
    public void A_feed_that_a_file_leaves_open_is_shown_and_stays_open()
    {
        var open = Drafting.Pairs.Where(pair => pair.Scenario.Builds[pair.Build].Devices.Values
            .Any(device => device.FedBy is null)).ToList();
        Each.Of(open, pair =>
        {
            var before = pair.Scenario.Builds[pair.Build];
            var given = Drafting.Open(pair.Scenario, pair.Build, pair.Day);
            Each.Of(given.Build.Devices.Values, device => Assert.NotNull(device.FedBy));
            var after = given.Set("charge", "90 %").Whole().Builds[pair.Build];
            Assert.Equal(before.Devices.Select(device => device.Value.FedBy), after.Devices.Select(device => device.Value.FedBy));
            Assert.Empty(after.Assumed);
        });
    }

    [Fact]
    public void Changes_of_one_build_and_day_keep_the_others_and_come_back_as_they_were_made()
    {
        AnyChange.Holds(
            (one, looked) =>
            {
                var given = Change(Drafting.Open(one.Scenario, one.Build, one.Day), one.Change);
                var answer = Drafting.Answer(given);
                if (answer.Scenario is not { } after)
                {
                    Assert.True(answer.Problems.Count + answer.Missing.Count > 0);
                    return;
                }
                looked.One();
                Each.Of(one.Scenario.Builds.Keys.Where(name => name != one.Build).Select(name => $"builds.{name}")
                    .Concat(one.Scenario.Days.Keys.Where(name => name != one.Day).Select(name => $"days.{name}")).Append("title"),
                    path => Assert.Equal(TextOf(one.Scenario, path), TextOf(after, path)));
                var again = GivenRig.Of(after, given.Frame with { Before = after });
                Assert.Equal(ScenarioFile.Text(after), ScenarioFile.Text(again.Whole()));
            },
            cases: 60, atLeast: 45);
    }

    /// <summary>One of the things that a form can do to a rig.</summary>
    private static GivenRig Change(GivenRig given, int change)
    {
        var things = RigView.Of(given).Things;
        var thing = things[change % things.Count];
        var kinds = RigQuestions.Find(thing.Question)!.PartKinds;
        var others = Drafting.Library.Where(part => kinds.Contains(part.Value.Kind)
            && part.Value.Cable is null).ToList();
        return (change / 100 % 5) switch
        {
            0 => given.Without(thing.Name),
            1 => given.Choose(thing.Name, others[change % others.Count].Key),
            2 => given.Build.Devices.ContainsKey(thing.Name) ? given.Feed(thing.Name, "") : given,
            3 => given.Set("capacity-left", FormattableString.Invariant($"{60 + (change % 40)} %"))
                .With($"days.{given.Frame.Day}.blocks.{given.Day.Blocks.Keys.ElementAt(change % given.Day.Blocks.Count)}", null),
            _ => given.AndOwn("monitor", ("power.record", FormattableString.Invariant($"{3 + (change % 7)} W"))),
        };
    }

    private static string? TextOf(Scenario scenario, string path) =>
        GivenTree.Find(ScenarioFormat.Whole.Write(scenario), path) is { } node ? GivenJson.Write(node).ToJsonString() : null;
}
