using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using RigScenarios.Fits.Notes;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.Fits.Notes;

/// <summary>Field notes as they stand in files.</summary>
public sealed partial class FieldNotesFileTests
{
    private static readonly string MarketHall = Repository.Data("scenarios", "market-hall.yaml");

    private static readonly string Page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "field-notes.md"))
        .ReplaceLineEndings("\n");

    [Fact]
    public void The_five_lines_of_the_page_are_read()
    {
        var notes = Read("notes.yaml", Example("yaml"), MarketHall).Notes;
        var note = Assert.Single(notes.Notes).Value;
        Assert.Equal((250.0, 3.0, "rain"), (note.Lasted!.Value.Minutes, note.Air!.Value.DegreesCelsius, note.Remark));
        Assert.Equal(DeviceUse.Of(0, 0.4, 0.6), note.Devices["camera"]);
        Assert.Equal(DeviceUse.AllRecord, note.Devices["monitor"]);
    }

    [Fact]
    public void The_table_of_the_page_says_the_same_as_its_fields_do()
    {
        var table = Read("notes.csv", Example("csv"), MarketHall).Notes;
        var file = Read("notes.yaml", """
            rigscenarios: field notes 1
            notes:
              tuesday: {date: 2026-11-10, air: 3 °C, build: shoulder, devices: {camera: record 60 %, monitor: on},
                lasted: 4 h 10 min, remark: rain}
              friday:
                {date: 2026-11-13, air: 12 °C, build: tripod, devices: {camera: record 40 %, monitor: on},
                 still-running-after: 3 h, shown: 35 %, remark: wrap came first}
            """, MarketHall).Notes;
        Assert.Equal(file.Notes.Keys, table.Notes.Keys);
        Assert.Equal(FieldNotesFile.Text(file), FieldNotesFile.Text(table));
    }

    [Theory]
    [InlineData(';')]
    [InlineData('\t')]
    public void A_table_may_stand_apart_by_other_marks(char separator)
    {
        var other = Example("csv").Replace(',', separator);
        Assert.Equal(FieldNotesFile.Text(Read("notes.csv", Example("csv"), MarketHall).Notes),
            FieldNotesFile.Text(Read("notes.csv", other, MarketHall).Notes));
    }

    [Fact]
    public void What_is_written_reads_back()
    {
        var noted = FieldNotesFile.TryRead(Repository.Data("field-notes", "market-hall.yaml")).Noted!;
        var text = FieldNotesFile.Text(noted.Notes);
        Assert.Equal(text, FieldNotesFile.Text(FieldNotesFile.TryReadText(text,
            Repository.Data("field-notes", "again.yaml")).Noted!.Notes));
    }

    [Theory]
    [InlineData("off", 1, 0, 0, "off")]
    [InlineData("standby", 0, 1, 0, "standby")]
    [InlineData("on", 0, 0, 1, "record")]
    [InlineData("record 60 %", 0, 0.4, 0.6, "record 60 %")]
    [InlineData("record 50%,standby 20%", 0.3, 0.2, 0.5, "record 50 %, standby 20 %, off 30 %")]
    [InlineData("standby 25 %", 0.75, 0.25, 0, "standby 25 %, off 75 %")]
    [InlineData("record ٦٠ %", 0, 0.4, 0.6, "record 60 %")]
    public void The_use_of_a_device_is_read_as_people_write_it(string text, double off, double standby, double record,
        string written)
    {
        var notes = Read("n.yaml", Note($"camera: \"{text}\""), MarketHall).Notes;
        var use = notes.Notes["one"].Devices["camera"];
        Assert.Equal(off, use.Off.DecimalFractions, 1e-12);
        Assert.Equal(standby, use.Standby.DecimalFractions, 1e-12);
        Assert.Equal(record, use.Record.DecimalFractions, 1e-12);
        Assert.Contains($"camera: {written}", FieldNotesFile.Text(notes).Replace("'", "", StringComparison.Ordinal),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("recording")]
    [InlineData("record 120 %")]
    [InlineData("record 60")]
    [InlineData("record 60 %, standby 60 %")]
    [InlineData("record, standby")]
    [InlineData("record -5 %")]
    [InlineData("record 60,5 %")]
    public void Other_uses_are_refused_with_what_is_accepted(string text)
    {
        var (noted, problems) = Try("n.yaml", Note($"camera: \"{text}\""), MarketHall);
        Assert.Null(noted);
        var problem = Assert.Single(problems);
        Assert.Equal("notes.one.devices.camera", problem.Path);
        Assert.Contains("\"record 60 %\"", problem.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void All_mistakes_are_told_at_once_with_their_lines_and_the_nearest_names()
    {
        var (noted, problems) = Try("notes.yaml", """
            rigscenarios: field notes 1
            build: tripot
            """, MarketHall);
        Assert.Null(noted);
        var (none, more) = Try("notes.yaml", """
            rigscenarios: field notes 1
            notes:
              both: {lasted: 3 h, still-running-after: 2 h, devices: {camera: record}}
              neither: {devices: {camera: record}}
              unsaid: {lasted: 3 h}
              twice: {lasted: 3 h, devices: {camera: record}, as-planned: morning}
              unknown: {lasted: 3 h, devices: {camra: record, transmiter: on}}
              no-day: {lasted: 3 h, as-planned: mornin}
              shown: {lasted: 3 h, shown: 20 %, devices: {camera: record}}
              gap: {lasted: 3 h, stretches: [{devices: {camera: record}}, {length: 1 h, devices: {camera: record}}]}
              ended: {lasted: 3 h, ended-by: cammera, devices: {camera: record}}
              where: {lasted: 3 h, build: shuolder, devices: {camera: record}}
            logs:
              one: {file: a.csv, units: {voltage: mV}, devices: {monitr: on}}
            meters:
              camera: {off: 1 W}
              monitr: {record: 8 W}
            capacity-test: {}
            known: [montor]
            """, MarketHall);
        Assert.Null(none);
        Snapshot.Match(string.Join('\n', problems.Concat(more).Select(problem => problem.ToString())
            .Select(text => text[text.IndexOf("notes.", StringComparison.Ordinal)..])) + "\n");
    }

    [Fact]
    public void A_table_tells_its_cell()
    {
        var (noted, problems) = Try("notes.csv",
            "name,air,lastet,devices.camera\none,3 °C,4 h,record\ntwo,cold,2 h,recrd,1\none,,,\n",
            MarketHall);
        Assert.Null(noted);
        Snapshot.Match(string.Join('\n', problems.Select(problem => problem.ToString())
            .Select(text => text[text.IndexOf("notes.csv", StringComparison.Ordinal)..])) + "\n");
    }

    [Fact]
    public void Without_a_scenario_nothing_can_be_said()
    {
        var (noted, problems) = Try("n.yaml", Note("camera: record"), null);
        Assert.Null(noted);
        Assert.Contains("--scenario FILE", Assert.Single(problems).Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void Notes_of_two_batteries_are_refused()
    {
        using var folder = new TemporaryFolder();
        var rig = SmallScenario.Text().Replace("kit: {", "kit: {other: {part: flat}, ", StringComparison.Ordinal)
            .Replace("days:", "  two: {stance: hand, battery: {item: other}, devices: {camera: {}}}\ndays:",
                StringComparison.Ordinal);
        var file = folder.Write("rig.yaml", rig);
        var (noted, problems) = FieldNotesFile.TryReadText("""
            rigscenarios: field notes 1
            scenario: rig.yaml
            notes:
              one: {lasted: 3 h, devices: {camera: record}}
              two: {lasted: 3 h, build: two, devices: {camera: record}}
            """, Path.Combine(folder.Path, "n.yaml"));
        Assert.Null(noted);
        Assert.Contains(problems, problem => problem.Path == "notes.two.build"
            && problem.Problem.Contains("\"other\"", StringComparison.Ordinal));
        Assert.True(File.Exists(file));
    }

    [Fact]
    public void Every_field_is_named_on_the_page()
    {
        var inCode = Code().Matches(Page).SelectMany(match => Key().Matches(match.Value)).Select(match => match.Value)
            .ToHashSet(StringComparer.Ordinal);
        Each.Of(Names(JsonNode.Parse(FieldNotesFile.JsonSchema)!).Distinct().Except(["load", "duty", "peak", "start-up", "power",
            "time", "length"]), name => Assert.True(inCode.Contains(name), $"docs/field-notes.md doesn't name \"{name}\"."),
            atLeast: 25);
    }

    private static IEnumerable<string> Names(JsonNode schema)
    {
        foreach (var (name, field) in schema["properties"] as JsonObject ?? [])
        {
            yield return name;
            foreach (var inner in Names(field!))
                yield return inner;
        }
        foreach (var below in (string[])["additionalProperties", "items"])
        {
            if (schema[below] is JsonObject inside)
            {
                foreach (var inner in Names(inside))
                    yield return inner;
            }
        }
    }

    private static string Note(string devices) =>
        $"rigscenarios: field notes 1\nnotes:\n  one: {{lasted: 3 h, devices: {{{devices}}}}}\n";

    private static string Example(string language)
    {
        var opening = $"```{language}\n";
        var start = Page.IndexOf(opening, StringComparison.Ordinal) + opening.Length;
        return Page[start..Page.IndexOf("```", start, StringComparison.Ordinal)];
    }

    private static NotedBattery Read(string name, string text, string scenario)
    {
        var (noted, problems) = Try(name, text, scenario);
        Assert.Empty(problems);
        return noted!;
    }

    private static (NotedBattery? Noted, IReadOnlyList<RigScenarios.Scenarios.Diagnostic> Problems) Try(string name, string text,
        string? scenario) => FieldNotesFile.TryReadText(text, name, scenario);

    [GeneratedRegex("`[^`]+`|```.+?```", RegexOptions.Singleline | RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Code();

    [GeneratedRegex("[a-z][a-z-]*", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Key();
}
