using RigScenarios.Fits;
using RigScenarios.Fits.Notes;

namespace RigScenarios.Answers.Fitted;

/// <summary>The tests that could be made next, the least effort first.</summary>
internal static class Candidates
{
    public const string Meter = "meter";
    public const string Again = "again";
    public const string Capacity = "capacity";
    public const string Pulse = "pulse";

    /// <summary>The tests that say something of what is still unknown.</summary>
    /// <param name="input">The problem.</param>
    /// <param name="day">The planned day, which could be noted once more.</param>
    public static IReadOnlyList<CandidateTest> For(NotedProblem input, BatteryRun day)
    {
        var priors = input.Problem.Priors;
        return
        [
            .. priors.Load is not null
                ? [new CandidateBenchTest(Meter, BenchQuantity.DevicePower, null, FitPriors.MeteredDeviation)]
                : Array.Empty<CandidateTest>(),
            .. priors.Devices.Keys.Except(input.Noted.Notes.Meters.Keys).Select(device => new CandidateBenchTest(
                $"{Meter}:{device}", BenchQuantity.DevicePower, device, FitPriors.MeteredDeviation)),
            new CandidateBenchTest(Pulse, BenchQuantity.Resistance, null, DoneTest.PulseDeviation),
            new CandidateBenchTest(Capacity, BenchQuantity.Capacity, null, DoneTest.CapacityDeviation),
            new CandidateRun(Again, day),
        ];
    }

    /// <summary>What is to be done, in words.</summary>
    /// <param name="test">Its name.</param>
    public static string Words(string test) => test switch
    {
        Meter => "put a power meter before each device while it works, and note its watts under \"meters\"",
        Capacity => "a capacity test: from full to the cut-off at a slow, measured current, and note the ampere-hours",
        Pulse => "a pulse test: log voltage and current while a known load is switched on",
        Again => "note the next day like this one too",
        _ => $"put a power meter on the {LimitSentences.Element(test[(Meter.Length + 1)..])} and note its watts under \"meters\"",
    };
}
