using System.Globalization;

namespace RigScenarios.Answers;

/// <summary>The sentences about a cold battery: what rest and warmth give back, and how far the time hangs on its own
/// heat.</summary>
public static class ColdWords
{
    /// <summary>"The battery stopped with 38 % still inside. After 10 minutes' rest it would run 6 min more, after an hour 13
    /// min, after an hour in a warm pocket (20 °C) 22 min."</summary>
    /// <param name="back">What would come back.</param>
    /// <param name="name">The battery's name where there are several; null for "the battery".</param>
    public static string Of(ComesBack back, string? name)
    {
        ArgumentNullException.ThrowIfNull(back);
        var who = name is null ? "The battery" : AnswerSentences.Upper(LimitSentences.Element(name));
        var rests = back.Rests.Select((rest, i) => $"after {Where(rest)}{(i == 0 ? " it would run" : "")} "
            + $"{More(rest)}{(i == 0 ? " more" : "")}");
        return string.Create(CultureInfo.InvariantCulture,
            $"{who} stopped with {back.Inside.Percent:0} % still inside. {AnswerSentences.Upper(string.Join(", ", rests))}.");
    }

    /// <summary>How far the time hangs on the battery's own heat, in a sentence; null where it does not decide.</summary>
    /// <param name="warmth">The runs with more and less heat lost; null where none were made.</param>
    public static string? Of(WarmthDoubt? warmth)
    {
        if (warmth is not { Decides: true })
            return null;
        var spread = WarmthDoubt.Spread.Percent.ToString("0", CultureInfo.InvariantCulture);
        var kept = warmth.Kept is { } more ? $", where it loses {spread} % less (covered, out of the wind) {Change(more)}" : "";
        return $"The battery keeps itself warm, and here that decides: where it loses {spread} % more heat than taken (wind, "
            + $"a bare plate) it lasts {Change(warmth.Cooled)}{kept}.";
    }

    private static string Where(RestTried rest) => (rest.Rest.Minutes, rest.Place) switch
    {
        (60, null) => "an hour",
        (60, { } place) => string.Create(CultureInfo.InvariantCulture,
            $"an hour in a warm pocket ({place.DegreesCelsius:0} °C)"),
        var (minutes, _) => string.Create(CultureInfo.InvariantCulture, $"{minutes:0} minutes' rest"),
    };

    private static string More(RestTried rest) => rest.More.Minutes < 1 ? "less than a minute" : AnswerTimes.Length(rest.More);

    private static string Change(UnitsNet.Duration change) =>
        $"{AnswerTimes.Length(change.Seconds < 0 ? -change : change)} {(change.Seconds < 0 ? "less" : "more")}";
}
