using RigScenarios.Files;

namespace RigScenarios.Tests.Files;

public sealed class ChangedFieldsTests
{
    [Fact]
    public void A_changed_a_new_and_a_dropped_field_are_told_by_their_paths()
    {
        var before = ScenarioFile.Read(Repository.Data("scenarios", "market-hall.yaml"));
        Assert.Empty(ChangedFields.Between(before, before));
        var build = before.Builds["tripod"];
        var after = before with { Builds = before.Builds.With("tripod", build with
        {
            Battery = build.Battery with { Charge = null, CapacityLeft = UnitsNet.Ratio.FromPercent(80) },
            Carries = [.. build.Carries.Take(2)],
        }) };
        Assert.Equal(
        [
            new("builds.tripod.battery.charge", "100 %", null),
            new("builds.tripod.battery.capacity-left", null, "80 %"),
            new("builds.tripod.carries", "[cage, zoom, rods, monitor-arm, top-handle, head, legs]", "[cage, zoom]"),
        ], ChangedFields.Between(before, after));
    }

    [Fact]
    public void What_a_path_sets_is_what_the_difference_tells()
    {
        var before = ScenarioFile.Read(Repository.Data("scenarios", "winter-harbour.yaml"));
        var charges = ScenarioPath.NumericFields(before)
            .Where(field => field.Path.EndsWith(".charge", StringComparison.Ordinal));
        Each.Of(charges, field =>
        {
            var after = ScenarioPath.Set(before, field.Path, "55 %");
            Assert.Equal([new(field.Path, field.Text, "55 %")], ChangedFields.Between(before, after));
        }, atLeast: 2);
    }
}
