using RigScenarios.Answers;
using RigScenarios.Builds;
using RigScenarios.Charts;
using RigScenarios.Charts.Answers;
using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Builds;
using RigScenarios.Charts.Days;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Sweeps;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;

namespace RigScenarios.Notebooks.Engine;

/// <summary>How the library's own results are shown: a build, an answer, a sweep or a chart as a picture, a scenario as a
/// table.</summary>
internal static class LibraryValues
{
    /// <summary>The types that have a picture or a table of their own, for programs that want to know beforehand.</summary>
    public static IReadOnlyList<Type> Types { get; } =
        [typeof(Figure), typeof(Drawing), typeof(ChartTable), typeof(PagePart), typeof(RigAnswer), typeof(WorkingSets),
            typeof(SweepTable),
            typeof(PoweredBuild), typeof(Build), typeof(BuildBalance), typeof(Scenario)];

    /// <summary>The parts that show a value; null for a value that is none of the library's results.</summary>
    public static IEnumerable<PagePart>? Parts(object value) => value switch
    {
        Figure figure => [new FigurePart(figure)],
        Drawing drawing => [new DrawingPart(drawing)],
        ChartTable table => [new TablePart(table)],
        PagePart part => [part],
        RigAnswer answer => One(answer),
        WorkingSets sets => AnswerBlock.WouldWork(sets),
        SweepTable table => [new FigurePart(SweepChart.Of(table))],
        PoweredBuild build => [new FigurePart(BuildChart.Of(build))],
        Build build => [new TablePart(BuildTable.Of(build))],
        BuildBalance balance => [new AnswerPart(BalanceWords.Answer(balance), BalanceWords.Cautions(balance)),
            new DrawingPart(BuildDrawing.Of(balance))],
        Scenario scenario => [new HeadingPart(scenario.Title, 3), new TablePart(BuildTable.Of(scenario))],
        _ => null,
    };

    private static IEnumerable<PagePart> One(RigAnswer answer)
    {
        yield return AnswerBlock.Of(answer);
        if (answer.Simulation.Series.Count > 0)
            yield return new FigurePart(DayChart.Of(answer, "The day on the battery"));
    }
}
