using CsCheck;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>Changing one build and one day of a file leaves everything else of it alone.</summary>
public sealed class ExistingFileTests
{
    private static readonly Scenario Harbour = Drafting.Scenarios
        .Single(scenario => scenario.Title == "Winter harbour documentary");

    private static readonly Gen<(Scenario Scenario, string Build, string Day, int Change)> AnyChange =
        Gen.Select(Gen.Int[0, Drafting.Pairs.Count - 1], Gen.Int[0, 10_000],
            (pair, change) => (Drafting.Pairs[pair].Scenario, Drafting.Pairs[pair].Build, Drafting.Pairs[pair].Day, change));

    [Fact]
    public void A_thing_that_another_build_uses_is_not_changed_under_it()
    {
        var draft = RigDraft.Of(Harbour, "tripod", "day-one");
        draft = draft.With("camera", draft.Things["camera"] with { Part = "compact-body-a" });
        var after = draft.ApplyTo(Harbour, Drafting.Library, "tripod", "day-one");
        Assert.Equal(Harbour.Builds["shoulder"], after.Builds["shoulder"]);
        Assert.Equal("compact-body-b", after.Kit["camera"].Part);
        Assert.Equal("compact-body-a", after.Kit["camera-2"].Part);
        Assert.True(after.Builds["tripod"].Devices["camera-2"].Essential);
        Each.Of(after.Days["day-one"].Blocks.Values,
            block => Assert.Equal(block.StateOf("camera"), block.StateOf("camera-2")));
        Assert.Equal(Harbour.Days["day-two"], after.Days["day-two"]);
    }

    [Fact]
    public void A_thing_taken_off_leaves_the_kit_only_if_nothing_else_speaks_of_it()
    {
        var draft = RigDraft.Of(Harbour, "tripod", "day-one").Without("transmitter").Without("long-lens").Without("top-handle");
        var after = draft.ApplyTo(Harbour, Drafting.Library, "tripod", "day-one");
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
        var after = RigDraft.Of(scenario, "one", "day").Without("flat").With("brick",
            new DraftThing { Role = RigRole.Battery, Part = "brick-98wh" }).ApplyTo(scenario, Drafting.Library, "one", "day");
        Assert.Equal(stays, after.Kit.ContainsKey("flat"));
        Assert.Equal("brick", after.Builds["one"].Battery.Item);
    }

    [Fact]
    public void A_part_that_the_file_can_not_see_is_copied_into_it_and_one_that_it_sees_is_not()
    {
        var draft = RigDraft.Of(Harbour, "tripod", "day-one");
        var after = draft.With("eyepiece", new DraftThing { Role = RigRole.Monitor, Part = "eyepiece-monitor" })
            .ApplyTo(Harbour, Drafting.Library, "tripod", "day-one");
        Assert.Empty(after.Parts);
        var alone =
            Harbour with { Library = new OrderedMap<Part>(Harbour.Library.Where(part => part.Key != "eyepiece-monitor")) };
        after = draft.With("eyepiece", new DraftThing { Role = RigRole.Monitor, Part = "eyepiece-monitor" })
            .ApplyTo(alone, Drafting.Library, "tripod", "day-one");
        Assert.Equal(["eyepiece-monitor"], after.Parts.Keys);
    }

    [Fact]
    public void A_new_build_and_a_new_day_can_be_added_to_a_file()
    {
        var after = (RigDraft.Of(Harbour, "tripod", "day-one") with { Ambient = Temperature.FromDegreesCelsius(12) })
            .ApplyTo(Harbour, Drafting.Library, "light", "day-four");
        Assert.Equal(["tripod", "shoulder", "light"], after.Builds.Keys);
        Assert.Equal(12, after.Days["day-four"].Ambient!.Value.DegreesCelsius);
        Assert.Equal(Harbour.Kit, after.Kit);
    }

    [Fact]
    public void Changes_of_one_build_and_day_keep_the_others_and_come_back_as_they_were_made()
    {
        AnyChange.Holds(
            (one, looked) =>
            {
                var before = RigDraft.Of(one.Scenario, one.Build, one.Day);
                var draft = Change(before, one.Change);
                var answer = DraftAnswer.Of(draft, one.Scenario, Drafting.Library, one.Build, one.Day, CancellationToken.None);
                if (answer.Scenario is not { } after)
                {
                    Assert.True(answer.Problems.Count + answer.Missing.Count > 0);
                    return;
                }
                looked.One();
                var kept = one.Scenario.Builds.Keys.Where(name => name != one.Build)
                    .All(name => one.Scenario.Builds[name].Equals(after.Builds[name]))
                    && one.Scenario.Days.Keys.Where(name => name != one.Day)
                        .All(name => one.Scenario.Days[name].Equals(after.Days[name]))
                    && one.Scenario.Parts.All(part => after.Parts.ContainsKey(part.Key));
                var again = RigDraft.Of(after, one.Build, one.Day).ApplyTo(after, Drafting.Library, one.Build, one.Day);
                Assert.True(kept);
                Assert.Equal(ScenarioFile.Text(after), ScenarioFile.Text(again));
            },
            cases: 60, atLeast: 45);
    }

    /// <summary>One of the things that a form can do to a draft.</summary>
    private static RigDraft Change(RigDraft draft, int change)
    {
        var name = draft.Things.Keys.ElementAt(change % draft.Things.Count);
        var thing = draft.Things[name];
        var kinds = RigQuestions.For(thing.Role).PartKinds;
        var others = Drafting.Library.Where(part => kinds.Contains(part.Value.Kind)).ToList();
        return (change / 100 % 5) switch
        {
            0 => draft.Without(name),
            1 => draft.With(name, thing with { Part = others[change % others.Count].Key, Own = null }),
            2 => draft.With(name, thing with { FedBy = null }),
            3 => draft with { CapacityLeft = Ratio.FromPercent(60 + (change % 40)),
                Blocks = draft.Blocks.Without(draft.Blocks.Keys.ElementAt(change % draft.Blocks.Count)) },
            _ => draft.With(new DraftThing { Role = RigRole.Monitor,
                Own = new OwnFigures { Power = Power.FromWatts(3 + (change % 7)) } }),
        };
    }
}
