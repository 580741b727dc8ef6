using RigScenarios.Balance;
using RigScenarios.Charts.Style;
using RigScenarios.Files.Formats;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Charts.Balance;

/// <summary>A build in the plane of an envelope: its values of the two variables, with a name.</summary>
/// <param name="Name">What it is ("battery 40 mm further back").</param>
/// <param name="First">Its value of the first variable.</param>
/// <param name="Second">Its value of the second variable.</param>
public sealed record EnvelopeMark(string Name, IQuantity First, IQuantity Second);

/// <summary>What an envelope's chart shows beyond the region. Immutable.</summary>
public sealed record EnvelopeChartOptions
{
    /// <summary>Short name of the figure, see <see cref="Figure.Slug"/>.</summary>
    public string Slug { get; init; } = "balance-envelope";

    /// <summary>What the chart answers.</summary>
    public string Title { get; init; } = "Where the rig can be balanced";

    /// <summary>Words for people by the parts' names.</summary>
    public OrderedMap<string> Names { get; init; } = OrderedMap<string>.Empty;

    /// <summary>The build as it is; null marks none.</summary>
    public (IQuantity First, IQuantity Second)? Present { get; init; }

    /// <summary>Other builds, each marked with its name.</summary>
    public IReadOnlyList<EnvelopeMark> Alternatives { get; init; } = [];

    /// <summary>Grid points along the first variable, 2 or more; a band narrower than a cell can be missed.</summary>
    public int Columns { get; init; } = 120;

    /// <summary>Grid points along the second variable, 2 or more.</summary>
    public int Rows { get; init; } = 120;
}

/// <summary>The region of two variables in which a rig can be balanced on its head, each edge named after the limit that it comes
/// from.</summary>
public static class EnvelopeChart
{
    /// <summary>The figure: the region shaded, each limit's edge in a line of its own kind with its name, the build as it is and
    /// others marked.</summary>
    /// <param name="envelope">The envelope.</param>
    /// <param name="options">What to mark; null for nothing.</param>
    /// <exception cref="ArgumentException">A mark's value is not of its variable's kind.</exception>
    public static Figure Of(BalanceEnvelope envelope, EnvelopeChartOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(envelope);
        options ??= new();
        var picture = new EnvelopePicture(envelope, options);
        var wide = EnvelopeLayout.Make(picture, ChartStyle.Width, isNarrow: false);
        var narrow = EnvelopeLayout.Make(picture, ChartStyle.NarrowWidth, isNarrow: true);
        return new Figure
        {
            Slug = options.Slug,
            Title = options.Title,
            Caption = Caption(picture),
            Cautions = [BalanceCautions.Arithmetic, BalanceCautions.TiltLock],
            AlternativeText = Describe(picture),
            Specification = new PlotlySpecification(EnvelopeLayout.Traces(picture, wide).DefaultIfEmpty(EnvelopeLayout.Nothing()))
                .With(wide.Members).WithPoints(EnvelopeLayout.Points(picture))
                .WithNarrow(narrow.Members, EnvelopeLayout.LegendChanges(picture, narrow)).ToJson(),
            Data = Table(envelope, picture),
            Height = wide.Height,
        };
    }

    private static string Caption(EnvelopePicture picture)
    {
        if (picture.Outlines.Count == 0)
            return "Nowhere in these ranges can the rig be balanced on this head.";
        var caption = "Shaded: it stays where you let go at every tilt, the camera plate reaches and the rated load is kept, "
            + "with camera plate and counterbalance set anew at each point. Beyond the tilt line it creeps, beyond the second "
                + "it falls.";
        if (picture.Edges.Count == 0)
            caption += " No limit is reached within these ranges.";
        return picture.Marks.Aggregate(caption, (text, mark) => $"{text} {Sentence(mark)}");
    }

    private static string Sentence(DrawnMark mark) => mark.Broken.Count == 0
        ? $"{Called(mark)} lies inside."
        : $"{Called(mark)} lies outside: {string.Join(" and ", mark.Broken.Select(limit => limit.InWords()))}.";

    private static string Called(DrawnMark mark) => mark.IsPresent ? "The rig as it is" : $"\"{mark.Name}\"";

    private static string Describe(EnvelopePicture picture)
    {
        var text = $"Region of {picture.X.Label} against {picture.Y.Label} in which the rig can be balanced";
        text += picture.Outlines.Count == 0 ? ": there is none."
            : $", in {picture.Outlines.Count} outline{(picture.Outlines.Count == 1 ? "" : "s")}.";
        if (picture.Edges.Count > 0)
        {
            var edges = picture.Edges.Select(edge => edge.IsCreep ? "where it falls" : edge.Limit.InWords());
            text += $" Its edges: {string.Join(", ", edges)}.";
        }
        return picture.Marks.Aggregate(text, (all, mark) => $"{all} {Sentence(mark)}");
    }

    private static ChartTable Table(BalanceEnvelope envelope, EnvelopePicture picture)
    {
        var rows = picture.Marks.Select(mark =>
        {
            var margins = envelope.At(mark.First, mark.Second);
            return new object?[]
            {
                mark.Name, mark.X, mark.Y, Math.Round(margins.TravelFront.Millimeters, 1),
                Math.Round(margins.TravelRear.Millimeters, 1), margins.Tilt.NewtonMeters,
                margins.Load is { } load ? Rounding.Text(load.Kilograms) : "no rating known",
            };
        });
        // Edges at a few places, solved for and not read off the drawing.
        var edges = Enumerable.Range(0, 7).Select(i => envelope.First.Least.As(picture.X.QuantityUnit!)
            + ((envelope.First.Greatest.As(picture.X.QuantityUnit!) - envelope.First.Least.As(picture.X.QuantityUnit!)) * i / 6))
            .SelectMany(x => envelope.EdgesAt(UsualUnits.From(x, picture.X.QuantityUnit!)).Where(edge => edge.Limiting))
            .Select(edge => new object?[] { $"edge: {edge.Limit.InWords()}", picture.X.Value(edge.First),
                picture.Y.Value(edge.Second), "", "", "", "" });
        return ChartTable.Of("", picture.X.Label, picture.Y.Label, "to the travel's front end (mm)", "to its rear end (mm)",
            "friction at rest left (N·m)", "rated load left (kg)").WithRows([.. rows, .. edges]);
    }
}
