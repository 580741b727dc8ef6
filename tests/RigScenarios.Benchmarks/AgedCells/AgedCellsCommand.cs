using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>`aged-cells [DATA_FOLDER] [OUT.md]`: predicts the measured cells by every set, writes how far off each is.</summary>
internal static class AgedCellsCommand
{
    public const string Usage = "aged-cells [DATA_FOLDER] [OUT.md]";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length > 2)
        {
            Console.Error.WriteLine($"At most a folder and a file are needed: {Usage}");
            return 2;
        }

        var folder = arguments.Length > 0 ? arguments[0] : AgedCell.FindFolder(Environment.CurrentDirectory)
            ?? throw new CaseFileException($"The folder with {AgedCell.FileName} is not beside this one; name it.");
        var text = AgedCellsPage.Of(AgedCell.Read(folder));
        if (arguments.Length == 2)
            OutputFile.Write(arguments[1], text);
        else
            Console.Write(text);
        return 0;
    }
}
