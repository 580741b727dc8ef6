namespace RigScenarios.Benchmarks.MeasuredCells;

/// <summary>
/// `measured-cells [DATA_FOLDER] [OUT.md]`: predicts the measured discharges and writes how far off it is. With `--refit` it
/// first fits the values again with each temperature left out, which takes a minute.
/// </summary>
internal static class MeasuredCellsCommand
{
    public const string Usage = "measured-cells [--refit] [DATA_FOLDER] [OUT.md]";

    private const string Refit = "--refit";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        var refits = arguments.Length > 0 && arguments[0] == Refit;
        if (refits)
            arguments = arguments[1..];
        if (arguments.Length > 2)
        {
            Console.Error.WriteLine($"At most a folder and a file are needed: {Usage}");
            return 2;
        }

        var folder = arguments.Length > 0 ? arguments[0] : MeasuredDischarge.FindFolder(Environment.CurrentDirectory);
        if (refits)
            OutputFile.Write(Path.Combine(folder, LeftOut.FileName), LeftOut.Refitted(folder));
        var text = MeasuredCellsPage.Of(folder);
        if (arguments.Length == 2)
            OutputFile.Write(arguments[1], text);
        else
            Console.Write(text);
        return 0;
    }
}
