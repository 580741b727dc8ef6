using RigScenarios.Builds;
using RigScenarios.Days;
using RigScenarios.Files;
using RigScenarios.Files.Editing;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Tests.Files.Editing;

/// <summary>Changes of a small file whose result was written down by hand.</summary>
public sealed class EditedTests
{
    private const string Text = """
        # A day at the lake.
        rigscenarios: scenario 1
        title: 'Lake'   # for people
        kit: {brick: {part: b}, camera: {part: c}} # all rented

        builds:
          tripod:
            stance: tripod
            battery: {item: brick, charge: 100 %}
            devices:
              # the only one
              camera: {essential: yes}
        days:
          one:
            starts: "06:30"   # sunrise 07:10
            blocks:
              rigging: {length: 30 min, others: standby}   # in the dark

              # the light is good now
              fog: {title: Fog, length: 1 h 5 min, others: record}
              walk: {length: 20 min}
        # That was all.

        """;

    private static readonly Scenario Before = EditedFiles.Read(Text);

    public static TheoryData<string, string, string> Values => new()
    {
        { "title", "Lake: two", "title: 'Lake'|title: 'Lake: two'" },
        { "title", "It's new", "title: 'Lake'|title: 'It''s new'" },
        { "days.one.starts", "07:00", "\"06:30\"|\"07:00\"" },
        { "days.one.blocks.fog.length", "1.25 h", "1 h 5 min|1.25 h" },
        { "days.one.blocks.fog.title", "Fog, thick", "title: Fog,|title: \"Fog, thick\"," },
        { "days.one.blocks.walk.title", "Walk", "walk: {length|walk: {title: Walk, length" },
        { "days.one.blocks.walk.others", "off", "20 min}|20 min, others: off}" },
        { "days.one.ambient", "-8 °C", "sunrise 07:10\n|sunrise 07:10\n    ambient: -8 °C\n" },
        { "builds.tripod.plate", "plate", "charge: 100 %}\n|charge: 100 %}\n    plate: plate\n" },
        { "builds.tripod.devices.camera.power.record", "15 W", "essential: yes}|essential: yes, power: {record: 15 W}}" },
        { "conditions.ambient", "5 °C", "# for people\n|# for people\nconditions: {ambient: 5 °C}\n" },
        { "note", "Two\nlines", "# for people\n|# for people\nnote: \"Two\\nlines\"\n" },
        { "kit.camera.count", "2", "{part: c}|{part: c, count: 2}" },
    };

    [Theory]
    [MemberData(nameof(Values))]
    public void A_value_that_is_set_changes_its_own_characters_only(string path, string value, string change)
    {
        var log = new ReadLog("");
        Assert.True(ScenarioFormat.Whole.TrySet(Before, path.Split('.'), new TextNode(value, TextPlace.None), path, log,
            out var after));
        Becomes(after, change);
    }

    [Fact]
    public void A_block_is_put_in_where_it_belongs_and_looks_like_the_others() => Becomes(
        Blocks(blocks =>
            [.. blocks.Take(2),
            new("boats", new DayBlock { Length = Duration.FromMinutes(40),
            States = OrderedMap<PowerState>.Empty.With("camera", PowerState.Record) }), .. blocks.Skip(2)]),
        "others: record}\n|others: record}\n      boats: {length: 40 min, states: {camera: record}}\n");

    [Fact]
    public void A_block_that_moves_takes_its_comments_with_it() => Becomes(
        Blocks(blocks => [.. blocks.Reverse()]),
        """
              rigging: {length: 30 min, others: standby}   # in the dark

              # the light is good now
              fog: {title: Fog, length: 1 h 5 min, others: record}
              walk: {length: 20 min}
        |      walk: {length: 20 min}

              # the light is good now
              fog: {title: Fog, length: 1 h 5 min, others: record}
              rigging: {length: 30 min, others: standby}   # in the dark

        """);

    [Fact]
    public void A_block_with_a_new_name_keeps_everything_else() => Becomes(
        Blocks(blocks => [blocks[0], new("mist", blocks[1].Value), blocks[2]]), "      fog: {title|      mist: {title");

    [Fact]
    public void The_comments_of_a_block_that_goes_stay() => Becomes(
        Blocks(blocks => [blocks[0], blocks[2]]),
        "      fog: {title: Fog, length: 1 h 5 min, others: record}\n|\n");

    [Fact]
    public void What_is_left_of_a_group_without_entries_can_be_read() => Becomes(
        Before with { Builds = Before.Builds.With("tripod",
            Before.Builds["tripod"] with { Devices = OrderedMap<DeviceInUse>.Empty }) },
        "devices:\n      # the only one\n      camera: {essential: yes}\n|devices: {}\n      # the only one\n");

    [Fact]
    public void The_same_scenario_gives_the_same_text() => Assert.Same(Text, ScenarioFile.Edited(Text, Before, Before));

    [Fact]
    public void A_text_that_says_something_else_is_refused() =>
        Assert.Throws<ArgumentException>(() => ScenarioFile.Edited(Text, Before with { Title = "Sea" },
            Before with { Title = "Pond" }));

    [Fact]
    public void A_text_that_cannot_be_read_says_where()
    {
        var problems = Assert.Throws<ScenarioProblemsException>(() => ScenarioFile.Edited(Text + "  x: {", Before,
            Before with { Title = "Pond" })).Problems;
        Each.Of(problems, problem => Assert.NotEqual(TextPlace.None, problem.At));
    }

    [Fact]
    public void A_scenario_that_no_file_can_say_is_refused() =>
        Assert.Equal("title",
            Assert.Single(Assert.Throws<ScenarioProblemsException>(() => ScenarioFile.Edited(Text, Before,
            Before with { Title = "" })).Problems).Path);

    /// <summary>The way out that no known file needs: a whole group is written anew, with its comments above it.</summary>
    [Fact]
    public void A_group_that_is_written_anew_keeps_its_comments_above_it()
    {
        var after = Blocks(blocks => [.. blocks.Skip(1)]);
        var (was, will) = ((MapNode)ScenarioFormat.Whole.Write(Before), (MapNode)ScenarioFormat.Whole.Write(after));
        foreach (var path in (string[])["days.one.blocks", "days.one", "days"])
        {
            var root = PlacedTree.Read(Text);
            var text = new KeptText(Text, root, new HashSet<string> { path }).Root(root, was, will);
            Assert.Equal(ScenarioFile.Text(after), ScenarioFile.Text(EditedFiles.Read(text)));
            Assert.Empty(EditedFiles.Lost(Text, text));
        }
    }

    private static Scenario Blocks(
        Func<IReadOnlyList<KeyValuePair<string, DayBlock>>, IReadOnlyList<KeyValuePair<string, DayBlock>>> change) =>
        Before with { Days = Before.Days.With("one",
            Before.Days["one"] with { Blocks = new(change([.. Before.Days["one"].Blocks])) }) };

    private static void Becomes(Scenario after, string change)
    {
        var (from, to) = (change[..change.IndexOf('|', StringComparison.Ordinal)],
            change[(change.IndexOf('|', StringComparison.Ordinal) + 1)..]);
        Assert.Contains(from, Text, StringComparison.Ordinal);
        Assert.Equal(Text.Replace(from, to, StringComparison.Ordinal), ScenarioFile.Edited(Text, Before, after));
    }
}
