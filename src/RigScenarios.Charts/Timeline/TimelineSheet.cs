using RigScenarios.Charts.Balance;
using RigScenarios.Charts.Pages;
using RigScenarios.Charts.Style;

namespace RigScenarios.Charts.Timeline;

/// <summary>One timeline for one width: the days one under the other, then the signs.</summary>
internal sealed class TimelineSheet
{
    private const double Row = 17;
    private const double MostGutter = 190;
    private readonly TimelinePicture picture;
    private readonly double width;
    private readonly SvgSheet sheet = new();
    private double y;

    public TimelineSheet(TimelinePicture picture, double width)
    {
        (this.picture, this.width) = (picture, width);
        var names = TimelineRows.Names(picture);
        // Names stand beside the rows where there is room, else above each.
        var beside = width >= ChartStyle.NarrowBelow;
        var gutter = beside ? Math.Clamp(names.Max(TimelineRows.NameWidth) + 12, 80, MostGutter) : 0;
        Scale = new TimelineScale([.. picture.Result.Days.Select(day => (day.Start, day.End))], gutter + 8, width - 10);
        foreach (var day in picture.Result.Days)
        {
            Heading(day.Number);
            var rows = new TimelineRows(picture, sheet, Scale, day.Number, beside ? gutter - 8 : width - 16, beside, width);
            y = rows.Draw(y);
            Bands.AddRange(rows.Bands);
            Key(day.Number);
            y += 14;
        }
        y = TimelineSigns.Legend(sheet, picture, y, width);
    }

    public TimelineScale Scale { get; }

    /// <summary>The texts in the rows: the baseline of each band with what stands in it.</summary>
    public List<(double Baseline, TextBand Band)> Bands { get; } = [];

    public string ToSvg(string shape) =>
        $"<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"{shape}\" viewBox=\"0 0 {SvgSheet.Number(width)} "
            + $"{SvgSheet.Number(y + 4)}\" role=\"img\" font-family=\"sans-serif\" "
        + $"aria-label=\"{HtmlText.Escape(TimelineWords.Alternative(picture.Plan, picture.Result))}\">{sheet}</svg>";

    private void Heading(int number)
    {
        var (title, outcome) = (TimelineWords.DayTitle(picture.Plan, number), TimelineWords.Outcome(picture.Result, number));
        foreach (var line in SvgSheet.Lines(title, width - 16))
        {
            sheet.Text(line, 8, y + 15, bold: true);
            y += Row;
        }
        // Bold text is wider than what is reckoned with.
        if (ChartStyle.TextWidth(title + outcome, SvgSheet.TextSize) * 1.1 < width - 40)
            y -= Row;
        sheet.Text(outcome, width - 10, y + 15, "end", bold: true);
        y += Row + 4;
    }

    private void Key(int number)
    {
        var blocks = picture.Plan.Days[number - 1].Blocks;
        Paragraph(string.Join(" · ",
            blocks.Select((block, i) => $"{i + 1}\u00a0{(block.Value.Title ?? block.Key).Replace(' ', '\u00a0')}")));
        foreach (var outage in picture.Outages.Where(outage => outage.Downs[0].Day == number))
            Paragraph(outage.Words(picture.Result, picture.Plan));
    }

    private void Paragraph(string text)
    {
        foreach (var line in SvgSheet.Lines(text, width - 20))
        {
            sheet.Text(line, 8, y + 13.5);
            y += Row;
        }
        y += 2;
    }
}
