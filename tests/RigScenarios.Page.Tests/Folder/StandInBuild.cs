namespace RigScenarios.Page.Tests.Folder;

/// <summary>Files called as those of a published browser build, for what does not run it.</summary>
internal static class StandInBuild
{
    /// <summary>Makes a folder with them; whoever asked deletes it.</summary>
    public static string Make()
    {
        var folder = Directory.CreateTempSubdirectory("rigscenarios-build-").FullName;
        Directory.CreateDirectory(Path.Combine(folder, "_framework"));
        Directory.CreateDirectory(Path.Combine(folder, "fzstd"));
        foreach (var name in (string[])["boot.js", "unpack.js", "fzstd/fzstd-0.1.1.js", "library.bin", "library.bin.br",
            "_framework/dotnet.js", "_framework/dotnet.native.js", "_framework/dotnet.runtime.js", "_framework/dotnet.js.gz"])
            File.WriteAllText(Path.Combine(folder, name), $"// {name}\n");
        return folder;
    }
}
