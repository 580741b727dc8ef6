namespace RigScenarios.Benchmarks.MeasuredCells.Fitted;

/// <summary>`fitted-cells [DATA_FOLDER] [OUT.md]`: fits the measured cell at 25 °C, predicts its other discharges and writes how
/// far off that is.</summary>
internal static class FittedCellsCommand
{
    public const string Usage = "fitted-cells [DATA_FOLDER] [OUT.md]";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length > 2)
        {
            Console.Error.WriteLine($"At most a folder and a file are needed: {Usage}");
            return 2;
        }
        var folder = arguments.Length > 0 ? arguments[0] : MeasuredDischarge.FindFolder(Environment.CurrentDirectory);
        var text = FittedCellsPage.Of(folder);
        if (arguments.Length == 2)
            OutputFile.Write(arguments[1], text);
        else
            Console.Write(text);
        return 0;
    }
}
