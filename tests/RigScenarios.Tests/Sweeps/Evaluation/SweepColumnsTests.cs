using RigScenarios.Answers;
using RigScenarios.Files;
using RigScenarios.Limits;
using RigScenarios.Scenarios;
using RigScenarios.Sweeps;
using RigScenarios.Sweeps.Evaluation;

namespace RigScenarios.Tests.Sweeps.Evaluation;

public sealed class SweepColumnsTests
{
    private static CancellationToken Cancellation => TestContext.Current.CancellationToken;

    public static TheoryData<string> Demos => [.. Directory.EnumerateFiles(Repository.Data("scenarios"), "*.yaml")
        .Select(file => Path.GetFileName(file)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Demos))]
    public void Every_column_is_what_the_answer_says(string file)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        var build = scenario.Builds.Keys.First();
        var question = new SweepQuestion(scenario, build, [], new(), SweepColumns.All(scenario));
        var record = Assert.Single(SweepRun.Records(question, null, Cancellation));
        var answer = RigAnswer.Of(scenario, build, [], cancellation: Cancellation);
        var cells = question.Columns.Zip(record.Cells).ToDictionary(pair => pair.First.Name, pair => pair.Second);
        Assert.Equal(answer.Simulation.Completes && !answer.NothingArrives, cells["lasts"].YesNo);
        Assert.Equal(answer.NothingArrives ? null : answer.Simulation.Runtime.Hours, cells["runtime_h"].Number);
        Assert.Equal(answer.NothingArrives ? null : answer.Reserve.Time.Hours, cells["reserve_h"].Number);
        Assert.Equal(answer.NothingArrives ? null : answer.Simulation.EnergyLeft.WattHours, cells["energy_left_Wh"].Number);
        Assert.Equal(answer.Verdict.InWords(), cells["verdict"].Text);
        Assert.Equal(answer.Verdict != Verdict.Fails, cells["nothing_fails"].YesNo);
        foreach (var (kind, name) in new[]
        {
            (QuestionKind.Power, "power"), (QuestionKind.Wiring, "wiring"), (QuestionKind.Balance, "balance"),
            (QuestionKind.Stand, "stand"), (QuestionKind.Travel, "travel"), (QuestionKind.Cost, "cost"),
        })
            Assert.Equal(answer.Of(kind)?.Verdict.InWords(), cells[$"{name}_verdict"].Text);
        Assert.Equal(answer.Balance?.Mass.Mass.Kilograms, cells["mass_kg"].Number);
        Assert.Equal(100 * NearestLimit.Of(answer, QuestionKind.Stand)?.Share, cells["stand_left_pct"].Number);
        if (answer.Cost is { } cost)
            Assert.Equal((double?)cost.TotalMoney?.Amount, cells["cost"].Number);
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void A_column_asked_alone_is_what_it_is_beside_all(string file)
    {
        var scenario = ScenarioFile.Read(Repository.Data("scenarios", file));
        var question = new SweepQuestion(scenario, scenario.Builds.Keys.First(), [], new(), SweepColumns.All(scenario));
        var all = Assert.Single(SweepRun.Records(question, null, Cancellation)).Cells;
        Each.Pair(question.Columns, all, (column, cell) => Assert.Equal(Rounded(cell),
            Rounded(Assert.Single(SweepRun.Records(question with { Columns = [column] }, null, Cancellation)).Cells[0])));
    }

    [Fact]
    public void The_usual_columns_are_those_of_a_table()
    {
        var table = GridSweep.Run(SweptHarbour.Scenario, "tripod", "day-one", [SweptHarbour.Cold, SweptHarbour.Energy],
            null, Cancellation);
        var heading = table.ToCsv().Split("\r\n")[0].Split(',')[2..];
        var usual = SweepColumns.Usual.Select(column => column.Name).ToList();
        Assert.Equal(heading, usual.Where(name => name != "ends_at_h"));
        var records = SweepRun.Records(SweptHarbour.Ask(SweptHarbour.Grid), null, Cancellation).ToList();
        Each.Pair(table.Rows, records, (row, record) =>
        {
            Assert.Equal(row.Result.Runtime.Hours, record.Cells[usual.IndexOf("runtime_h")].Number);
            Assert.Equal(row.Ends?.ToString(), record.Cells[usual.IndexOf("stopped_by")].Text);
            Assert.Equal(row.FirstStop?.Block, record.Cells[usual.IndexOf("stopped_in")].Text);
            Assert.Equal(row.Result.FromPacks.WattHours, record.Cells[usual.IndexOf("from_batteries_Wh")].Number);
        });
    }

    [Fact]
    public void Names_are_unique_and_say_their_unit()
    {
        var all = SweepColumns.All(SweptHarbour.Scenario);
        Assert.Equal(all.Count, all.Select(column => column.Name).Distinct().Count());
        Each.Of(all, column => Assert.EndsWith(".", column.Meaning, StringComparison.Ordinal));
        Each.Of(all.Where(column => column.Unit.Length > 0), column => Assert.Equal(ColumnKind.Number, column.Kind));
    }

    [Fact]
    public void An_unknown_column_is_told_with_the_nearest_one()
    {
        var problem = Assert.Single(Assert.Throws<ScenarioProblemsException>(() =>
            SweepColumns.Choose(SweptHarbour.Scenario, ["lasts", "reserve_hh"])).Problems);
        Assert.Equal("reserve_h", problem.Nearest);
        Assert.Throws<ScenarioProblemsException>(() => SweepColumns.Choose(SweptHarbour.Scenario, []));
    }

    [Fact]
    public void A_cell_tells_zero_no_and_nothing_apart()
    {
        Assert.True(SweepCell.Nothing.IsNothing);
        Assert.True(SweepCell.Of(double.NaN).IsNothing);
        Assert.True(SweepCell.Of("").IsNothing);
        Assert.Equal((0.0, null, false), (SweepCell.Of(0.0).Number, SweepCell.Of(0.0).YesNo, SweepCell.Of(0.0).IsNothing));
        Assert.Equal((0.0, false, "no"), (SweepCell.Of(false).Number, SweepCell.Of(false).YesNo, SweepCell.Of(false).Text));
        Assert.Equal(3, new[] { SweepCell.Of(0.0), SweepCell.Of(false), SweepCell.Nothing }.Distinct().Count());
    }

    // A battery's way through the days does not hang on what else is asked but for the last digits.
    private static object? Rounded(SweepCell cell) => cell.YesNo is null && cell.Number is { } number
        ? Math.Round(number, 3) : cell.Text;
}
