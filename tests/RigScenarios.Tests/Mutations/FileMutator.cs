using System.Text;

namespace RigScenarios.Tests.Mutations;

/// <summary>
/// Changes the files of data/ by chance: most changes are such as a slip of the hand makes and leave a file that may still be
/// read
/// and answered, some are such as no hand makes.
/// </summary>
internal sealed class FileMutator
{
    private readonly IReadOnlyList<(string Name, string Text)> files;
    private readonly (int Weight, string Name, Func<Random, string, string> Change)[] changes;
    private readonly int weights;

    /// <param name="data">The folder data/ of the checkout.</param>
    public FileMutator(string data)
    {
        files = [.. new[] { "parts", "scenarios" }
            .SelectMany(folder => Directory.EnumerateFiles(Path.Combine(data, folder), "*.yaml").Order(StringComparer.Ordinal))
            .Select(path => (Path.GetRelativePath(data, path).Replace('\\', '/'), File.ReadAllText(path)))];
        var texts = new TextChanges([.. files.Select(file => file.Text)]);
        changes =
        [
            (40, "a number scaled", texts.ScaleNumber),
            (10, "a number of another kind", texts.OddNumber),
            (26, "a value of the same key", texts.ValueOfSameKey),
            (8, "another unit", texts.OtherUnit),
            (6, "two values swapped", texts.SwapValues),
            (6, "another key", texts.OtherKey),
            (4, "a field left out", texts.LeaveOut),
            (4, "a field twice", texts.Twice),
            (4, "a line left out", texts.DropLine),
            (3, "a line twice", texts.DoubleLine),
            (3, "a line from elsewhere", texts.ForeignLine),
            (3, "another indentation", texts.Indent),
            (2, "a block many times", texts.ManyBlocks),
            (3, "an odd token", texts.OddToken),
            (2, "deep nesting", texts.DeepNesting),
            (4, "odd characters", texts.OddCharacters),
            (2, "digits of another script", texts.OtherDigits),
            (1, "a long text", texts.LongText),
            (1, "the end cut off", texts.CutOff),
        ];
        weights = changes.Sum(change => change.Weight);
    }

    /// <summary>The kinds of changes.</summary>
    public IEnumerable<string> Changes => changes.Select(change => change.Name);

    /// <summary>One case of a series.</summary>
    /// <param name="seed">The seed of the series.</param>
    /// <param name="number">The number of the case.</param>
    public MutatedFile Make(int seed, int number)
    {
        var random = new Random(unchecked((seed * 1_000_003) + number));
        // Three of four are scenarios: only they are answered.
        var kind = random.Next(4) == 0 ? "parts/" : "scenarios/";
        var among = files.Where(file => file.Name.StartsWith(kind, StringComparison.Ordinal)).ToList();
        var (name, text) = among[random.Next(among.Count)];
        var done = new List<string>();
        // Mostly one or two: of a file with many changes only the first mistake is looked at.
        for (var left = 1 + (random.Next(5) / 3); left > 0; left--)
        {
            var (what, change) = Draw(random);
            text = change(random, text);
            done.Add(what);
        }
        var bytes = Encoding.UTF8.GetBytes(text);
        if (random.Next(25) == 0)
        {
            ChangeBytes(random, bytes);
            done.Add("bytes");
        }
        return new MutatedFile(seed, number, name, bytes, done);
    }

    private (string Name, Func<Random, string, string> Change) Draw(Random random)
    {
        var drawn = random.Next(weights);
        foreach (var (weight, name, change) in changes)
        {
            drawn -= weight;
            if (drawn < 0)
                return (name, change);
        }
        throw new InvalidOperationException("The weights don't add up.");
    }

    private static void ChangeBytes(Random random, byte[] bytes)
    {
        for (var left = bytes.Length == 0 ? 0 : 1 + random.Next(8); left > 0; left--)
            bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
    }
}
