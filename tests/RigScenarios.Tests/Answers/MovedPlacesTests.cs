using RigScenarios.Answers;
using RigScenarios.Balance;
using RigScenarios.Files;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Answers;

public class MovedPlacesTests
{
    private static readonly Scenario Harbour = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));

    [Fact]
    public void A_text_moves_things_and_what_hangs_on_them()
    {
        var (before, after) = (Placed(Harbour, "shoulder"),
            Placed(MovedPlaces.Apply(Harbour, "shoulder", "plate -300 mm; pad -150 mm"), "shoulder"));
        Assert.Equal(-300, after.Parts["plate"].Placement.Offset.X.Millimeters, 9);
        Assert.Equal(-150, after.Parts["pad"].Placement.Offset.X.Millimeters, 9);
        // The brick hangs on the plate, which went 30 mm back; the camera does not.
        Assert.Equal(-30,
            (after.MassProperties.Parts["brick"].Centre.X - before.MassProperties.Parts["brick"].Centre.X).Millimeters, 9);
        Assert.Equal(before.MassProperties.Parts["camera"].Centre, after.MassProperties.Parts["camera"].Centre);
        // By hand: the rig's centre goes back by 30 mm times what plate and brick weigh of the whole.
        var moved = before.Parts["plate"].Mass + before.Parts["brick"].Mass;
        Assert.Equal(-30 * (moved / before.MassProperties.Mass),
            (after.MassProperties.Centre.X - before.MassProperties.Centre.X).Millimeters, 9);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData(" ; ")]
    public void Nothing_moved_leaves_the_scenario_as_it_is(string text) =>
        Assert.Same(Harbour, MovedPlaces.Apply(Harbour, "tripod", text));

    [Fact]
    public void Other_builds_stay()
    {
        var moved = MovedPlaces.Apply(Harbour, "tripod", "plate -150 mm");
        Assert.Same(Harbour.Builds["shoulder"], moved.Builds["shoulder"]);
        Assert.Same(Harbour.Kit, moved.Kit);
    }

    [Theory]
    [InlineData("plate -160 mm", "plate -160 mm")]
    [InlineData("plate −16 cm;pad -150.04 mm;", "plate -160 mm; pad -150 mm")]
    [InlineData("plate -0.01 mm", "plate 0 mm")]
    public void The_text_comes_back(string text, string written) =>
        Assert.Equal(written, MovedPlaces.Text(MovedPlaces.Read(text)));

    [Theory]
    [InlineData("plaet -160 mm", "no \"plaet\" on the rig", "plate", "plate")]
    [InlineData("brick -160 mm", "does not slide", "plate", null)]
    [InlineData("plate -160", "without a unit", "plate -160 mm; pad -150 mm", null)]
    [InlineData("plate -160 kg", "", "plate -160 mm; pad -150 mm", null)]
    [InlineData("plate", "not a thing with a distance", "plate -160 mm; pad -150 mm", null)]
    [InlineData("plate -160 mm; plate -150 mm", "twice", "plate -160 mm; pad -150 mm", null)]
    [InlineData("plate -191 mm", "-191 mm is outside", "-190 mm to -136 mm", null)]
    [InlineData("plate -135.9 mm", "-135.9 mm is outside", "-190 mm to -136 mm", null)]
    public void A_mistake_is_told_with_what_is_accepted(string text, string problem, string accepted, string? nearest)
    {
        var told =
            Assert.Single(Assert.Throws<ScenarioProblemsException>(() => MovedPlaces.Apply(Harbour, "tripod", text)).Problems);
        Assert.Contains(problem, told.Problem, StringComparison.Ordinal);
        Assert.Contains(accepted, told.Accepted, StringComparison.Ordinal);
        Assert.Equal(nearest, told.Nearest);
    }

    [Fact]
    public void All_mistakes_are_told_at_once()
    {
        var told = Assert.Throws<ScenarioProblemsException>(() => MovedPlaces.Apply(Harbour, "tripod",
            "plaet -160 mm; plate 0 mm; monitor 3 mm")).Problems;
        Assert.Equal(["plaet", "plate", "monitor"], told.Select(problem => problem.Path));
    }

    [Fact]
    public void A_build_that_is_not_there_is_told() =>
        Assert.Contains("no build \"tripd\"",
            Assert.Throws<ScenarioProblemsException>(() => MovedPlaces.Apply(Harbour, "tripd", "plate -160 mm")).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_usual_place_that_was_made_a_given_one_is_no_surer_than_before()
    {
        var bare = Harbour with { Builds = Harbour.Builds.With("tripod",
            Harbour.Builds["tripod"] with { Places = Parts.OrderedMap<Builds.PlaceInUse>.Empty }) };
        var slides = MovedPlaces.Of(bare, "tripod").First(part => part.Name == "plate");
        Assert.True(slides.IsUsual);
        var moved = MovedPlaces.Apply(bare, "tripod", MovedPlaces.Text([new("plate", slides.Range.Least)]));
        Assert.Empty(BuildInPlace.Of(moved.Builds["tripod"], moved.PartOf).PlacesAssumed);
        Assert.Equal(Placed(bare, "tripod").MassProperties.CentreUncertainty.X.Millimeters,
            Placed(moved, "tripod").MassProperties.CentreUncertainty.X.Millimeters, 0.5);
        Each.Of(moved.Builds["tripod"].Places.Values, place => Assert.Equal(15, place.Within!.Value.Millimeters, 9));
    }

    [Fact]
    public void What_slides_at_the_end_of_an_arm_counts_from_the_arm()
    {
        var build = Harbour.Builds["tripod"];
        var atEnd = Harbour with { Builds = Harbour.Builds.With("tripod",
            build with { Places = build.Places.With("monitor",
            build.Places["monitor"] with { SlidesFrom = Length.FromMillimeters(-20),
            SlidesTo = Length.FromMillimeters(30) }) }) };
        var slides = MovedPlaces.Of(atEnd, "tripod").Single(part => part.Name == "monitor");
        var to = slides.At + Length.FromMillimeters(10);
        var moved = MovedPlaces.Apply(atEnd, "tripod", MovedPlaces.Text([new("monitor", to)]));
        Assert.Equal(10, moved.Builds["tripod"].Places["monitor"].Forward!.Value.Millimeters, 6);
        Assert.Equal(to.Millimeters, MovedPlaces.Of(moved, "tripod").Single(part => part.Name == "monitor").At.Millimeters, 6);
    }

    [Fact]
    public void Every_text_that_is_written_is_taken_back_at_both_ends()
    {
        // The text rounds to a tenth of a millimetre; an end that is none must still be reached.
        var looked = new LookedAt();
        foreach (var (name, build) in Harbour.Builds)
        {
            var bare = Harbour with { Builds = Harbour.Builds.With(name,
                build with { Places = Parts.OrderedMap<Builds.PlaceInUse>.Empty }) };
            foreach (var part in MovedPlaces.Of(bare, name).Concat(MovedPlaces.Of(Harbour, name)))
            {
                foreach (var end in new[] { part.Range.Least, part.Range.Greatest })
                {
                    var moved = MovedPlaces.Apply(part.IsUsual ? bare : Harbour, name, MovedPlaces.Text([new(part.Name, end)]));
                    var there = MovedPlaces.Of(moved, name).Single(one => one.Name == part.Name);
                    Assert.Equal(end.Millimeters, there.At.Millimeters, 0.1);
                    Assert.Equal(part.Range.Least.Millimeters, there.Range.Least.Millimeters, 0.1);
                    looked.One();
                }
            }
        }
        looked.AtLeast(8);
    }

    private static PlacedBuild Placed(Scenario scenario, string build) =>
        BuildInPlace.Of(scenario.Builds[build], scenario.PartOf).Placed;
}
