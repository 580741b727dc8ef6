using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Tests.Files.Editing;

namespace RigScenarios.Tests.Files;

public sealed class FieldHelpTests
{
    /// <summary>Five answers beside a text of at most 2 MB, of which the deepest holds a million groups.</summary>
    private const long MostBytes = 1_000_000_000;

    private const string Start = """
        rigscenarios: scenario 1
        title: x
        builds:
          tripod:
            stance: tripod
            battery: {item: brick, charge: 100 %}
            devices:
              camera:
                fed-by: plate

        """;

    public static TheoryData<string> Names => [.. EditedFiles.All.Keys];

    /// <summary>The quick scan of the text and the parser of the files find the same path for each name and value.</summary>
    [Theory]
    [MemberData(nameof(Names))]
    public void Each_field_of_a_file_is_known_at_its_name_and_at_its_value(string name)
    {
        var text = EditedFiles.All[name].TrimStart('\uFEFF');
        var told = 0;
        void Look(FileNode node, string path)
        {
            if (node is ListNode list)
            {
                for (var index = 0; index < list.Items.Count; index++)
                    Look(list.Items[index], $"{path}.{index + 1}");
                return;
            }
            if (node is not MapNode map)
                return;
            foreach (var entry in map.Entries)
            {
                var own = path.Length == 0 ? entry.Key : $"{path}.{entry.Key}";
                Assert.Equal(own, FieldHelp.At(text, entry.KeyAt.Line, entry.KeyAt.Column + 1).Path);
                if (entry.Value is TextNode)
                {
                    var help = FieldHelp.At(text, entry.Value.At.Line, entry.Value.At.Column + 1);
                    Assert.Equal(own, help.Path);
                    Assert.NotEmpty(help.About);
                    Assert.NotEmpty(help.Accepted);
                    var present = help.Fields.Where(field => field.Present).Select(field => field.Key).Order();
                    if (help.Fields.Count > 0)
                        Assert.Equal(map.Entries.Select(other => other.Key).Order(), present);
                    told++;
                }
                Look(entry.Value, own);
            }
        }
        Look(YamlTree.Read(text, new ReadLog(""))!, "");
        Assert.True(told > 10);
    }

    [Theory]
    [InlineData("", 1, "", "title")]
    [InlineData("tit", 4, "tit", "title")]
    [InlineData("    ", 5, "builds.tripod", "carries")]
    [InlineData("    pla", 8, "builds.tripod.pla", "plate")]
    [InlineData("    plate:", 11, "builds.tripod.plate", "plate")]
    [InlineData("        ", 9, "builds.tripod.devices.camera", "essential")]
    [InlineData("        ess", 12, "builds.tripod.devices.camera.ess", "essential")]
    [InlineData("        power: {", 17, "builds.tripod.devices.camera.power", "record")]
    [InlineData("        power: {rec", 20, "builds.tripod.devices.camera.power.rec", "record")]
    [InlineData("        power: {record: ", 25, "builds.tripod.devices.camera.power.record", "standby")]
    [InlineData("        power: {record: 5 W, ", 30, "builds.tripod.devices.camera.power", "standby")]
    [InlineData("        power: {record: 5 W, sta", 33, "builds.tripod.devices.camera.power.sta", "standby")]
    [InlineData("      # a comment", 12, "builds.tripod.devices", null)]
    [InlineData("      ", 7, "builds.tripod.devices", null)]
    [InlineData("    title: \"not closed", 20, "builds.tripod.title", "carries")]
    [InlineData("    carries: [cage, ", 21, "builds.tripod.carries.2", null)]
    public void A_half_typed_line_gets_the_help_of_its_place(string line, int column, string path, string? offered)
    {
        foreach (var below in (string[])["", "\n", "\n    carries: [a]\ndays:\n  d: {ambient: 1 °C}\n", "\nkit: {"])
        {
            var help = FieldHelp.At(Start + line + below, 10, column);
            Assert.Equal(path, help.Path);
            if (offered is null)
                Assert.Empty(help.Fields);
            else
                Assert.Contains(offered, help.Fields.Select(field => field.Key));
            Assert.NotEmpty(help.About);
            Assert.NotEmpty(help.Accepted);
        }
    }

    [Fact]
    public void Fields_say_what_they_are_and_whether_they_are_there()
    {
        var fields = FieldHelp.At(Start + "    ", 10, 5).Fields;
        Assert.Equal(["title", "stance", "battery", "plate", "regulators", "splitters", "devices", "carries", "beside", "places",
            "on-head", "on-legs", "on-shoulder", "in-hands", "assumed"], fields.Select(field => field.Key));
        Assert.Equal(["stance", "battery", "devices"], fields.Where(field => field.Required).Select(field => field.Key));
        Assert.Equal(["stance", "battery", "devices"], fields.Where(field => field.Present).Select(field => field.Key));
        Assert.Equal("How it is carried.", fields[1].About);
        Assert.Equal("tripod, shoulder, hand", fields[1].Accepted);
    }

    [Fact]
    public void A_slip_gets_the_nearest_name()
    {
        var help = FieldHelp.At(Start + "    bettery: {}", 10, 7);
        Assert.Equal("builds.tripod.bettery", help.Path);
        Assert.Contains("\"battery\"", help.About, StringComparison.Ordinal);
    }

    [Fact]
    public void The_first_line_and_parts_files_are_known_too()
    {
        Assert.Equal("scenario 1", FieldHelp.At(Start, 1, 3).Accepted);
        var parts = FieldHelp.At("rigscenarios: parts 1\nparts:\n  brick:\n    battery: {ener", 4, 19);
        Assert.Contains("energy", parts.Fields.Select(field => field.Key));
        Assert.Equal("parts.brick.battery.ener", parts.Path);
    }

    [Theory]
    [MemberData(nameof(HostileInputTests.Texts), MemberType = typeof(HostileInputTests), DisableDiscoveryEnumeration = true)]
    public void Any_text_gets_an_answer(string what, string text)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        foreach (var (line, column) in ((int, int)[])[(1, 1), (3, 5), (int.MaxValue, int.MaxValue), (-1, 0), (1, 500_000)])
            Assert.InRange(FieldHelp.At(text, line, column).About.Length, 1, 500);
        // Work by the length of the text and not by its square, of which the bytes tell without a clock.
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(bytes < MostBytes, $"{what} made the help allocate {bytes} bytes.");
    }
}
