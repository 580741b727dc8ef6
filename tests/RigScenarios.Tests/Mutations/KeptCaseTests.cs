using System.Text;

namespace RigScenarios.Tests.Mutations;

/// <summary>
/// Files that led to something wrong once, kept as they were: data/kept. Each says in its first lines what it is about
/// (<c># case:</c>), what comes of it (<c># end:</c>) and, where it matters, words that it is told with (<c># says:</c>).
/// </summary>
public sealed class KeptCaseTests
{
    public static TheoryData<string> Cases => [.. Directory.EnumerateFiles(Repository.TestData("kept"), "*.yaml")
        .Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_kept_file_is_told_as_it_says(string name)
    {
        var bytes = File.ReadAllBytes(Path.Combine(Repository.TestData("kept"), name));
        var head = Encoding.UTF8.GetString(bytes).Split('\n').TakeWhile(line => line.StartsWith("# ", StringComparison.Ordinal))
            .Select(line => line[2..].Split(": ", 2)).ToList();
        Assert.Contains(head, line => line[0] == "case");
        using var trial = new MutationTrial(Repository.Data());
        var result = trial.Run(bytes);
        Assert.Null(result.Fault);
        Assert.Equal(Assert.Single(head, line => line[0] == "end")[1], result.End.ToString());
        // Lines end where the screen does.
        var words = string.Join(' ', result.Words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (var says in head.Where(line => line[0] == "says"))
            Assert.Contains(says[1], words, StringComparison.Ordinal);
    }

    [Fact]
    public void There_are_some() => Assert.True(Cases.Count >= 10);
}
