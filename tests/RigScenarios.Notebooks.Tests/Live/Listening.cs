using RigScenarios.Charts.Pages;
using RigScenarios.Notebooks.Live;

namespace RigScenarios.Notebooks.Tests.Live;

/// <summary>Keeps what a session tells.</summary>
internal sealed class Listening(Action<int, double>? onProgress = null) : ILiveObserver
{
    public IReadOnlyList<LiveParameter> Told { get; private set; } = [];

    public Dictionary<int, IReadOnlyList<PagePart>> Cells { get; } = [];

    public string Answer => Cells.Values.SelectMany(parts => parts).OfType<AnswerPart>().First().Text;

    /// <summary>Everything shown, as the text of a page, to be compared.</summary>
    public string Page =>
        string.Join('\n', Cells.OrderBy(cell => cell.Key).SelectMany(cell => cell.Value).Where(part => part is not ScriptPart)
        .Select(part => part is ScenarioPart scenario ? scenario.Text : PartHtml.Of(part)));

    public void Parameters(IReadOnlyList<LiveParameter> parameters) => Told = parameters;

    public void Cell(int cell, IReadOnlyList<PagePart> parts) => Cells[cell] = parts;

    public void Progress(int cell, double fraction, string text) => onProgress?.Invoke(cell, fraction);
}
