using System.Globalization;
using System.Runtime.InteropServices;
using System.Text.Json;
using RigScenarios.Answers.Fitted;
using RigScenarios.Fits.Logs;
using RigScenarios.Fits.Notes;
using RigScenarios.Requests.Messages;
using RigScenarios.Requests.Settings;
using RigScenarios.Scenarios;
using UnitsNet;

namespace RigScenarios.Requests.Rigs;

/// <summary>What a power log that was dropped on the form says of the rig's battery. One is fitted at a time.</summary>
internal sealed class RigLogs(RequestLimits limits) : IDisposable
{
    private readonly SemaphoreSlim turn = new(1);

    /// <summary>Reads and fits the log.</summary>
    /// <param name="sent">The log as it came.</param>
    /// <param name="scenario">The rig as a whole scenario.</param>
    /// <param name="build">Its build.</param>
    /// <param name="cancellation">Stops it, as when the reader leaves.</param>
    /// <exception cref="ProblemException">Air or charge lie outside their range, or it takes too long.</exception>
    /// <exception cref="ScenarioProblemsException">The log can't be used; carries why.</exception>
    public async Task<object> AnswerAsync(SentLog sent, Scenario scenario, string build, CancellationToken cancellation)
    {
        var name = RequestJson.NeededText(sent.What, "name");
        var air = Number(sent.What, "air", -40, 60, 20);
        var charge = Number(sent.What, "charge", 1, 100, 100);
        using var bounded = CancellationTokenSource.CreateLinkedTokenSource(cancellation);
        await turn.WaitAsync(cancellation);
        try
        {
            bounded.CancelAfter(limits.RunTime);
            return await Task.Run(() => Answer(sent.Bytes, name, scenario, build, Temperature.FromDegreesCelsius(air),
                Ratio.FromPercent(charge), bounded.Token), cancellation);
        }
        catch (OperationCanceledException) when (!cancellation.IsCancellationRequested)
        {
            throw new ProblemException(ReplyStatus.BadRequest,
                $"The log took longer than {limits.RunTime.TotalSeconds:0} s and was given up.");
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private static object Answer(ReadOnlyMemory<byte> bytes, string name, Scenario scenario, string build, Temperature air,
        Ratio charge, CancellationToken cancellation)
    {
        using var text = new StreamReader(MemoryMarshal.TryGetArray(bytes, out var array)
            ? new MemoryStream(array.Array!, array.Offset, array.Count) : new MemoryStream(bytes.ToArray()));
        var (reading, problems) = PowerLogFile.TryRead(text, name, null, cancellation);
        if (reading is null)
            throw new ScenarioProblemsException(problems);
        var answer = LogAnswer.Of(scenario, build, reading, air, charge, cancellation);
        return new
        {
            says = LogSentences.Battery(answer),
            cautions = LogSentences.Cautions(answer),
            read = LogSentences.Reading(answer),
            take = answer.Result.Found ? new Dictionary<string, string>
            {
                ["capacity-left"] = string.Create(CultureInfo.InvariantCulture,
                    $"{FittedScenario.CapacityLeft(answer.Result).Percent:0.#} %"),
                ["resistance-growth"] = string.Create(CultureInfo.InvariantCulture,
                    $"{FittedScenario.ResistanceGrowth(answer.Result):0.###}"),
            } : null,
        };
    }

    private static double Number(JsonElement what, string name, double least, double most, double otherwise)
    {
        if (!what.TryGetProperty(name, out var value) || value.ValueKind == JsonValueKind.Null)
            return otherwise;
        return value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && number >= least && number <= most
            ? number
            : throw new ProblemException(ReplyStatus.BadRequest,
                [new Problem($"Found {value.GetRawText()}.", $"log.{name}", $"a number from {least} to {most}")]);
    }
}
