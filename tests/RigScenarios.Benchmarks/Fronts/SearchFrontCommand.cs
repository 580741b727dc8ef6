using System.Diagnostics;
using System.Globalization;
using RigScenarios.Search.Choices;
using UnitsNet;

namespace RigScenarios.Benchmarks.Fronts;

/// <summary>Searches the front of an invented library and tells how far it came in how much time.</summary>
internal static class SearchFrontCommand
{
    public const string Usage = "search-front SLOTS CANDIDATES SECONDS [--seed N]";

    public static int Run(string[] args)
    {
        if (args is not [var slotText, var candidateText, var secondText, .. var rest]
            || !int.TryParse(slotText, CultureInfo.InvariantCulture, out var slots) || slots is < 2 or > 100
            || !int.TryParse(candidateText, CultureInfo.InvariantCulture, out var candidates) || candidates is < 1 or > 1000
            || !double.TryParse(secondText, CultureInfo.InvariantCulture, out var seconds) || !(seconds > 0))
        {
            Console.Error.WriteLine($"Usage: {Usage}, for example search-front 12 10 60.");
            return 2;
        }
        var seed = rest is ["--seed", var seedText] ? int.Parse(seedText, CultureInfo.InvariantCulture) : 1;
        var model = new InventedLibrary(slots, candidates, seed);
        var watch = Stopwatch.StartNew();
        var last = TimeSpan.Zero;
        var progress = new Told<FrontProgress>(now =>
        {
            if (watch.Elapsed - last < TimeSpan.FromSeconds(5))
                return;
            last = watch.Elapsed;
            Console.WriteLine($"{last.TotalSeconds,6:0} s: {now.Proposed} looked at, {now.Evaluated} run, {now.Entries} entries");
        });
        var found = FrontSearch.Find(model, new FrontOptions { TimeLimit = Duration.FromSeconds(seconds), MostEquals = 1 },
            progress);
        string All(IEnumerable<double> figures) => string.Join(", ", model.Goals.Zip(figures,
            (goal, figure) => FormattableString.Invariant($"{goal.Name} {figure:0.00}")));
        string[] lines =
        [
            FormattableString.Invariant($"{slots} slots of {candidates}, {(double)found.Choices:0.0e0} choices, three goals, ")
                + "one of them no sum",
            (found.IsComplete ? "complete" : FormattableString.Invariant($"at most {(double)found.UndecidedAtMost:0.00e0} left"))
                + FormattableString.Invariant($" after {watch.Elapsed.TotalSeconds:0.0} s: {found.Entries.Count} entries, ")
                + FormattableString.Invariant($"{found.Proposed} looked at, {found.Evaluated} run"),
            $"nothing left is under: {All(found.OpenAtLeast)}",
            $"the least found: {All(model.Goals.Select((_, i) => found.Entries.Min(entry => entry.Goals[i])))}",
        ];
        Console.WriteLine(string.Join(Environment.NewLine, lines));
        return 0;
    }

    private sealed class Told<T>(Action<T> tell) : IProgress<T>
    {
        public void Report(T value) => tell(value);
    }
}
