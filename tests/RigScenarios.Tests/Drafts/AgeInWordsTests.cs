using RigScenarios.Cells.Aging;
using RigScenarios.Drafts;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Drafts;

/// <summary>"How old is it?" in the form: words become the file's block of the age, and what nobody says stays unknown.</summary>
public sealed class AgeInWordsTests
{
    private static readonly DateOnly Today = new(2026, 11, 30);

    private static readonly string[] Keys =
        ["age-bought", "age-second-hand", "age-kept", "age-place", "age-shoots", "age-emptied", "age-until"];

    [Fact]
    public void Nothing_said_is_as_new_and_the_answer_says_what_three_years_would_do()
    {
        var answer = Drafting.Answer(Drafting.Small);
        Assert.Null(answer.Scenario!.Builds["rig"].Battery.Life);
        Assert.Equal(100, answer.Answer!.Plan.Batteries.Values.First().MakePack().Pack.Age.CapacityLeft.Percent);
        // 0.894 of the capacity, 0.76 to 0.90 over the sets, 1.16 times the resistance: from the model.
        Assert.Contains(answer.Cautions, caution =>
            caution.Contains("After three years, kept full in a room", StringComparison.Ordinal)
            && caution.Contains("89 % left (76 to 90 %", StringComparison.Ordinal)
            && caution.Contains("1.16 times", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_said_ages_the_battery_and_stands_in_the_file()
    {
        var said = Aged(Drafting.Small.Set("age-until", "2026-11-30"));
        var answer = Drafting.Answer(said);
        Assert.Empty(answer.Problems);
        var life = answer.Scenario!.Builds["rig"].Battery.Life!;
        Assert.Equal((Kept.Half, StoragePlace.WarmStore, Emptied.Mostly, (double?)4, Today),
            (life.Kept, life.Place, life.Emptied, life.ShootsPerMonth, life.Until));
        var left = answer.Answer!.Plan.Batteries.Values.First().MakePack().Pack.Age.CapacityLeft;
        Assert.Equal(life.Life(null).Age.CapacityLeft.DecimalFractions, left.DecimalFractions, 1e-12);
        Assert.True(answer.Answer.Reserve.Time < Drafting.Answer(Drafting.Small).Answer!.Reserve.Time);
        Assert.Contains(answer.Assumed, value => value.Field.EndsWith("capacity-left", StringComparison.Ordinal)
            && value.Why.Contains("other published fits", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_a_day_of_its_own_the_age_is_that_of_the_day_on_which_it_is_asked()
    {
        var open = Aged(GivenRig.Read(Drafting.Small.Tree, Drafting.Small.Frame with { Today = Today }));
        var said = Aged(Drafting.Small.Set("age-until", "2026-11-30"));
        Assert.Equal(Drafting.Answer(said).Answer!.Reserve, Drafting.Answer(open).Answer!.Reserve);
        Assert.Null(Drafting.Answer(open).Scenario!.Builds["rig"].Battery.Life!.Until);
    }

    [Fact]
    public void A_measured_capacity_outweighs_the_words()
    {
        var answer = Drafting.Answer(Aged(Drafting.Small.Set("age-until", "2026-11-30")).Set("capacity-left", "84 %"));
        Assert.Equal(84, answer.Answer!.Plan.Batteries.Values.First().MakePack().Pack.Age.CapacityLeft.Percent, 1e-9);
    }

    [Fact]
    public void Every_choice_and_example_is_one_that_the_file_takes() => Each.Of(
        Keys.Select(RigFields.Of).SelectMany(field => field.Choices.Select(choice => choice.Text).Append(field.Example),
            (field, text) => (field.Key, Text: text)),
        one => Assert.DoesNotContain(Drafting.Answer(Drafting.Small.Set("age-bought", "2023-03")
            .Set("age-until", "2026-11-30").Set(one.Key, one.Text)).Problems,
            problem => problem.Severity == Severity.Error), atLeast: 20);

    [Theory]
    [InlineData("age-bought", "last spring")]
    [InlineData("age-bought", "2027-01")]
    [InlineData("age-kept", "somewhere")]
    [InlineData("age-place", "cellar")]
    [InlineData("age-shoots", "80")]
    [InlineData("age-emptied", "200 %")]
    public void What_can_not_be_is_told_at_its_field(string key, string text)
    {
        var given = Drafting.Small.Set("age-bought", "2023-03").Set("age-until", "2026-11-30").Set(key, text);
        Assert.Contains(Drafting.Answer(given).Problems,
            problem => problem.Path == RigFields.Of(key).PathIn(given.Frame) && problem.Accepted is not null);
    }

    private static GivenRig Aged(GivenRig given) => given.Set("age-bought", "2023-03").Set("age-kept", "half")
        .Set("age-place", "warm store").Set("age-shoots", "4").Set("age-emptied", "mostly");
}
