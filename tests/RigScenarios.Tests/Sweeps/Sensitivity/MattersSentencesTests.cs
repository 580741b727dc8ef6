using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps.Sampling;
using RigScenarios.Sweeps.Sensitivity;
using UnitsNet;

namespace RigScenarios.Tests.Sweeps.Sensitivity;

public class MattersSentencesTests
{
    private const string Capacity = "parts.flat.battery.capacity=between 8 Ah and 12 Ah";

    [Fact]
    public void What_always_lasts_is_told_with_how_sure_that_is()
    {
        var found = Run("{all: {length: 1 h, others: record}}", Capacity);

        // Wilson's interval of 128 of 128: 1.96²/(128 + 1.96²) is left open.
        Assert.Equal("The day lasts in all 128 runs, so that the chance is 97 % to 100 %.", MattersSentences.Headline(found));
        Assert.Matches(@"^8 of 10 last to wrap with 3 h \d+ min left or more\.$", MattersSentences.Chances(found)[0]);
        Assert.Equal("With every figure as it stands in the file it lasts the day with 4 h left.",
            MattersSentences.Chances(found)[^1]);
    }

    [Fact]
    public void What_never_lasts_is_told_with_the_moment_at_which_it_ends()
    {
        var found = Run("{all: {length: 9 h, others: record}}", Capacity);

        Assert.StartsWith("The day lasts in none of 128 runs", MattersSentences.Headline(found), StringComparison.Ordinal);
        Assert.Matches(@"^5 of 10 last beyond (4 h 5\d|5 h( \d)?) ?(min)? into the day\.$", MattersSentences.Chances(found)[1]);
    }

    [Fact]
    public void Measuring_is_told_with_what_it_leaves_and_how_often_one_would_be_wrong()
    {
        var found = Run("{all: {length: 5 h, others: record}}", Capacity);

        var first = Assert.Single(MattersSentences.First(found));
        Assert.StartsWith("Measure parts.flat.battery.capacity: the reserve would be known to ±0 min instead of ±3",
            first, StringComparison.Ordinal);
        Assert.Matches("you would be wrong about whether it lasts .* instead of (4|5) times in 10", first);
        Assert.Contains("1 with a spread that was given", MattersSentences.Basis(found)[0], StringComparison.Ordinal);
        Assert.Equal("Parts.flat.battery.capacity from 8.4 Ah to 11.6 Ah: -48 min to 48 min.",
            Assert.Single(MattersSentences.Alone(found)));
    }

    [Fact]
    public void What_moves_nothing_is_told_as_that()
    {
        var found = Run("{all: {length: 5 h, others: record}}", "parts.light.power.record=5 W +- 1 W");

        Assert.Equal("Nothing of it moves the figure.", Assert.Single(MattersSentences.Shares(found)));
        Assert.Equal("Nothing of it, known alone, would make the answer noticeably surer.",
            Assert.Single(MattersSentences.First(found)));
        Assert.Empty(MattersSentences.Alone(found));
    }

    [Fact]
    public void A_figure_of_the_rig_at_rest_is_told_by_its_spread()
    {
        var found = Run("{all: {length: 5 h, others: record}}", "parts.flat.mass=900 g +- 50 g", "mass_kg");

        Assert.Matches(@"^In 8 of 10 runs the figure mass_kg is 0\.8\d+ kg to 0\.9\d+ kg; half have more than",
            MattersSentences.Headline(found));
        Assert.Empty(MattersSentences.Chances(found));
    }

    [Fact]
    public void Runs_of_the_whole_answer_that_nobody_can_judge_count_neither_way()
    {
        var found = Run("{all: {length: 5 h, others: record}}", Capacity);

        string Told(int holds, int fails, int unknown) => MattersSentences.Chances(found with
        {
            Whole = new(new Dictionary<Verdict, int>
            {
                [Verdict.Holds] = holds, [Verdict.Fails] = fails, [Verdict.NotKnown] = unknown,
            }, new Dictionary<QuestionKind, int> { [QuestionKind.Power] = fails }, []),
        })[^1];

        Assert.Equal("Nothing of the whole answer fails 7 times in 10 (70 %, standard error 4.6 %, of 100 runs). What fails, in "
            + "how many runs: power 30. In 20 more a figure is missing, and nobody can say.", Told(70, 30, 20));
        Assert.Equal("Whether the whole answer holds is not known in any run: a figure is missing.", Told(0, 0, 9));
    }

    [Fact]
    public void A_chance_of_the_whole_counts_close_as_held()
    {
        var whole = new WholeChance(new Dictionary<Verdict, int> { [Verdict.Close] = 3, [Verdict.Fails] = 1 },
            new Dictionary<QuestionKind, int>(), []);

        Assert.Equal(Ratio.FromPercent(75).Percent, whole.NothingFails.Share!.Value.Percent, 1e-9);
        Assert.Equal(0, whole.Holds.Share!.Value.Percent, 1e-9);
    }

    private static SensitivityAnswer Run(string blocks, string spread, string figure = SensitivityQuestion.UsualFigure)
    {
        Scenario scenario = SmallScenario.Read(SmallScenario.Text(blocks: blocks));
        return SensitivityRun.Of(new(scenario, "one", [])
        {
            Uncertain = UsualUncertainty.Only([UncertainField.Parse(scenario, spread)], []), Figure = figure, WholeSamples = 0,
            Options = new() { Rows = 64, Redraws = 50 },
        }, null, TestContext.Current.CancellationToken);
    }
}
