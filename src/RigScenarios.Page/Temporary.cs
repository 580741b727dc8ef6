#pragma warning disable
using RigScenarios.Scenarios;
namespace RigScenarios.Files
{
    public sealed record FieldNote(string Key, string About, string Accepted, bool Required, bool Present);
    public sealed record FieldHelp(string Path, string About, string Accepted, IReadOnlyList<FieldNote> Fields)
    {
        public static FieldHelp At(string text, int line, int column) => new("", "", "", []);
    }
}
