#pragma warning disable
using System.Diagnostics;
using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Parameters;
using RigScenarios.Scenarios;
namespace RigScenarios.Charts.Pages { public sealed record ScenarioPart(string Name, string Text) : PagePart; }
namespace RigScenarios.Notebooks.Live
{
    public sealed class LiveNotebook : IDisposable
    {
        public Notebook Notebook { get; init; }
        public static Task<LiveNotebook> CompileAsync(Notebook n, CancellationToken ct) => Task.FromResult(new LiveNotebook { Notebook = n });
        public LiveLane Open() => new(Notebook);
        public void Dispose() { }
    }
    public sealed class LiveLane(Notebook n)
    {
        NotebookRun last;
        public async Task<LiveRun> RunAsync(IReadOnlyDictionary<string, string> values, ILiveReader reader, CancellationToken ct)
        {
            var w = Stopwatch.StartNew();
            var p = n.Parameters.Resolve(values);
            reader.Parameters([.. p.Select(v => new LiveParameter(v.Parameter, v.Value, [.. v.Parameter.Choices.Select(c => new ParameterChoice(c, c, ""))]))]);
            last = await NotebookRunner.RunAsync(n, values, new P(reader), ct);
            foreach (var c in last.Cells) reader.Cell(c.Cell.Number, c.Outputs);
            return new LiveRun([.. last.Cells.Select(c => c.Cell.Number)], w.Elapsed, last.Failure);
        }
        public NotebookRun ToRun() => last;
        class P(ILiveReader r) : IProgress<NotebookProgress> { public void Report(NotebookProgress v) => r.Progress(v.Cell, (double)v.Cell / v.Cells, v.Text); }
    }
    public interface ILiveReader
    {
        void Parameters(IReadOnlyList<LiveParameter> parameters);
        void Cell(int cell, IReadOnlyList<PagePart> parts);
        void Progress(int cell, double fraction, string text);
    }
    public sealed record LiveParameter(NotebookParameter Parameter, string Value, IReadOnlyList<ParameterChoice> Choices);
    public sealed record ParameterChoice(string Value, string Title, string Detail);
    public sealed record LiveRun(IReadOnlyList<int> Rerun, TimeSpan Elapsed, NotebookFailure? Failure);
    static class Ext
    {
        extension(Notebook n)
        {
            public string Name => Path.GetFileNameWithoutExtension(n.FilePath);
            public string Sentence => n.Title;
            public string? PictureFile => null;
        }
    }
}
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
