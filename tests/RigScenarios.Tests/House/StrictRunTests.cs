using CsCheck;
using Snapshooter.Xunit3;

namespace RigScenarios.Tests.House;

/// <summary>What all tests rest on: a snapshot that is missing, a list that is empty and a case that is red fail.</summary>
public sealed class StrictRunTests
{
    [Theory]
    [InlineData("1", null, true)]
    [InlineData("1", "", true)]
    [InlineData("1", "false", true)]
    [InlineData("1", "0", true)]
    [InlineData("0", "true", false)]
    [InlineData(null, "true", false)]
    [InlineData(null, null, false)]
    public void Snapshots_are_accepted_where_that_is_asked_for(string? accept, string? ci, bool isAccepted) =>
        Assert.Equal(isAccepted, Accepting.Wanted(name => name == Accepting.Variable ? accept : name == "CI" ? ci : null));

    [Theory]
    [InlineData("true")]
    [InlineData("1")]
    [InlineData("yes")]
    public void Where_CI_is_set_accepting_is_refused(string ci)
    {
        var error = Assert.Throws<InvalidOperationException>(() =>
            Accepting.Wanted(name => name == Accepting.Variable ? "1" : ci));
        Assert.Contains(Accepting.Variable, error.Message, StringComparison.Ordinal);
    }

    // The package takes a snapshot that is not there as accepted unless this variable, its only one, says "on".
    [Fact]
    public void A_missing_snapshot_fails_and_is_not_taken()
    {
        Assert.SkipWhen(Accepting.IsWanted, "snapshots are being accepted");
        Assert.Equal("on", Environment.GetEnvironmentVariable(StrictSnapshots.Mode));
        var folder = Path.Combine(Repository.Root, "tests", "RigScenarios.Tests", "House", "__snapshots__");
        const string name = "A_snapshot_that_nobody_took";
        Assert.ThrowsAny<Exception>(() => Snapshot.Match("anything", name));
        Assert.False(File.Exists(Path.Combine(folder, $"{name}.snap")));
        // The text stands aside, to be read and moved up by hand.
        Directory.Delete(folder, recursive: true);
    }

    [Fact]
    public void A_list_that_is_too_short_fails()
    {
        int[] none = [], one = [1];
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Each.Of(none, _ => { }));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Each.Of(one, _ => { }, atLeast: 2));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Each.HasNot(none, _ => false));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Each.HasNot(one, _ => true));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Each.Step(one, (_, _) => { }));
        Assert.ThrowsAny<Xunit.Sdk.XunitException>(() => Each.Pair(one, none, (_, _) => { }, atLeast: 0));
        Each.Of(none, _ => { }, atLeast: 0);
        Each.Of(one, item => Assert.Equal(1, item));
    }

    [Fact]
    public void A_property_that_looks_at_too_few_cases_fails()
    {
        var error = Assert.ThrowsAny<Exception>(() => Gen.Int[0, 9].Holds((_, _) => { }, cases: 20, atLeast: 1));
        Assert.Contains("Only 0 cases", error.Message, StringComparison.Ordinal);
        error = Assert.ThrowsAny<Exception>(() => Drawn.Cases(1, cases: 20, atLeast: 1, (_, _) => { }));
        Assert.Contains("Only 0 cases", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_red_case_tells_the_seed_that_begins_at_it()
    {
        var drawn = new List<int>();
        var error = Assert.ThrowsAny<Exception>(() => Gen.Int[0, 1_000_000].Holds(value =>
        {
            drawn.Add(value);
            Assert.True(value < 900_000);
        }, cases: 1000));
        var seed = error.Message.Split($"{Seeds.Variable}=")[1].Split(' ')[0];
        Assert.Contains($"Case {drawn.FindIndex(value => value >= 900_000) + 1} of 1000, seed {seed}", error.Message,
            StringComparison.Ordinal);
        Assert.Equal(drawn.First(value => value >= 900_000), Gen.Int[0, 1_000_000].Generate(PCG.Parse(seed), null, out _));
    }

    [Fact]
    public void Cases_drawn_by_hand_tell_their_seed()
    {
        var error = Assert.ThrowsAny<Exception>(() => Drawn.Cases(40, cases: 20,
            random => Assert.NotEqual(new Random(47).Next(), random.Next())));
        Assert.StartsWith($"Seed 47 ({Seeds.Variable}=47 ", error.Message, StringComparison.Ordinal);
    }
}
