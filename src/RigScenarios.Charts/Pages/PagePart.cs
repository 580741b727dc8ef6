using RigScenarios.Answers;
using RigScenarios.Limits;

namespace RigScenarios.Charts.Pages;

/// <summary>A part of a page. All texts are plain text; the page escapes them.</summary>
public abstract record PagePart
{
    private protected PagePart()
    {
    }
}

/// <summary>A heading within the page.</summary>
/// <param name="Text">The heading.</param>
/// <param name="Level">2 for a chapter, 3 for a section in it.</param>
public sealed record HeadingPart(string Text, int Level = 2) : PagePart;

/// <summary>A paragraph of prose.</summary>
public sealed record ProsePart(string Text) : PagePart;

/// <summary>An answer: the sentence that the reader came for, set apart, with the cautions that go with it.</summary>
/// <param name="Text">The answer, one sentence or two.</param>
/// <param name="Cautions">What it rests on and where it ends, each a sentence of its own.</param>
public sealed record AnswerPart(string Text, IReadOnlyList<string> Cautions) : PagePart
{
    /// <summary>The verdict of all; null for an answer that is no verdict.</summary>
    public Verdict? Verdict { get; init; }

    /// <summary>The answer that it tells of; null where it is only a sentence.</summary>
    public RigAnswer? Whole { get; init; }

    /// <summary>The questions behind it, a line with its verdict each; none for an answer that is only a sentence.</summary>
    public IReadOnlyList<QuestionLine> Lines { get; init; } = [];

    /// <summary>The answer in one line, for where there is no room for more; null: its text stands there.</summary>
    public string? Line { get; init; }
}

/// <summary>A short list under a line of its own.</summary>
/// <param name="Heading">The line above it.</param>
/// <param name="Items">The items, a sentence each.</param>
public sealed record ListPart(string Heading, IReadOnlyList<string> Items) : PagePart
{
    /// <summary>Whether the items are numbered, because they stand in an order.</summary>
    public bool IsNumbered { get; init; }
}

/// <summary>A table.</summary>
public sealed record TablePart(ChartTable Table) : PagePart;

/// <summary>A figure.</summary>
public sealed record FigurePart(Figure Figure) : PagePart;

/// <summary>A drawing of our own, such as a rig to scale.</summary>
public sealed record DrawingPart(Drawing Drawing) : PagePart;

/// <summary>Text as a program printed it, in fixed width.</summary>
public sealed record PrintedPart(string Text) : PagePart;

/// <summary>A scenario that the reader may keep as a file. A living page offers that; elsewhere nothing is seen.</summary>
/// <param name="Name">A name for the file, without its ending.</param>
/// <param name="Text">The file's text.</param>
public sealed record ScenarioPart(string Name, string Text) : PagePart;

/// <summary>What a control of a living page is to know of the chosen file; elsewhere nothing is seen.</summary>
/// <param name="Parameter">The parameter's name.</param>
internal sealed record ControlPart(string Parameter) : PagePart
{
    /// <summary>The value in use where the reader gave none, as a person writes it; null where the cell does not say.</summary>
    public string? Holds { get; init; }

    /// <summary>Whether that is the file's own; otherwise the file says nothing of it, and this is taken instead.</summary>
    public bool IsOfFile { get; init; }

    /// <summary>Why the control moves nothing here; null where it does.</summary>
    public string? WhyNothing { get; init; }
}

/// <summary>HTML made by this product's own code from escaped text. It goes into the page as it is.</summary>
internal sealed record HtmlPart(string Html) : PagePart;

/// <summary>The scripts that figures need, where a notebook asks for them; a page of our own has them in its head
/// already.</summary>
internal sealed record ScriptPart : PagePart;
