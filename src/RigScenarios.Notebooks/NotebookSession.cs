using System.Runtime.CompilerServices;
using RigScenarios.Answers;
using RigScenarios.Charts;
using RigScenarios.Charts.Answers;
using RigScenarios.Charts.Pages;
using RigScenarios.Files;
using RigScenarios.Notebooks.Engine;
using RigScenarios.Scenarios;

namespace RigScenarios.Notebooks;

/// <summary>
/// What a notebook's cells call. After <see cref="Start"/> in the first cell, the later cells write <c>Answer("…")</c>,
/// <c>Show(figure)</c>, <c>Table(…)</c> without this class's name, and the namespaces of the library are imported.
/// Works the same in Jupyter and in the headless runner.
/// </summary>
public static class NotebookSession
{
    /// <summary>The first call of every notebook, in its first cell.</summary>
    /// <exception cref="InvalidOperationException">Called elsewhere than in a cell of a notebook.</exception>
    public static void Start() => CellDisplay.Start();

    /// <summary>Shows a chart.</summary>
    public static void Show(Figure figure)
    {
        ArgumentNullException.ThrowIfNull(figure);
        CellDisplay.Show(new FigurePart(figure));
    }

    /// <summary>Shows a drawing, such as a rig to scale.</summary>
    public static void Show(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        CellDisplay.Show(new DrawingPart(drawing));
    }

    /// <summary>Shows a table.</summary>
    public static void Show(ChartTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        CellDisplay.Show(new TablePart(table));
    }

    /// <summary>Shows any part of a page.</summary>
    public static void Show(PagePart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        CellDisplay.Show(part);
    }

    /// <summary>Shows any value as a cell that ends with it would: a build, a day's result, a sweep, a quantity.</summary>
    public static void Show(object value)
    {
        ArgumentNullException.ThrowIfNull(value);
        CellDisplay.ShowValue(value);
    }

    /// <summary>
    /// Offers the scenario that the notebook asked about, with its changes, to be kept as a file that describes its parts itself.
    /// A page shows a place to save it; elsewhere nothing is seen.
    /// </summary>
    /// <param name="scenario">The scenario.</param>
    /// <param name="name">A name for the file, such as "winter-harbour-colder".</param>
    public static void OfferToSave(Scenario scenario, string name)
    {
        ArgumentNullException.ThrowIfNull(scenario);
        ArgumentException.ThrowIfNullOrWhiteSpace(name);
        CellDisplay.Show(new ScenarioPart(name, ScenarioFile.Text(scenario.SelfContained())));
    }

    /// <summary>Shows an answer: the sentence that the reader came for, with the cautions that go with it.</summary>
    /// <param name="text">One plain sentence or two.</param>
    /// <param name="cautions">What it rests on and where it ends, each a sentence of its own.</param>
    public static void Answer(string text, params IEnumerable<string> cautions) => Show(new AnswerPart(text, [.. cautions]));

    /// <summary>Shows the one answer: headline, a line with its verdict for each question, cautions.</summary>
    /// <param name="answer">The answer.</param>
    public static void Answer(RigAnswer answer) => Show(AnswerBlock.Of(answer));

    /// <summary>Looks for what would make it work and shows it; shows nothing where everything holds. It takes many runs, so it
    /// belongs in a cell after the answer.</summary>
    /// <param name="answer">The answer as it is.</param>
    /// <param name="options">How far to look; null for the usual.</param>
    /// <exception cref="OperationCanceledException">The reader stopped it.</exception>
    public static WorkingSets WhatWouldWork(RigAnswer answer, WouldWorkOptions? options = null)
    {
        var sets = WouldWork.Find(answer, options, new CellProgress("changes are tried"), Cancellation);
        foreach (var part in AnswerBlock.WouldWork(sets))
            Show(part);
        return sets;
    }

    /// <summary>Finds the assumptions that move the answer most, by trying, and shows them.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="most">The number that is shown at most.</param>
    /// <exception cref="OperationCanceledException">The reader stopped it.</exception>
    public static void WhatIsAssumed(RigAnswer answer, int most = 3) =>
        Show(AnswerBlock.Assumed(LeadingAssumptions.Find(answer, progress: new CellProgress("assumptions are varied"),
            cancellation: Cancellation), most));

    /// <summary>
    /// What the reader gave for a parameter that may be left empty (<c>double? wind = null;</c>), and otherwise what the chosen
    /// file says. A living page shows the file's value at the control, so that it never stands on another file's.
    /// </summary>
    /// <param name="given">The parameter, by its plain name.</param>
    /// <param name="inFile">What the file says, in the parameter's unit.</param>
    /// <param name="control">The parameter's name; the compiler fills it in.</param>
    public static T AsInFile<T>(T? given, T inFile, [CallerArgumentExpression(nameof(given))] string control = "")
        where T : struct => ControlValues.Use(control, given, inFile, isOfFile: true);

    /// <summary>The same where the file may say nothing of it.</summary>
    /// <param name="given">The parameter, by its plain name.</param>
    /// <param name="inFile">What the file says, in the parameter's unit; null for nothing.</param>
    /// <param name="otherwise">What is taken where the file says nothing.</param>
    /// <param name="control">The parameter's name; the compiler fills it in.</param>
    public static T AsInFile<T>(T? given, T? inFile, T otherwise, [CallerArgumentExpression(nameof(given))] string control = "")
        where T : struct => ControlValues.Use(control, given, inFile ?? otherwise, inFile is not null);

    /// <summary>Tells the reader of a living page why a control moves nothing with the present file; called only where it is
    /// so.</summary>
    /// <param name="parameter">The parameter, by its plain name.</param>
    /// <param name="why">Why, in a sentence.</param>
    /// <param name="control">The parameter's name; the compiler fills it in.</param>
    public static void MovesNothing<T>(T parameter, string why, [CallerArgumentExpression(nameof(parameter))] string control = "")
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(why);
        Show(new ControlPart(control) { WhyNothing = why });
    }

    /// <summary>Shows a small table. Quantities are written in trade units, numbers with four digits.</summary>
    /// <param name="titles">Titles of the columns, units in brackets.</param>
    /// <param name="rows">Rows with one cell a column.</param>
    /// <param name="caption">The line above the table, or empty.</param>
    /// <exception cref="ArgumentException">A row has more or fewer cells than there are titles.</exception>
    public static void Table(IEnumerable<string> titles, IEnumerable<object?[]> rows, string caption = "") =>
        Show(ChartTable.Of(titles).WithRows(rows) with { Caption = caption });

    /// <summary>Tells how far a long cell has come; the last call replaces the one before.</summary>
    /// <param name="fraction">From 0 to 1.</param>
    /// <param name="text">What is being done.</param>
    public static void Progress(double fraction, string text) => CellDisplay.Progress(fraction, text);

    /// <summary>Cancelled when the reader stops the run; hand it to everything that takes long.</summary>
    public static CancellationToken Cancellation => CellDisplay.Cancellation;

    /// <summary>
    /// Says how results of a type are shown when a cell ends with one, here and in Jupyter. Call it after <see cref="Start"/>.
    /// </summary>
    /// <param name="parts">The parts of a page that show the result.</param>
    public static void Register<T>(Func<T, IEnumerable<PagePart>> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        CellDisplay.Register(parts);
    }
}
