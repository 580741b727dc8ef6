using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>Outlets, cables and splitters of a rig: from the form to the file and back.</summary>
public sealed class CablingTests
{
    private static readonly GivenRig Plugged = Drafting.Blank.And("camera", "box-body-d").And("battery", "brick-190wh")
        .And("plate", "plate-outlets").And("monitor", "monitor-5in").Feed("camera", "plate").Outlet("camera", "a")
        .Feed("monitor", "plate").Outlet("monitor", "b");

    private static readonly GivenRig Wired = Plugged.Cable("camera", "3 m", "AWG 22").Cable("monitor", "power-cable-short");

    private static readonly Scenario Dolly = Drafting.Scenarios.Single(scenario => scenario.Title == "Night on the dolly");

    [Fact]
    public void Outlets_and_cables_go_into_the_file_and_come_back()
    {
        var answer = Drafting.Answer(Wired);
        Assert.Empty(answer.Problems);
        var text = ScenarioFile.Text(answer.Scenario!);
        var (read, problems) = ScenarioFile.TryReadText(text, "mine.yaml");
        Assert.Empty(problems);
        var camera = read!.Builds["rig"].Devices["camera"];
        Assert.Equal(("a", "camera-cable"), (camera.Outlet, camera.Cable));
        Assert.Equal(new CableData(WireGauge.American(22), Length.FromMeters(3)), read.PartOf("camera-cable")!.Cable);
        Assert.Equal("power-cable-short", read.Kit["power-cable-short"].Part);
        var again = Drafting.Open(read);
        Assert.Equal(("plate", "a", "3 m"), (again.TextAt("builds.rig.devices.camera.fed-by"),
            again.TextAt("builds.rig.devices.camera.outlet"), again.TextAt("parts.own-camera-cable.cable.length")));
        Assert.Equal("power-cable-short", again.TextAt("builds.rig.devices.monitor.cable"));
        Assert.Equal(text, ScenarioFile.Text(again.Whole()));
    }

    [Fact]
    public void A_long_thin_cable_takes_from_the_margin_of_the_camera()
    {
        static double Left(GivenRig given) => Drafting.Answer(given).Answer!.Of(QuestionKind.Wiring)!.Limits
            .Where(limit => limit is { Element: "camera", Kind: LimitKind.LowestVoltage }).Min(limit => limit.Left!.Value);
        Assert.True(Left(Wired) < Left(Plugged));
        Assert.True(Left(Wired.With("parts.own-camera-cable.cable.length", "6 m")) < Left(Wired));
    }

    [Fact]
    public void Another_length_changes_the_cable_in_its_place_and_no_cable_takes_it_off_the_kit()
    {
        var before = Drafting.Open(Wired.Whole());
        var longer = before.Cable("camera", "5 m", "AWG 22").Whole();
        Assert.Equal(before.Whole().Kit.Keys, longer.Kit.Keys);
        Assert.Equal(5, longer.PartOf("camera-cable")!.Cable!.Length.Meters, 9);
        var none = before.Cable("camera", "").Whole();
        Assert.Null(none.Builds["rig"].Devices["camera"].Cable);
        Assert.Equal(before.Whole().Kit.Keys.Except(["camera-cable"]), none.Kit.Keys);
        Assert.DoesNotContain("own-camera-cable", none.Parts.Keys);
    }

    [Fact]
    public void Two_of_the_same_listed_cable_are_two_in_the_kit()
    {
        var two = Plugged.Cable("monitor", "power-cable-short").Cable("camera", "power-cable-short");
        Assert.Equal(2, two.Whole().Kit["power-cable-short"].Count);
        Assert.Equal(2 * 42, Drafting.Answer(two).Totals.Mass.Grams - Drafting.Answer(Plugged).Totals.Mass.Grams, 6);
    }

    [Fact]
    public void Each_line_offers_the_outlets_with_their_limits_and_says_which_can_not_be_taken()
    {
        var answer = Drafting.Answer(Wired);
        var line = answer.Wiring.Single(line => line.Thing == "monitor");
        Assert.Equal("b", line.Outlet);
        var plate = line.Choices.Single(choice => choice.Value == "plate").Outlets;
        Assert.Equal(["a", "b", "c", "usb"], plate.Select(outlet => outlet.Name));
        Assert.StartsWith("up to 8 A, fuse 10 A, taken by ", plate[0].Words, StringComparison.Ordinal);
        Assert.Equal("no socket left", plate[0].WhyNot);
        Assert.Equal("", plate[2].WhyNot);
        Assert.Contains("can't take 5.1 V", plate[3].WhyNot, StringComparison.Ordinal);
        Assert.Contains(answer.Cables,
            cable => cable is { Value: "power-cable-thin", Title: "Thin extension cable 4 m (4 m of AWG 22)" });
    }

    [Fact]
    public void An_outlet_that_another_plate_does_not_have_is_none()
    {
        var other = Wired.Choose("plate", "plate-plain");
        Assert.Empty(Drafting.Answer(other).Problems);
        Assert.Null(other.Whole().Builds["rig"].Devices["monitor"].Outlet);
        Assert.Equal("a", other.Whole().Builds["rig"].Devices["camera"].Outlet);
    }

    [Fact]
    public void A_cable_or_an_outlet_that_is_nowhere_is_refused_with_the_nearest()
    {
        var cable = Assert.Throws<ScenarioProblemsException>(() => Cabling.With(Wired, "monitor", "power-cable-shrt"));
        Assert.Equal(("cable", "power-cable-short"), (cable.Problems.Single().Path, cable.Problems.Single().Nearest));
        var outlet = Assert.Throws<ScenarioProblemsException>(() => Feeding.Outlet(Wired, "monitor", "usbb"));
        Assert.Equal(("outlet", "usb"), (outlet.Problems.Single().Path, outlet.Problems.Single().Nearest));
    }

    [Fact]
    public void A_gauge_that_there_is_not_is_told_at_its_field_and_the_answer_goes_on_without_the_cable()
    {
        var answer = Drafting.Answer(Wired.With("parts.own-camera-cable.cable.gauge", "thick"));
        Assert.Equal("parts.own-camera-cable.cable.gauge", Assert.Single(answer.Problems).Path);
        Assert.NotNull(answer.Answer);
        Assert.Null(answer.Answer.TheBuild.Devices["camera"].Cable);
    }

    [Fact]
    public void A_splitter_feeds_what_is_plugged_into_it()
    {
        var given = Wired.And("other", "power-splitter").Feed("power-splitter", "plate").Outlet("power-splitter", "c")
            .Feed("monitor", "power-splitter").Outlet("monitor", "two");
        var scenario = given.Whole();
        Assert.Equal("c", scenario.Builds["rig"].Splitters["power-splitter"].Outlet);
        Assert.DoesNotContain("power-splitter", scenario.Builds["rig"].Carries);
        Assert.Equal(("power-splitter", "two"),
            (scenario.Builds["rig"].Devices["monitor"].FedBy, scenario.Builds["rig"].Devices["monitor"].Outlet));
        Assert.Equal("power-splitter", Drafting.Open(scenario).TextAt("builds.rig.devices.monitor.fed-by"));
    }

    [Fact]
    public void A_cable_that_another_build_uses_too_stays_as_it_is()
    {
        var before = Wired.Whole();
        before = before with { Builds = before.Builds.With("second", before.Builds["rig"] with { Assumed = [] }) };
        var after = Drafting.Open(before).Cable("camera", "5 m", "AWG 22").Whole();
        Assert.Equal(ScenarioFile.Text(before).Split("second:")[1].Split("days:")[0],
            ScenarioFile.Text(after).Split("second:")[1].Split("days:")[0]);
        Assert.Equal(3, after.PartOf("camera-cable")!.Cable!.Length.Meters, 9);
        Assert.Equal(5, after.PartOf(after.Builds["rig"].Devices["camera"].Cable!)!.Cable!.Length.Meters, 9);
    }

    [Fact]
    public void The_dolly_is_shown_with_its_lead_and_its_splitter()
    {
        var given = Drafting.Open(Dolly, "thin-lead", Dolly.Days.Keys.First());
        Assert.Equal(("plate", "a", "thin-lead"), (given.TextAt("builds.thin-lead.splitters.splitter.fed-by"),
            given.TextAt("builds.thin-lead.splitters.splitter.outlet"),
            given.TextAt("builds.thin-lead.splitters.splitter.cable")));
        var (before, after) = (Drafting.Answer(given), Drafting.Answer(given.Cable("splitter", "heavy-lead")));
        Assert.Empty(before.Problems);
        Assert.NotEmpty(before.Answer!.Simulation.DropOuts);
        Assert.Empty(after.Answer!.Simulation.DropOuts);
        // The other build still has the heavy lead: nothing of it changes.
        Assert.Equal(Dolly.Builds["heavy-lead"].Splitters, after.Scenario!.Builds["heavy-lead"].Splitters);
    }
}
