using RigScenarios.Balance;
using RigScenarios.Files;
using UnitsNet;

namespace RigScenarios.Tests.Balance;

/// <summary>Places on rods, from the ends that a tape measure finds.</summary>
public sealed class RodPositionTests
{
    [Fact]
    public void A_clamp_is_as_far_from_the_ends_as_its_place_and_the_length_of_the_rods_say()
    {
        // By hand: rods of 400 mm held in their middle reach from -200 to 200 mm; the plate's clamp at -168 mm is 32 mm from the
        // rear end, the lens support's at 105 mm is 95 mm from the front end (data/scenarios/winter-harbour.yaml).
        var positions = RodPosition.Of(Rig("winter-harbour", "tripod"));
        Assert.Equal(["lens-support", "plate"], positions.Select(position => position.Part));
        Assert.Equal((95, 305), Millimetres(positions[0]));
        Assert.Equal((368, 32), Millimetres(positions[1]));
    }

    [Theory]
    [InlineData("winter-harbour", "shoulder")]
    [InlineData("night-dolly", "heavy-lead")]
    [InlineData("teaching-kit", "full-rig")]
    public void Both_ways_together_are_the_rods_and_the_difference_of_two_parts_is_that_of_their_places(string demo, string build)
    {
        var rig = Rig(demo, build);
        var positions = RodPosition.Of(rig);
        Each.Of(positions, position =>
        {
            Assert.Equal(rig.Things[position.Rods].Size!.Length.Millimeters,
                position.FromFront.Millimeters + position.FromRear.Millimeters, 6);
            Assert.Equal((rig.Places[position.Part].Forward ?? Length.Zero).Millimeters
                - (rig.Places[positions[0].Part].Forward ?? Length.Zero).Millimeters,
                position.FromRear.Millimeters - positions[0].FromRear.Millimeters, 6);
        });
    }

    [Fact]
    public void Rods_of_unknown_length_have_no_ends()
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var rods = scenario.PartOf("long-rods")!;
        Assert.Empty(RodPosition.Of(BuildInPlace.Of(scenario.Builds["tripod"],
            name => name == "long-rods" ? rods with { Size = null } : scenario.PartOf(name))));
    }

    private static (double Front, double Rear) Millimetres(RodPosition position) =>
        (Math.Round(position.FromFront.Millimeters, 6), Math.Round(position.FromRear.Millimeters, 6));

    private static BuildInPlace Rig(string demo, string build)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", $"{demo}.yaml"));
        return BuildInPlace.Of(scenario.Builds[build], scenario.PartOf);
    }
}
