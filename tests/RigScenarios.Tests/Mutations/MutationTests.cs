using System.Globalization;

namespace RigScenarios.Tests.Mutations;

/// <summary>
/// Files of data/, changed by chance: none leads to anything but plain words or finite figures, in bounded time. Any number of
/// them: the command <c>mutate</c> of the benchmarks, which makes the same files from the same seed.
/// </summary>
public sealed class MutationTests(ITestOutputHelper output)
{
    private const int Seed = 18;
    private const int Count = 300;

    [Fact]
    public void Files_changed_by_chance_are_refused_in_words_or_answered_in_figures()
    {
        var mutator = new FileMutator(Repository.Data());
        using var trial = new MutationTrial(Repository.Data());
        var ends = new Dictionary<TrialEnd, int>();
        var faults = new List<string>();
        for (var number = 0; number < Count; number++)
        {
            TestContext.Current.CancellationToken.ThrowIfCancellationRequested();
            var file = mutator.Make(Seed, number);
            var result = trial.Run(file);
            ends[result.End] = ends.GetValueOrDefault(result.End) + 1;
            if (result.Fault is { } fault)
                faults.Add($"{file}\n  again: dotnet run -c Release --project tests/RigScenarios.Benchmarks -- "
                    + $"mutate 1 --seed {Seed} --from {number}\n  {string.Join('\n', fault.Split('\n').Take(5))}");
        }
        output.WriteLine($"seed {Seed}: {string.Join(", ", ends.Select(end => $"{end.Key} {end.Value}"))}");
        Assert.True(faults.Count == 0, string.Join("\n", faults));
        // Enough of them got as far as an answer, and enough were refused, or this would show little.
        Assert.True(ends[TrialEnd.Answered] >= Count / 5, $"only {ends[TrialEnd.Answered]} of {Count} were answered");
        Assert.True(ends[TrialEnd.Refused] >= Count / 5, $"only {ends[TrialEnd.Refused]} of {Count} were refused");
    }

    [Fact]
    public void As_they_are_all_files_of_data_are_answered()
    {
        using var trial = new MutationTrial(Repository.Data());
        var files = Repository.ScenarioFiles.Concat(Repository.PartsFiles)
            .Select(path => Path.GetRelativePath(Repository.Data(), path).Replace('\\', '/')).ToList();
        Assert.NotEmpty(files);
        foreach (var file in files)
        {
            var result = trial.Unchanged(file);
            Assert.Null(result.Fault);
            Assert.True(result.End == TrialEnd.Answered, $"{file}: {result.Words}");
        }
    }

    [Fact]
    public void The_same_seed_makes_the_same_files_and_every_change_comes_up()
    {
        var (one, other) = (new FileMutator(Repository.Data()), new FileMutator(Repository.Data()));
        var files = Enumerable.Range(0, 400).Select(number => one.Make(7, number)).ToList();
        foreach (var file in files.Take(40))
        {
            var again = other.Make(7, file.Number);
            Assert.Equal(file.Bytes, again.Bytes);
            Assert.Equal(file.ToString(), again.ToString());
        }
        Assert.NotEqual(files[0].Bytes, one.Make(8, 0).Bytes);
        var drawn = files.SelectMany(file => file.Changes).ToHashSet(StringComparer.Ordinal);
        Assert.Empty(one.Changes.Append("bytes").Except(drawn));
        // A change that changes nothing is none: of a hundred files hardly one is as it was.
        var same = files.Count(file => file.Bytes.AsSpan()
            .SequenceEqual(File.ReadAllBytes(Path.Combine(Repository.Data(), file.Name))));
        Assert.True(same < files.Count / 20,
            string.Create(CultureInfo.InvariantCulture, $"{same} of {files.Count} are as they were"));
    }

    [Theory]
    [InlineData("{\"a\": [1, 2.5, {\"b\": 1e999}]}")]
    [InlineData("{\"a\": \"NaN\"}")]
    [InlineData("[\"Infinity\"]")]
    public void A_figure_that_is_none_would_be_seen(string json) =>
        Assert.NotNull(Record.Exception(() => MutationTrial.Finite(json)));

    [Theory]
    [InlineData("")]
    [InlineData("a\u001bb")]
    [InlineData("a\nb")]
    [InlineData("error: something went wrong inside RigScenarios")]
    public void A_message_that_is_none_would_be_seen(string message) =>
        Assert.NotNull(Record.Exception(() => MutationTrial.Readable(message, isPage: false)));

    [Fact]
    public void A_figure_without_end_would_be_seen_in_a_text() =>
        Assert.NotNull(Record.Exception(() => MutationTrial.Readable("left\nInfinity % over", isPage: true)));
}
