using RigScenarios.Answers.TakeAlong;

namespace RigScenarios.Charts.TakeAlong;

/// <summary>A section as it stands on the page.</summary>
/// <param name="Section">The section.</param>
/// <param name="Rows">The number of its rows that stand there.</param>
/// <param name="Widths">Widths of its columns, percent of the section's; none but for a table.</param>
internal sealed record PlacedSection(SheetSection Section, int Rows, IReadOnlyList<double> Widths);

/// <summary>Where the sections stand.</summary>
/// <param name="Above">Over the whole width, above the columns.</param>
/// <param name="Left">In the left column.</param>
/// <param name="Right">In the right column.</param>
/// <param name="Below">Over the whole width, below the columns.</param>
internal sealed record PlacedSections(IReadOnlyList<PlacedSection> Above, IReadOnlyList<PlacedSection> Left,
    IReadOnlyList<PlacedSection> Right, IReadOnlyList<PlacedSection> Below);

/// <summary>
/// A sheet laid out on one page, so that it fits on A4 and on Letter: two columns, and what is wide below them. What does not fit
/// goes row by row, the least important first, and is told.
/// </summary>
internal sealed class SheetLayout
{
    /// <summary>Size of the smallest type, pt: all other measures are those of a sheet in this size.</summary>
    public const double Size = 7.5;

    /// <summary>From one line to the next, pt.</summary>
    public const double Line = 9;

    /// <summary>Between the two columns, pt.</summary>
    public const double Gap = 12;

    /// <summary>Above and below the words of a row of a table, together, pt.</summary>
    public const double RowPadding = 1.6;

    /// <summary>At each side of a cell, pt.</summary>
    public const double CellPadding = 2;

    /// <summary>A section's heading with the room above and below it, pt.</summary>
    public const double Heading = 20;

    /// <summary>Room to write in beside a question, pt.</summary>
    public const double Blank = 21;

    private const double PointsAMillimetre = 72 / 25.4;

    // 9, 8.5, 8 and 7.5 pt.
    private static readonly double[] Scales = [1.2, 8.5 / 7.5, 8 / 7.5, 1];

    // 7 pt, where even the least of every section is too much.
    private const double Least = 7 / 7.5;

    private const int MostShared = 10;
    private const double Disorder = 24;
    private readonly TakeAlongSheet sheet;
    private readonly SheetPaper paper;
    private readonly Dictionary<SheetSection, int> rows;

    private SheetLayout(TakeAlongSheet sheet, SheetPaper paper, double scale)
    {
        (this.sheet, this.paper, Scale) = (sheet, paper, scale);
        rows = sheet.Sections.ToDictionary(section => section, section => section.Rows.Count);
    }

    /// <summary>Where each section stands.</summary>
    public PlacedSections Placed => Place();

    /// <summary>What was left out, in one line; empty where nothing was.</summary>
    public string LeftOut => TakeAlongSheets.LeftOut(sheet,
        [.. sheet.Sections.Where(section => rows[section] < section.Rows.Count).Select(section => (section, rows[section]))]);

    /// <summary>How many times as large as the smallest the type is.</summary>
    public double Scale { get; }

    // Large type on the page is as good as small type on a smaller page.
    private double Width => paper.Width() * PointsAMillimetre / Scale;

    private double Height => paper.Height() * PointsAMillimetre / Scale;

    private double ColumnWidth => (Width - Gap) / 2;

    /// <summary>Lays a sheet out: in the largest type in which nothing is left out, or else in the smallest.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="whole">Whether nothing is left out, on however many pages.</param>
    /// <param name="paper">What it is printed on.</param>
    public static SheetLayout Of(TakeAlongSheet sheet, bool whole, SheetPaper paper)
    {
        if (Scales.Select(scale => new SheetLayout(sheet, paper, scale)).FirstOrDefault(layout => layout.Fits) is { } all)
            return all;
        var smallest = new SheetLayout(sheet, paper, 1);
        if (whole || smallest.CutToFit(evenly: false))
            return smallest;
        var least = new SheetLayout(sheet, paper, Least);
        if (!least.CutToFit(evenly: false))
            least.CutToFit(evenly: true);
        return least;
    }

    private bool Fits => Total() <= Height;

    /// <summary>Takes rows away until the sheet fits, the last of what matters least first, down to what each section keeps;
    /// false where it never does.</summary>
    /// <param name="evenly">Whether it goes on below that, evenly from the longest.</param>
    private bool CutToFit(bool evenly)
    {
        while (!Fits)
        {
            var mayGo = sheet.Sections.Where(section => section.GoesAs is not null && rows[section] > 1).ToList();
            var next = mayGo.Where(section => rows[section] > section.Keeps).OrderBy(section => section.GoesAs)
                .ThenByDescending(section => rows[section]).FirstOrDefault()
                ?? (evenly ? mayGo.MaxBy(section => rows[section]) : null);
            if (next is null)
                return false;
            rows[next]--;
        }
        return true;
    }

    private double Total()
    {
        var placed = Place();
        double Sum(IEnumerable<PlacedSection> sections, double width) =>
            sections.Sum(section => HeightOf(section.Section, section.Rows, width));
        return Head() + Sum(placed.Above, Width) + Math.Max(Sum(placed.Left, ColumnWidth), Sum(placed.Right, ColumnWidth))
            + Sum(placed.Below, Width) + Foot();
    }

    private double Head()
    {
        var height = 18.0 + 13 + (Line * sheet.Days.Sum(day => SheetText.Lines(day, Width, Size)));
        if (sheet.Headline.Length > 0)
            height += 17 + (12 * SheetText.Lines(sheet.Headline, Width - 32, 9.5, bold: true));
        return height + sheet.Questions.Sum(line => RowPadding
            + (Line * SheetText.Lines(line.Words, (Width * QuestionWidth) - (2 * CellPadding), Size)));
    }

    /// <summary>The part of the width that a question's words have.</summary>
    public const double QuestionWidth = 0.72;

    private double Foot() => 8 + (Line * (SheetText.Lines(sheet.Foot, Width, Size)
        + (LeftOut.Length > 0 ? SheetText.Lines(LeftOut, Width, Size) : 0)));

    // The share of the sections between the columns that leaves the taller one lowest; in each column they keep their order.
    private PlacedSections Place()
    {
        var narrow = sheet.Sections.Where(section => !section.IsWide).ToList();
        var heights = narrow.ConvertAll(section => HeightOf(section, rows[section], ColumnWidth));
        // The first section stands at the left; each bit says of one of the others whether it stands at the right.
        var best = Enumerable.Range(0, 1 << Math.Max(0, Math.Min(narrow.Count, MostShared) - 1)).MinBy(bits =>
        {
            var right = heights.Where((_, i) => IsRight(bits, i)).Sum();
            // Read down the left column and then down the right one, unless that costs much room.
            var inOrder = Enumerable.Range(1, Math.Max(0, narrow.Count - 1)).All(i => IsRight(bits, i) || !IsRight(bits, i - 1));
            return Math.Max(right, heights.Sum() - right) + (inOrder ? 0 : Disorder);
        });
        // What is wide and comes before all columns stays above them.
        var above = sheet.Sections.TakeWhile(section => section.IsWide).ToList();
        return new([.. above.Select(In)], [.. narrow.Where((_, i) => !IsRight(best, i)).Select(In)],
            [.. narrow.Where((_, i) => IsRight(best, i)).Select(In)],
            [.. sheet.Sections.Skip(above.Count).Where(section => section.IsWide).Select(In)]);
    }

    // Of very many sections, one for each of many days or journeys, the later ones stand left and right in turn.
    private static bool IsRight(int bits, int section) => section >= MostShared ? section % 2 == 1
        : section > 0 && (bits >> (section - 1) & 1) == 1;

    private PlacedSection In(SheetSection section) => new(section, rows[section], section.Form == SheetForm.Table
        ? Widths(section, rows[section], section.IsWide ? Width : ColumnWidth) : []);

    private static double HeightOf(SheetSection section, int rows, double width)
    {
        var shown = section.Rows.Take(rows).ToList();
        var height = Heading - Line + (Line * SheetText.Lines(section.Title, width, 8.5, bold: true))
            + (section.Note.Length > 0 ? 2 + (Line * SheetText.Lines(section.Note, width, Size)) : 0);
        switch (section.Form)
        {
            case SheetForm.Table:
                var widths = Widths(section, rows, width);
                double Row(IReadOnlyList<string> cells, bool bold) => RowPadding + (Line * cells.Select((cell, i) =>
                    SheetText.Lines(cell, (widths[i] / 100 * width) - (2 * CellPadding), Size, bold)).Max());
                return height + Row(section.Columns, true) + shown.Sum(row => Row(row, false));
            case SheetForm.Blanks:
                return height + Line + shown.Sum(row => Math.Max(Blank, RowPadding
                    + (Line * SheetText.Lines(row[0], (width * BlankQuestion) - (2 * CellPadding), Size))));
            case SheetForm.Checks:
                return height + shown.Chunk(2).Sum(pair => 1.5 + (Line * pair.Max(row =>
                    SheetText.Lines(row[0], ((width - Gap) / 2) - 12, Size))));
            default:
                return height + shown.Sum(row => 1.5 + (Line * SheetText.Lines(row[0], width - 12, Size)));
        }
    }

    /// <summary>The part of the width that the question of a blank has.</summary>
    public const double BlankQuestion = 0.42;

    // The longest columns give up what is short, all down to one width; what is left over is shared.
    private static List<double> Widths(SheetSection section, int rows, double width)
    {
        var wanted = section.Columns.Select((title, i) => (2 * CellPadding) + 1 + Math.Max(SheetText.Width(title, Size, true),
            section.Rows.Take(rows).Select(row => SheetText.Width(row[i], Size)).DefaultIfEmpty(0).Max())).ToList();
        if (wanted.Sum() > width)
        {
            var (most, left) = (0.0, width);
            foreach (var (i, want) in wanted.Order().Index())
            {
                most = left / (wanted.Count - i);
                if (want > most)
                    break;
                left -= want;
            }
            wanted = [.. wanted.Select(want => Math.Min(want, most))];
        }
        return [.. wanted.Select(want => Math.Round(100 * want / wanted.Sum(), 2))];
    }
}
