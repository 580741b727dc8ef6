using System.Text.Json;

namespace RigScenarios.Requests.Settings;

/// <summary>What the program behind the pages can do besides answering; what it can't, the pages don't show, or say where it
/// can be had.</summary>
/// <param name="BestRig">It searches for the best rig for the money.</param>
/// <param name="Classes">It keeps tasks for a class and hands out their addresses.</param>
/// <param name="ChangedCells">It compiles a notebook that its reader changed.</param>
/// <param name="Folder">Own files lie in a folder, where a command line finds them and the parts files that they name; otherwise
/// each saved rig describes its parts itself, so that its file can go anywhere.</param>
public sealed record PageAbilities(bool BestRig, bool Classes, bool ChangedCells, bool Folder)
{
    /// <summary>Nothing besides answering.</summary>
    public static PageAbilities None { get; } = new(false, false, false, false);

    /// <summary>Everything: a program on a computer.</summary>
    public static PageAbilities All { get; } = new(true, true, true, true);

    /// <summary>Writes the fields of them as JSON.</summary>
    internal void Write(Utf8JsonWriter json)
    {
        json.WriteBoolean("bestRig", BestRig);
        json.WriteBoolean("classes", Classes);
        json.WriteBoolean("changedCells", ChangedCells);
        json.WriteBoolean("folder", Folder);
    }
}
