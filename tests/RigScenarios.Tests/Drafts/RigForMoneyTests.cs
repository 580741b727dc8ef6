using RigScenarios.Drafts;
using RigScenarios.Parts;
using RigScenarios.Scenarios;
using RigScenarios.Search.Rigs;

namespace RigScenarios.Tests.Drafts;

/// <summary>The question of the best rig for the money, of what is given in the form.</summary>
public sealed class RigForMoneyTests
{
    // The body alone is listed at 3,600 EUR.
    private static readonly GivenRig Small = Drafting.Small.With("costs.budget", "5000 EUR");

    [Fact]
    public void What_can_be_chosen_from_are_all_listed_parts_of_a_kind_and_not_only_what_is_on_the_rig()
    {
        var question = RigForMoney.Of(Small);
        Assert.Equal(["battery", "monitor"], question.Places.Select(place => place.Name).Order(StringComparer.Ordinal));
        Each.Of(question.Places, place => Assert.Equal(
            Drafting.Library.Where(part => part.Value.Kind == place.Candidates[0].Part!.Kind).Select(part => part.Value.Name)
                .Order(StringComparer.Ordinal),
            place.Candidates.Select(candidate => candidate.Part!.Name).Order(StringComparer.Ordinal)), atLeast: 2);
        Assert.Equal(["day"], question.Days);
        Assert.Equal(5000m, question.Best.Musts.Budget!.Value.Amount);
    }

    [Fact]
    public void Without_a_budget_it_is_refused_at_the_field_of_the_budget()
    {
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() => RigForMoney.Of(Drafting.Small)).Problems);
        Assert.Equal("costs.budget", problem.Path);
        Assert.Contains("2500 EUR", problem.Accepted, StringComparison.Ordinal);
    }

    [Fact]
    public void A_rig_that_is_not_whole_is_refused_at_what_is_missing()
    {
        var refused = Assert.Throws<ScenarioProblemsException>(() =>
            RigForMoney.Of(Drafting.Blank.With("costs.budget", "5000 EUR")));
        Assert.Contains("builds.rig.battery.item", refused.Problems.Select(problem => problem.Path));
    }

    [Fact]
    public void What_a_rig_on_a_tripod_without_head_and_legs_can_not_know_is_not_asked_and_that_is_said()
    {
        var question = RigForMoney.Of(Small);
        Assert.True(question.Best.Musts.Holds);
        Assert.False(question.Best.Musts.StandCounts);
        Assert.False(question.Best.Musts.Balances);
        var result = RigSearch.Find(question, cancellation: TestContext.Current.CancellationToken);
        Assert.NotEmpty(result.Picks);
        Assert.Contains("to stay within the limits of the wiring", RigSearchSentences.Musts(result), StringComparison.Ordinal);
        Assert.Contains(RigSearchSentences.RestsOn(result),
            line => line.Contains("whether any of these rigs tips over is not known", StringComparison.Ordinal));
        // Asked nevertheless, it would leave no rig at all: what nobody knows holds no must.
        var asked = question with { Best = question.Best with { Musts = question.Best.Musts with { StandCounts = true } } };
        Assert.Empty(RigSearch.Find(asked, cancellation: TestContext.Current.CancellationToken).Picks);
    }

    [Fact]
    public void With_head_and_legs_it_is_asked_whether_they_hold()
    {
        string Listed(PartKind kind) => Drafting.Library.First(part => part.Value.Kind == kind).Key;
        var question = RigForMoney.Of(Small.And("head", Listed(PartKind.Head)).And("legs", Listed(PartKind.Tripod)));
        Assert.True(question.Best.Musts.StandCounts);
        Assert.Equal(4, question.Places.Count);
        Assert.Equal("to stay within every limit", RigSearchWords.Must(question, RigMust.Holds));
    }
}
