#pragma warning disable
using RigScenarios.Scenarios;
namespace RigScenarios.Files
{
    static class Ext2
    {
        extension(ScenarioFile)
        {
            public static (Scenario? Scenario, IReadOnlyList<Diagnostic> Problems) TryReadText(string text, string path)
            {
                var f = Path.Combine(Path.GetDirectoryName(path)!, "." + Path.GetRandomFileName());
                try { File.WriteAllText(f, text); return ScenarioFile.TryRead(f); } finally { File.Delete(f); }
            }
        }
    }
    public sealed record FieldNote(string Key, string About, string Accepted, bool Required, bool Present);
    public sealed record FieldHelp(string Path, string About, string Accepted, IReadOnlyList<FieldNote> Fields)
    {
        public static FieldHelp At(string text, int line, int column) => new("", "", "", []);
    }
}
