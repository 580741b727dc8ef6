using System.Text.Json;
using RigScenarios.Drafts;
using RigScenarios.Drafts.Edits;
using RigScenarios.Requests.Messages;
using RigScenarios.Scenarios;

namespace RigScenarios.Requests.Rigs;

/// <summary>The changes of a rig that a form asks for.</summary>
internal static class RigEdits
{
    private static readonly Dictionary<string, Func<GivenRig, JsonElement, EditedRig>> Kinds = new(StringComparer.Ordinal)
    {
        ["add"] = (given, edit) => RequestJson.Flag(edit, "own") ? Adding.Own(given, Needed(edit, "question"))
            : Adding.Listed(given, Needed(edit, "question"), Needed(edit, "part")),
        ["choose"] = (given, edit) => RequestJson.Flag(edit, "own") ? Choosing.Own(given, Needed(edit, "thing"))
            : Choosing.Listed(given, Needed(edit, "thing"), Needed(edit, "part")),
        ["take-away"] = (given, edit) => TakingAway.From(given, Needed(edit, "thing")),
        ["feed"] = (given, edit) => Feeding.By(given, Needed(edit, "thing"), Text(edit, "from") ?? ""),
        ["outlet"] = (given, edit) => Feeding.Outlet(given, Needed(edit, "thing"), Text(edit, "outlet") ?? ""),
        ["cable"] = (given, edit) => edit.TryGetProperty("length", out _) || edit.TryGetProperty("gauge", out _)
            ? Cabling.Own(given, Needed(edit, "thing"), Text(edit, "length"), Text(edit, "gauge"))
            : Cabling.With(given, Needed(edit, "thing"), Text(edit, "cable") ?? ""),
        ["batteries"] = (given, edit) => Supplying.Batteries(given, Count(edit)),
        ["charger"] = (given, edit) => Supplying.Charger(given, Text(edit, "bays")),
        ["day"] = (given, edit) => Day(given, Needed(edit, "key")),
        ["move"] = (given, edit) => Moving.To(given, Needed(edit, "thing"), Needed(edit, "forward")),
        ["journey"] = (given, edit) => Supplying.Journey(given, Text(edit, "by"), Text(edit, "travellers")),
    };

    /// <summary>The rig after a change.</summary>
    /// <exception cref="ProblemException">The change can't be read.</exception>
    /// <exception cref="ScenarioProblemsException">It can't be made.</exception>
    public static EditedRig Apply(GivenRig given, JsonElement edit)
    {
        var kind = Needed(edit, "do");
        return Kinds.TryGetValue(kind, out var apply) ? apply(given, edit)
            : throw Wrong("do", $"There is no change \"{kind}\".", string.Join(", ", Kinds.Keys),
                NearestName.To(kind, Kinds.Keys));
    }

    private static EditedRig Day(GivenRig given, string key) => TypicalDays.All.FirstOrDefault(day => day.Key == key) is { } day
        ? new EditedRig(given.With(day))
        : throw Wrong("key", $"There is no typical day \"{key}\".", string.Join(", ", TypicalDays.All.Select(day => day.Key)),
            NearestName.To(key, TypicalDays.All.Select(day => day.Key)));

    private static int? Count(JsonElement edit) => Text(edit, "count") is not { } text || text.Trim().Length == 0 ? null
        : int.TryParse(text.Trim(), System.Globalization.NumberStyles.None, System.Globalization.CultureInfo.InvariantCulture,
            out var count) ? count : throw Wrong("count", $"Found \"{text}\".", "a whole number, 1 to 20, such as \"3\"");

    private static string Needed(JsonElement edit, string name) =>
        Text(edit, name) ?? throw Wrong(name, $"\"{name}\" is missing.");

    /// <summary>A text or a number as text; null where it is missing.</summary>
    private static string? Text(JsonElement edit, string name) => !edit.TryGetProperty(name, out var value) ? null
        : value.ValueKind switch
        {
            JsonValueKind.Null => null,
            JsonValueKind.String => value.GetString(),
            JsonValueKind.Number => value.GetRawText(),
            _ => throw Wrong(name, $"\"{name}\" must be a text."),
        };

    private static ProblemException Wrong(string path, string problem, string? accepted = null, string? nearest = null) =>
        new(ReplyStatus.BadRequest, [new Problem(problem, $"edit.{path}", accepted, nearest)]);
}
