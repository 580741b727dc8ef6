using RigScenarios.Answers;
using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Drafts;

/// <summary>Outlets, cables and splitters of a draft: from the form to the file and back.</summary>
public sealed class DraftCableTests
{
    private static readonly OwnCable Thin = new(WireGauge.American(22), Length.FromMeters(3));

    private static readonly RigDraft Wired = Drafting.Small
        .With("plate", new DraftThing { Role = RigRole.Plate, Part = "plate-outlets" })
        .With("camera", new DraftThing { Role = RigRole.Camera, Part = "box-body-d", Essential = true, FedBy = "plate",
            Outlet = "a", OwnCable = Thin })
        .With("monitor", new DraftThing { Role = RigRole.Monitor, Part = "monitor-5in", FedBy = "plate", Outlet = "b",
            Cable = "power-cable-short" });

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
        Assert.Equal(new CableData(Thin.Gauge, Thin.Length), read.PartOf("camera-cable")!.Cable);
        Assert.Equal("power-cable-short", read.Kit["power-cable-short"].Part);
        var again = RigDraft.Of(read, "rig", "day");
        Assert.Equal(("plate", "a", null, Thin),
            (again.Things["camera"].FedBy, again.Things["camera"].Outlet, again.Things["camera"].Cable,
            again.Things["camera"].OwnCable));
        Assert.Equal(("b", "power-cable-short"), (again.Things["monitor"].Outlet, again.Things["monitor"].Cable));
        Assert.Equal(text, ScenarioFile.Text(again.ApplyTo(read, Drafting.Library, "rig", "day")));
        var (asText, wrong) = RigDraftFormat.TryRead(RigDraftFormat.Write(again));
        Assert.Empty(wrong);
        Assert.Equal(again, asText);
    }

    [Fact]
    public void A_long_thin_cable_takes_from_the_margin_of_the_camera()
    {
        static double Left(RigDraft draft) =>
            Drafting.Answer(draft).Answer!.Of(QuestionKind.Wiring)!.Limits
            .Where(limit => limit is { Element: "camera", Kind: LimitKind.LowestVoltage }).Min(limit => limit.Left!.Value);
        var bare = Left(Wired.With("camera", Wired.Things["camera"] with { OwnCable = null }));
        Assert.True(Left(Wired) < bare);
        Assert.True(Left(Wired.With("camera",
            Wired.Things["camera"] with { OwnCable = Thin with { Length = Length.FromMeters(6) } })) < Left(Wired));
    }

    [Fact]
    public void Another_length_changes_the_cable_in_its_place_and_no_cable_takes_it_off_the_kit()
    {
        var before = Drafting.Answer(Wired).Scenario!;
        var draft = RigDraft.Of(before, "rig", "day");
        var longer = draft.With("camera", draft.Things["camera"] with { OwnCable = Thin with { Length = Length.FromMeters(5) } })
            .ApplyTo(before, Drafting.Library, "rig", "day");
        Assert.Equal(before.Kit.Keys, longer.Kit.Keys);
        Assert.Equal(5, longer.PartOf("camera-cable")!.Cable!.Length.Meters, 9);
        var none = draft.With("camera", draft.Things["camera"] with { OwnCable = null })
            .ApplyTo(before, Drafting.Library, "rig", "day");
        Assert.Null(none.Builds["rig"].Devices["camera"].Cable);
        Assert.Equal(before.Kit.Keys.Except(["camera-cable"]), none.Kit.Keys);
        Assert.DoesNotContain("own-camera-cable", none.Parts.Keys);
    }

    [Fact]
    public void Two_of_the_same_listed_cable_are_two_in_the_kit()
    {
        var scenario = Drafting.Answer(Wired.With("camera",
            Wired.Things["camera"] with { OwnCable = null, Cable = "power-cable-short" })).Scenario!;
        Assert.Equal(2, scenario.Kit["power-cable-short"].Count);
        Assert.Equal(2 * 42,
            Drafting.Answer(Wired.With("camera",
            Wired.Things["camera"] with { OwnCable = null, Cable = "power-cable-short" })).Totals.Mass.Grams
            - Drafting.Answer(Wired.With("camera", Wired.Things["camera"] with { OwnCable = null })
                .With("monitor", Wired.Things["monitor"] with { Cable = null })).Totals.Mass.Grams, 6);
    }

    [Fact]
    public void Each_line_offers_the_outlets_with_their_limits_and_says_which_can_not_be_taken()
    {
        var line = Drafting.Answer(Wired).Wiring.Single(line => line.Thing == "monitor");
        Assert.Equal("b", line.Outlet);
        var plate = line.Choices.Single(choice => choice.Value == "plate").Outlets;
        Assert.Equal(["a", "b", "c", "usb"], plate.Select(outlet => outlet.Name));
        Assert.StartsWith("up to 8 A, fuse 10 A, taken by ", plate[0].Words, StringComparison.Ordinal);
        Assert.Equal("no socket left", plate[0].WhyNot);
        Assert.Equal("", plate[2].WhyNot);
        Assert.Contains("can't take 5.1 V", plate[3].WhyNot, StringComparison.Ordinal);
        Assert.Contains(Drafting.Answer(Wired).Cables,
            cable => cable is { Value: "power-cable-thin", Title: "Thin extension cable 4 m (4 m of AWG 22)" });
    }

    [Fact]
    public void An_outlet_that_is_gone_with_its_plate_is_told_and_left_out()
    {
        var answer = Drafting.Answer(Wired.With("plate", new DraftThing { Role = RigRole.Plate, Part = "plate-plain" }));
        var told = Assert.Single(answer.Problems);
        Assert.Equal((Severity.Warning, "things.monitor.outlet"), (told.Severity, told.Path));
        Assert.Null(answer.Scenario!.Builds["rig"].Devices["monitor"].Outlet);
        Assert.Equal("a", answer.Scenario.Builds["rig"].Devices["camera"].Outlet);
    }

    [Fact]
    public void A_cable_that_is_nowhere_is_told_with_the_nearest()
    {
        var problem = Assert.Single(Drafting.Answer(Wired.With("monitor",
            Wired.Things["monitor"] with { Cable = "power-cable-shrt" })).Problems);
        Assert.Equal(("things.monitor.cable", "power-cable-short"), (problem.Path, problem.Nearest));
    }

    [Fact]
    public void A_gauge_that_there_is_not_is_told_at_its_field_and_the_answer_goes_on_without_the_cable()
    {
        var json = RigDraftFormat.WriteJson(Wired);
        json["things"]!["camera"]!["own-cable"]!["gauge"] = "thick";
        using var document = System.Text.Json.JsonDocument.Parse(json.ToJsonString());
        var (draft, problems) = RigDraftFormat.TryRead(document.RootElement);
        Assert.Equal("things.camera.own-cable.gauge", Assert.Single(problems).Path);
        var answer = Drafting.Answer(draft!);
        Assert.NotNull(answer.Answer);
        Assert.DoesNotContain("camera-cable", answer.Scenario!.Kit.Keys);
    }

    [Fact]
    public void A_splitter_feeds_what_is_plugged_into_it()
    {
        var draft = Wired
            .With("splitter", new DraftThing { Role = RigRole.Other, Part = "power-splitter", FedBy = "plate", Outlet = "c" })
            .With("monitor", Wired.Things["monitor"] with { FedBy = "splitter", Outlet = "two" });
        var scenario = Drafting.Answer(draft).Scenario!;
        Assert.Equal("c", scenario.Builds["rig"].Splitters["splitter"].Outlet);
        Assert.DoesNotContain("splitter", scenario.Builds["rig"].Carries);
        Assert.Equal(("splitter", "two"),
            (scenario.Builds["rig"].Devices["monitor"].FedBy, scenario.Builds["rig"].Devices["monitor"].Outlet));
        Assert.Equal("splitter", RigDraft.Of(scenario, "rig", "day").Things["monitor"].FedBy);
    }

    [Fact]
    public void A_cable_that_another_build_uses_too_stays_as_it_is()
    {
        var before = Drafting.Answer(Wired).Scenario!;
        before = before with { Builds = before.Builds.With("second", before.Builds["rig"]) };
        var draft = RigDraft.Of(before, "rig", "day");
        var after = draft.With("camera", draft.Things["camera"] with { OwnCable = Thin with { Length = Length.FromMeters(5) } })
            .ApplyTo(before, Drafting.Library, "rig", "day");
        Assert.Equal(before.Builds["second"], after.Builds["second"]);
        Assert.Equal(3, after.PartOf("camera-cable")!.Cable!.Length.Meters, 9);
        Assert.Equal(5, after.PartOf(after.Builds["rig"].Devices["camera"].Cable!)!.Cable!.Length.Meters, 9);
    }

    [Fact]
    public void The_dolly_is_shown_with_its_lead_and_its_splitter()
    {
        var draft = RigDraft.Of(Dolly, "thin-lead", Dolly.Days.Keys.First());
        Assert.Equal(("plate", "a", "thin-lead"),
            (draft.Things["splitter"].FedBy, draft.Things["splitter"].Outlet, draft.Things["splitter"].Cable));
        var thick = draft.With("splitter", draft.Things["splitter"] with { Cable = "heavy-lead" });
        var (before, after) = (Drafting.Answer(draft, Dolly, "thin-lead", Dolly.Days.Keys.First()),
            Drafting.Answer(thick, Dolly, "thin-lead", Dolly.Days.Keys.First()));
        Assert.Empty(before.Problems);
        Assert.NotEmpty(before.Answer!.Simulation.DropOuts);
        Assert.Empty(after.Answer!.Simulation.DropOuts);
        // The other build still has the thin lead's better: nothing of it changes.
        Assert.Equal(Dolly.Builds["heavy-lead"], after.Scenario!.Builds["heavy-lead"]);
    }
}
