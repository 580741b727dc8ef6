namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>`measured-cells [DATA_FOLDER] [OUT.md]`: predicts the measured discharges and writes how far off it is.</summary>
internal static class MeasuredCellsCommand
{
    public const string Usage = "measured-cells [DATA_FOLDER] [OUT.md]";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length > 2)
        {
            Console.Error.WriteLine($"At most a folder and a file are needed: {Usage}");
            return 2;
        }

        var folder = arguments.Length > 0 ? arguments[0] : MeasuredDischarge.FindFolder(Environment.CurrentDirectory);
        var text = MeasuredCellsPage.Of(folder);
        if (arguments.Length == 2)
            OutputFile.Write(arguments[1], text);
        else
            Console.Write(text);
        return 0;
    }
}
