using RigScenarios.Files;
using RigScenarios.Files.Formats;
using RigScenarios.Scenarios;
using YamlDotNet.Core;
using YamlDotNet.Core.Tokens;

namespace RigScenarios.Tests.Files.Editing;

/// <summary>Texts whose comments are to survive: the demo files, the example of the documentation, and files written as oddly as
/// YAML allows.</summary>
internal static class EditedFiles
{
    private const string InBraces = """
        # top
        {rigscenarios: scenario 1, # kind
         title: 'Single''s', # title, with a comma
         # above kit
         kit: {a: {part: p}, # a
           "b": {part: "p#1", count: 2} # b
         }, builds: {x: {stance: hand, battery: {item: a}, devices: {a: {}, b: {essential: true,},}, carries: [a, # first
           b ]}},
         days: {d: {blocks: {one: {length: 1 h 5 min}, two: {"length":"90 min", states: {a: record # roll
           , b: off}}}}} # end
        }
        # bottom
        """;

    private const string OverLines = """
        %YAML 1.1
        --- # start
        # about the file
        "rigscenarios": scenario 1
        title: "Quoted # not a comment"   # a title
        note: | # how it is
           first # no comment
             second

           third


        # after the note
        parts-from:
        - ../parts # shared
        # not yet:
        # - other.yaml
        - "more, parts"
        kit:   # the things

            # the camera
            camera:   # body
                # which
                part: body-a   # this one
                # no count
            ? lens
            : part: lens-a
            brick: {part: brick,
                    count: 2} # two of them

            # below brick
          # odd
        builds:
          tripod:
            stance:
              tripod
            battery:
              {item: brick, # inside
               charge: 100 %}
            devices:
               camera:
                  power:
                    record: 15 W # measured
                  # after power
               lens: {}
            carries: [ camera,
              lens ] # both
            # nothing else
        days:
          one:
            starts: '06:30'
            blocks:
              # first thing
              a: {length: 1h30min}   # early

              b:
                length: >-
                  45
                  min
                states:
                  camera: record   # roll
                  # lens: off
              # c is gone
              # - really

              d: {length: 5 min, states: {}}
          # no second day
        # the end
        """;

    private const string WithLists = """
        title: The kind stands below
        note: >
          A folded remark that
          goes on.

          # no comment, but text
        rigscenarios: scenario 1   # here
        parts:
          # a pack that was measured
          pack:
            kind: battery
            name: A pack
            mass: 1 kg
            battery:
              energy: 98 Wh   # label
              voltage: 14.4 V
              open-circuit-voltage:
                # empty
                - charge: 0 %
                  voltage: 3 V
                - # half
                  charge: 50 %
                  voltage: 3.6 V
                - {charge: 100 %, # full
                   voltage: 4.2 V}
              usable-capacity: [{temperature: 0 °C, usable: 75 %}, {temperature: 25 °C, usable: 100 %}]
        conditions: {}
        kit: {pack: {part: pack, count: 1}}
        builds: {b: {stance: shoulder, battery: {item: pack, resistance-growth: 1.10}, regulators: {}, devices: {}, carries: []}}
        days:
          d:
            ambient: -8C
            blocks: {}
        """;

    public static IReadOnlyDictionary<string, string> All { get; } = Make();

    /// <summary>Reads a text without its parts files and without the checks between fields, which an edit doesn't depend
    /// on.</summary>
    public static Scenario Read(string text)
    {
        var log = new ReadLog("edited.yaml");
        Assert.True(FileFormat.TryReadText(TextFile.Take(text, log) ?? "", FileFormat.Scenario, ScenarioFormat.Whole, log,
            out var scenario), string.Join('\n', log.Problems) + "\n" + text);
        return scenario;
    }

    /// <summary>The comments as the parser's own scanner finds them, sorted.</summary>
    public static List<string> Comments(string text)
    {
        var scanner = new Scanner(new StringReader(text), skipComments: false);
        var comments = new List<string>();
        while (scanner.MoveNext())
        {
            if (scanner.Current is Comment comment)
                comments.Add(comment.Value.TrimEnd());
        }
        comments.Sort(StringComparer.Ordinal);
        return comments;
    }

    /// <summary>Those of the wanted comments that the text doesn't have.</summary>
    public static List<string> Lost(string before, string after)
    {
        var found = Comments(after);
        return Comments(before).Where(comment => !found.Remove(comment)).ToList();
    }

    private static Dictionary<string, string> Make()
    {
        var page = File.ReadAllText(Path.Combine(Repository.Root, "docs", "file-format.md"));
        var start = page.IndexOf("```yaml\n", StringComparison.Ordinal) + 8;
        var files = Repository.ScenarioFiles.ToDictionary(path => Path.GetFileName(path), File.ReadAllText);
        files["the example of the documentation"] = page[start..page.IndexOf("```", start, StringComparison.Ordinal)];
        files["in braces"] = InBraces;
        files["over lines"] = OverLines;
        files["with lists"] = WithLists;
        files["small"] = SmallScenario.Text(parts: "  other: {kind: lens, name: Other}", day: "title: A day",
            build: "title: One # build");
        files["over lines, of another system"] = OverLines.Replace("\n", "\r\n", StringComparison.Ordinal);
        files["over lines, with a mark and a last line break"] = "\uFEFF" + OverLines + "\n";
        return files;
    }
}
