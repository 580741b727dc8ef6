using RigScenarios.Drafts;
using RigScenarios.Files;
using RigScenarios.Parts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>Parts files that are known are not read again; one that changed is, and problems stay what they were.</summary>
public sealed class KnownPartsTests
{
    [Fact]
    public void Known_parts_are_those_that_are_read_and_are_read_once()
    {
        var known = new KnownParts();
        var folder = Repository.Data("parts");
        var first = RigLibrary.Read(known, [folder]);
        Assert.Equal(RigLibrary.Read(folder), first);
        var again = RigLibrary.Read(known, [Path.Combine(folder, "..", "parts")]);
        Assert.Equal(first.Keys, again.Keys);
        Each.Of(first.Keys, id => Assert.Same(first[id], again[id]));
    }

    [Fact]
    public void A_file_that_changed_is_read_again()
    {
        using var folder = new TemporaryFolder();
        var known = new KnownParts();
        var path = folder.Write("parts.yaml", Text("440 g"));
        Assert.Equal(440, Mass(RigLibrary.Read(known, [path])));
        folder.Write("parts.yaml", Text("4400 g"));
        Assert.Equal(4400, Mass(RigLibrary.Read(known, [path])));
    }

    [Fact]
    public void A_file_of_the_same_length_that_was_written_later_is_read_again()
    {
        using var folder = new TemporaryFolder();
        var known = new KnownParts();
        var path = folder.Write("parts.yaml", Text("440 g"));
        _ = RigLibrary.Read(known, [path]);
        folder.Write("parts.yaml", Text("450 g"));
        File.SetLastWriteTimeUtc(path, File.GetLastWriteTimeUtc(path).AddSeconds(1));
        Assert.Equal(450, Mass(RigLibrary.Read(known, [path])));
    }

    [Fact]
    public void Problems_are_told_each_time_with_their_lines()
    {
        using var folder = new TemporaryFolder();
        folder.Write("a.yaml", Text("440 g"));
        folder.Write("b.yaml", Text("440 g"));
        folder.Write("c.yaml", Text("440 miles"));
        var known = new KnownParts();
        var first = Problems(() => RigLibrary.Read(folder.Path));
        Each.Of(first, problem => Assert.True(problem.At.Line > 0));
        Assert.Equal(2, first.Select(problem => problem.File).Distinct().Count());
        for (var i = 0; i < 2; i++)
            Assert.Equal(first, Problems(() => RigLibrary.Read(known, [folder.Path])));
    }

    [Fact]
    public void A_file_that_is_not_there_any_more_is_told()
    {
        using var folder = new TemporaryFolder();
        var known = new KnownParts();
        var path = folder.Write("parts.yaml", Text("440 g"));
        _ = RigLibrary.Read(known, [path]);
        File.Delete(path);
        Assert.NotEmpty(Problems(() => RigLibrary.Read(known, [path])));
    }

    private static IReadOnlyList<Diagnostic> Problems(Func<OrderedMap<Part>> read) =>
        Assert.Throws<ScenarioProblemsException>(() => _ = read()).Problems;

    private static double Mass(OrderedMap<Part> parts) => parts["brick"].Mass!.Value.Grams;

    private static string Text(string mass) => $$"""
        rigscenarios: parts 1
        parts:
          brick:
            kind: battery
            name: Brick
            mass: {{mass}}
            size: {length: 39 mm, width: 78 mm, height: 111 mm}
            battery: {energy: 50 Wh, voltage: 14.4 V, maximum-current: 8 A}

        """;
}
