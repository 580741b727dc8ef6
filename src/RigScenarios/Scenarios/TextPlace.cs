namespace RigScenarios.Scenarios;

/// <summary>A place in a text file. Lines and columns count from 1.</summary>
public readonly record struct TextPlace(int Line, int Column)
{
    /// <summary>"No place": for values that came from no file.</summary>
    public static TextPlace None => default;
}
