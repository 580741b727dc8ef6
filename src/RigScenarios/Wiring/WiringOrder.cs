namespace RigScenarios.Wiring;

/// <summary>Puts the elements of a wiring in an order in which each stands after the one that feeds it, or says why there is
/// none.</summary>
internal static class WiringOrder
{
    public static WiringElement[] Of(WiringElement[] elements)
    {
        var problems = new List<string>();
        var byName = new Dictionary<string, WiringElement>(StringComparer.Ordinal);
        foreach (var element in elements)
        {
            if (!byName.TryAdd(element.Name, element))
                problems.Add($"Two elements are named \"{element.Name}\"; each needs a name of its own.");
        }

        foreach (var element in elements)
        {
            if (element.FedBy is not { } above)
                continue;
            if (!byName.TryGetValue(above, out var feed))
                problems.Add($"\"{element.Name}\" is fed by \"{above}\", which is not there: it gets no power. There are: "
                    + $"{string.Join(", ", byName.Keys)}.");
            else if (feed is Device)
                problems.Add($"\"{element.Name}\" is fed by the device \"{above}\"; what feeds must be a wire, a switch or a "
                    + "regulator (for an outlet on a device: a wire beside the device).");
        }

        var ordered = new List<WiringElement>(elements.Length);
        var placed = new HashSet<string>(StringComparer.Ordinal);
        var waiting = elements.ToList();
        while (waiting.Count > 0)
        {
            // The first in the list whose feed stands already, or is missing, which has been told.
            var next = waiting.FindIndex(element => element.FedBy is not { } above || placed.Contains(above)
                || !byName.ContainsKey(above));
            if (next < 0)
            {
                problems.Add(
                    $"A loop: {string.Join(", ", waiting.Select(Told))}; none of them leads to the battery.");
                break;
            }

            placed.Add(waiting[next].Name);
            ordered.Add(waiting[next]);
            waiting.RemoveAt(next);
        }

        static string Told(WiringElement element) => $"\"{element.Name}\" is fed by \"{element.FedBy}\"";

        return problems.Count == 0 ? [.. ordered] : throw new WiringException(string.Join(Environment.NewLine, problems));
    }
}

/// <summary>A wiring that can't be, or must not be connected; the message has a line for each problem.</summary>
public sealed class WiringException : ArgumentException
{
    /// <summary>Without a message.</summary>
    public WiringException()
    {
    }

    /// <param name="message">The problems, a line each.</param>
    public WiringException(string message) : base(message)
    {
    }

    /// <param name="message">The problems, a line each.</param>
    /// <param name="inner">What led to it.</param>
    public WiringException(string message, Exception inner) : base(message, inner)
    {
    }
}
