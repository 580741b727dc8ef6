using RigScenarios.Travel;

namespace RigScenarios.Answers.TakeAlong;

/// <summary>Who flies what, where a journey is planned.</summary>
internal static class TravelSections
{
    public static IEnumerable<SheetSection> Of(RigAnswer answer)
    {
        foreach (var (name, travel) in answer.Journeys)
        {
            if (travel is null)
            {
                yield return new($"Travel: {name}", SheetForm.Sentences, [["No date is given, and rules change."]]);
                continue;
            }
            var lists = travel.Lists.SelectMany(list => list.Lines.Select(line => new[]
            {
                list.Traveller, $"{line.Count} × {line.Battery.Title}", $"{line.Battery.Rated.Energy.WattHours:0.##} Wh",
                (line.Battery.Installed ? "in its device" : TravelWords.Place(line, travel.Rules.Rules.Passengers))
                    + (line.Check.NeedsApproval ? "; ask the airline first" : ""),
            })).ToList();
            var left = travel.Left.Select(item => new[]
            {
                "stays behind", $"{item.Count} × {item.Battery.Title}", $"{item.Battery.Rated.Energy.WattHours:0.##} Wh",
                item.Margin,
            }).ToList();
            var ways = string.Join(", then ", travel.Journey.Legs.Select(TravelWords.Of));
            var title = $"Travel: {travel.Journey.Title}, {TravelWords.Day(travel.Journey.Date)}, {ways}";
            // Without a flight nobody has a list: then the sentence tells it.
            yield return lists.Count + left.Count == 0
                ? new(title, SheetForm.Sentences, [[TravelWords.Headline(travel)]])
                : new(title, SheetForm.Table, [.. left, .. lists])
                {
                    Columns = ["Who", "Battery", "Each", "Where"], Note = Note(travel),
                    GoesAs = 2, Keeps = left.Count + 2, Things = "lines of packing lists",
                };
        }
    }

    private static string Note(TravelAnswer travel)
    {
        var installed = travel.Lists.Any(list => list.Lines.Any(line => line.Battery.Installed))
            ? $"A device with its battery: {TravelWords.DevicesPlace(travel.Rules.Rules.Passengers)}." : "";
        return $"{installed} {travel.Rules.Warning}".Trim();
    }
}
