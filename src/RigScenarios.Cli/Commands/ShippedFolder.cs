namespace RigScenarios.Cli.Commands;

/// <summary>A folder that came with the program.</summary>
internal static class ShippedFolder
{
    /// <summary>The folder: that of the checkout if the current folder is one, else where the program was installed.</summary>
    /// <param name="name">Its name, such as "notebooks".</param>
    public static string Of(string name)
    {
        var isCheckout = Directory.Exists(Path.Combine("data", "parts")) && Directory.Exists("notebooks");
        return Path.GetFullPath(isCheckout ? name : Path.Combine(AppContext.BaseDirectory, name));
    }
}
