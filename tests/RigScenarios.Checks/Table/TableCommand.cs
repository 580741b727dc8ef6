namespace RigScenarios.Checks.Table;

/// <summary>`table [--sources | OUT.md]`: prints how many checks there are a room and a kind of source, or every
/// source.</summary>
internal static class TableCommand
{
    private const string Usage = "table [--sources | OUT.md]";

    public static async Task<int> RunAsync(string[] arguments)
    {
        switch (arguments)
        {
            case []:
                Console.Write(OutsideChecksPage.Text(await OutsideCheck.AllAsync()));
                return 0;
            case ["--sources"]:
                Console.Write(OutsideChecksPage.Sources(await OutsideCheck.AllAsync()));
                return 0;
            case [var path] when !path.StartsWith('-'):
                return await WriteAsync(path);
            default:
                await Console.Error.WriteLineAsync($"'{string.Join(' ', arguments)}' is not understood; accepted: {Usage}");
                return 2;
        }
    }

    private static async Task<int> WriteAsync(string path)
    {
        try
        {
            await File.WriteAllTextAsync(path, OutsideChecksPage.Text(await OutsideCheck.AllAsync()));
            return 0;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            await Console.Error.WriteLineAsync(error.Message);
            return 2;
        }
    }
}
