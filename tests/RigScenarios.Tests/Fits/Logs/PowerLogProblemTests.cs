using RigScenarios.Fits.Logs;

namespace RigScenarios.Tests.Fits.Logs;

/// <summary>What is said of files that can't be used: where, what was found, what is accepted.</summary>
public class PowerLogProblemTests
{
    private const string Example = " Accepted: a line with the names of the columns, such as \"time_s,voltage_V,current_A\", "
        + "and rows of numbers below it, such as \"60,16.52,1.59\".";

    [Theory]
    [InlineData("", "log.csv: error: Nothing stands in the file." + Example)]
    [InlineData("  \n \n", "log.csv: error: Nothing stands in the file." + Example)]
    [InlineData("PK\0\0", "log.csv: error: This is no text with rows of numbers." + Example)]
    [InlineData("Dear all,\nhere is no log.\n", "log.csv:1:1: error: No rows of numbers in the first 2 lines." + Example)]
    [InlineData("time,voltage,current\n", "log.csv:1:1: error: No rows of numbers in the first 1 lines." + Example)]
    [InlineData("time,voltage,current\n0,16,1\n", "log.csv: error: Fewer than two rows have a time, a voltage and a current."
        + Example)]
    [InlineData("time,voltage,current\n0,16,1\n0,16,1\n", "log.csv: error: time: All rows have the same time. "
        + "Accepted: rows with times that rise.")]
    [InlineData("0,16,1\n60,16,1\n",
        "log.csv:1:1: error: The rows begin without a line that names the columns, so that nothing says "
        + "which is the voltage. Accepted: such a line, or the columns by their numbers from the left, such as 1, 2 and 3.")]
    [InlineData("time,volume,current\n0,16,1\n60,16,1\n",
        "log.csv:1:1: error: voltage: No column looks like the voltage; there are "
        + "\"time\", \"volume\", \"current\". Accepted: a column called \"voltage\", or the name of the one that holds it.")]
    [InlineData("time,U1 (V),U2 (V),I\n0,16,16,1\n60,16,16,1\n",
        "log.csv:1:1: error: voltage: Several columns may be the voltage: "
        + "\"U1 (V)\", \"U2 (V)\". Accepted: one of them, named.")]
    [InlineData("time,voltage,current\n0,16,-1\n60,16.5,-1\n120,17,-1\n",
        "log.csv: error: current: The battery is only charged in "
        + "this log. Accepted: a log of a discharge; with the current out of the battery above 0, or a factor below 0 for its "
        + "column.")]
    public void It_is_said_what_was_found_and_what_is_accepted(string text, string expected)
    {
        var (reading, problems) = PowerLogFile.TryRead(new StringReader(text), "log.csv",
            cancellation: TestContext.Current.CancellationToken);

        Assert.Null(reading);
        Assert.Equal(expected, Assert.Single(problems).ToString());
    }

    [Fact]
    public void All_columns_that_are_not_there_are_told_at_once_with_the_nearest_names()
    {
        var columns = new LogColumns { Time = new("tiem"), Voltage = new("U"), Current = new("Curent") };

        var (reading, problems) = PowerLogFile.TryRead(
            new StringReader("time,voltage,current\n0,16,1\n60,16,1\n"), "log.csv", columns,
            TestContext.Current.CancellationToken);

        Assert.Null(reading);
        Assert.Equal(["time", null, "current"], problems.Select(problem => problem.Nearest));
        Each.Of(problems, problem => Assert.Equal(1, problem.At.Line), atLeast: 3);
    }

    [Fact]
    public void A_file_that_is_not_there_is_told_with_the_nearest_name()
    {
        using var folder = new TemporaryFolder();
        folder.Write("evening.csv", "");

        var (_, problems) = PowerLogFile.TryRead(
            Path.Combine(folder.Path, "evning.csv"), cancellation: TestContext.Current.CancellationToken);

        Assert.EndsWith("There is no such file. Did you mean \"evening.csv\"?", Assert.Single(problems).ToString());
    }
}
