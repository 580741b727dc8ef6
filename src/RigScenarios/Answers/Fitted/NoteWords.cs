using System.Globalization;
using RigScenarios.Fits.Notes;

namespace RigScenarios.Answers.Fitted;

/// <summary>What is taken where field notes say nothing, in sentences.</summary>
public static class NoteWords
{
    private const int MostNames = 4;

    /// <summary>One thing that is taken.</summary>
    /// <param name="assumption">Which.</param>
    public static string Of(NoteAssumption assumption)
    {
        ArgumentNullException.ThrowIfNull(assumption);
        var names = Names(assumption.Names);
        return assumption.Kind switch
        {
            NoteAssumptionKind.Air => string.Create(CultureInfo.InvariantCulture,
                $"The air is not noted of {names}: {assumption.Air!.Value.DegreesCelsius:0.#} °C. It is \"air\" in a note.")
                .Replace("-", "−", StringComparison.Ordinal),
            NoteAssumptionKind.StartTemperature =>
                $"The battery began as warm as the air ({names}). A warm one: \"start-temperature: 18 °C\".",
            NoteAssumptionKind.Full => $"The battery began full ({names}). Otherwise: \"charge: 90 %\".",
            NoteAssumptionKind.End =>
                $"The battery or what the camera needs ended it, whichever comes first ({names}). \"ended-by\" says which.",
            NoteAssumptionKind.Off => $"Devices that are not named were off ({names}). \"others\" says otherwise.",
            NoteAssumptionKind.Clock =>
                $"Times are good to about 3 min, as people round them ({names}). \"clock-within\" says otherwise.",
            _ => "What the scenario says of the battery comes from an earlier fit. It is put aside, so that no note counts "
                + "twice.",
        };
    }

    private static string Names(IReadOnlyList<string> names) => names.Count <= MostNames ? string.Join(", ", names)
        : $"{string.Join(", ", names.Take(MostNames - 1))} and {names.Count - MostNames + 1} more";
}
