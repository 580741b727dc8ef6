using RigScenarios.Answers;
using RigScenarios.Limits;
using RigScenarios.Simulation;
using RigScenarios.Wiring;
using UnitsNet;

namespace RigScenarios.Charts.Wiring;

/// <summary>What drawings, charts and tables of a wiring show of an answer: its limits, and its moments as the simulation has
/// kept them.</summary>
internal sealed class WiringView
{
    private readonly List<Limit> limits;

    public WiringView(RigAnswer answer)
    {
        Answer = answer;
        Times = new AnswerTimes(answer.Plan.Days);
        limits = [.. answer.Of(QuestionKind.Wiring)!.Limits.Where(limit => limit.Kind != LimitKind.Temperature
            && limit.Allowed is not null)];
        Moments = [.. answer.Simulation.Series.Select(point => (point, point.Wiring)).Where(moment => moment.Wiring is not null)
            .Select(moment => new WiringMoment(moment.point, moment.Wiring!))];
        FirstStop = answer.Simulation.FirstToStop?.FirstStop;
        Worst = FindWorst();
    }

    /// <summary>The answer.</summary>
    public RigAnswer Answer { get; }

    /// <summary>Writes moments.</summary>
    public AnswerTimes Times { get; }

    /// <summary>The moments at which anything could be delivered, in order.</summary>
    public IReadOnlyList<WiringMoment> Moments { get; }

    /// <summary>The first stop of an essential device that nobody planned; null if there was none.</summary>
    public DeviceStop? FirstStop { get; }

    /// <summary>The last moment before the first essential device stops, or the one at which the least is left: the one to draw.
    /// Null where there is none.</summary>
    public WiringMoment? Worst { get; }

    /// <summary>The element to mark: that which ran short first, or else the one whose limit has the least left; null where no
    /// limit is known.</summary>
    public string? Weakest => Short ?? Least?.Element;

    /// <summary>What the mark means.</summary>
    public string WeakestWords => Short is not null ? "stops first" : Least is { IsPassed: true }
        ? "furthest past its limit" : "least left to its limit";

    /// <summary>The least left to any limit of an element, in words; empty where none is known.</summary>
    public string Left(string element) => limits.Find(limit => limit.Element == element) is { } limit
        ? LimitSentences.Left(limit) : "";

    /// <summary>The moment that is drawn, in words.</summary>
    public string MomentWords => Worst is { } worst
        ? $"{Times.When(worst.Point.Time)} in \"{BlockTitle(worst.Point)}\"" : "at no moment";

    /// <summary>The name of an element for people.</summary>
    public static string NameOf(string element) => LimitSentences.Element(element);

    /// <summary>The cable behind an element of the wiring by its own name in the kit; null for other elements and where none is
    /// given.</summary>
    public string? CableOf(string element) =>
        Answer.Powered.Links.FirstOrDefault(link => BuildWiring.CableName(link.Key) == element).Value?.CableName?.Replace('-',
            ' ');

    /// <summary>The lowest voltage at a device's inlet while it drew anything, and when; null if it never did.</summary>
    public (ElectricPotential Inlet, Duration At)? LowestOf(string device)
    {
        // The limit has seen every moment, the series only those that are kept.
        if (limits.Find(limit => limit.Element == device
            && limit is { Kind: LimitKind.LowestVoltage, Case: LoadCase.Steady, At: not null }) is { } known)
            return ((ElectricPotential)known.Worst, known.At!.Time);
        var drawing = Moments.Where(moment => moment.At.Elements[device].Current.Amperes > 0).ToList();
        return drawing.Count == 0 ? null
            : drawing.Select(moment => (moment.At.Elements[device].Inlet, moment.Point.Time)).MinBy(lowest => lowest.Inlet.Volts);
    }

    /// <summary>Whether a device itself ran short of voltage and is down at the end, not for another that it stops
    /// with.</summary>
    public bool StopsItself(string device) =>
        Answer.Simulation.Devices[device].Spans.LastOrDefault(span => span.Activity != DeviceActivity.Off)
            is { Activity: DeviceActivity.Down, Reason: { Kind: StopKind.ShortOfVoltage, Element: { } element } }
                && element == device;

    private Limit? Least => Answer.Of(QuestionKind.Wiring)!.Least;

    private string? Short => FirstStop?.Reason is { Kind: StopKind.ShortOfVoltage, Element: { } element } ? element : null;

    private WiringMoment? FindWorst()
    {
        if (Moments.Count == 0)
            return null;
        if (FirstStop is { } stop)
        {
            return Moments.LastOrDefault(moment => moment.Point.Time <= stop.At + Duration.FromMilliseconds(1)
                && (Short is not { } element || moment.At.Elements[element].Inlet.Volts > 0)) ?? Moments[0];
        }
        return Least?.At is { } at
            ? Moments.MinBy(moment => (Math.Abs((moment.Point.Time - at.Time).Seconds), -(double)moment.At.Power.Watts))
            : Moments[0];
    }

    private string BlockTitle(SeriesPoint point)
    {
        var stretch = Answer.Simulation.Stretches[point.Stretch];
        return Times.Title(stretch.Day, stretch.Block);
    }
}

/// <summary>A moment of the days with voltages and currents everywhere.</summary>
/// <param name="Point">The moment.</param>
/// <param name="At">Voltages and currents.</param>
internal sealed record WiringMoment(SeriesPoint Point, OperatingPoint At);
