using System.Diagnostics;
using System.Text;
using RigScenarios.Files;
using RigScenarios.Scenarios;

namespace RigScenarios.Tests.Files;

/// <summary>
/// Files that are no scenario, by accident or on purpose. Each must give a clear error; the work is bounded, which is held by
/// the bytes that reading allocates and not by time, so that a busy machine fails no test.
/// </summary>
public sealed class HostileInputTests(ITestOutputHelper output)
{
    /// <summary>What reading may allocate, whatever the file: the largest file is 2 MB, held a few times as bytes, text and
    /// tree.</summary>
    private const long MostBytes = 250_000_000;

    private const string Head = "rigscenarios: scenario 1\ntitle: x\n";

    public static TheoryData<string, string> Texts => new()
    {
        { "a million opening brackets", new string('[', 1_000_000) },
        { "a million opening braces", new string('{', 1_000_000) },
        { "many quotes in a word in braces", Head + "kit: {a: x" + new string('"', 200_000) + "}\n" },
        { "deep block nesting",
            Head + "kit:\n" + string.Concat(Enumerable.Range(1, 1500).Select(depth => new string(' ', depth) + "a:\n")) },
        { "deep lists in block style", Head + "kit:\n  " + string.Concat(Enumerable.Repeat("- ", 100_000)) + "a" },
        { "alias bomb", "a: &a [x,x,x,x]\n" + string.Concat(Enumerable.Range(0, 25).Select(n => $"{(char)('b' + n)}: "
            + $"&{(char)('b' + n)} [{string.Join(',', Enumerable.Repeat("*" + (char)('a' + n), 9))}]\n")) },
        { "anchor", Head + "kit: &mark {a: {part: b}}\n" },
        { "alias", Head + "kit: *mark\n" },
        { "tag", Head + "kit: !!python/object:os.system {a: b}\n" },
        { "custom tag", Head + "kit: !thing a\n" },
        { "merge key", Head + "kit:\n  <<: {part: a}\n" },
        { "duplicate keys", Head + "title: again\n" },
        { "empty", "" },
        { "blank", " \n\n  \n" },
        { "only comments", "# nothing\n# here\n" },
        { "only a separator", "---\n" },
        { "second document", Head + "---\ntitle: second\n" },
        { "a list", "- a\n- b\n" },
        { "a word", "hello" },
        { "tab for indentation", Head + "kit:\n\ta: b\n" },
        { "unclosed quote", Head + "note: \"no end\n" },
        { "unclosed brace", Head + "kit: {a: {part: b}\n" },
        { "very long key", Head + new string('k', 1_000_000) + ": 1\n" },
        { "very long explicit key", Head + "kit:\n  ? " + new string('k', 900_000) + "\n  : {a: 1, b: 2, c: 3}\n" },
        { "very long scalar", Head + "note: " + new string('x', 1_900_000) + "\n" },
        { "very long quantity", Head + "conditions: {ambient: " + new string('9', 500_000) + " °C}\n" },
        { "a hundred thousand keys", Head + string.Concat(Enumerable.Range(0, 100_000).Select(n => $"k{n}: 1\n")) },
        { "many unknown keys", Head + string.Concat(Enumerable.Range(0, 14_000).Select(n => $"titel{n}: 1\n")) },
        { "many unknown parts",
            Head + "kit:\n" + string.Concat(Enumerable.Range(0, 7000).Select(n => $"  a{n}: {{part: b{n}}}\n")) },
        { "many unknown devices", Head + "builds:\n  b:\n    stance: hand\n    battery: {item: x}\n    devices:\n"
            + string.Concat(Enumerable.Range(0, 7000).Select(n => $"      a{n}: {{}}\n"))
            + "days:\n  d:\n    ambient: 1 °C\n    blocks:\n      b:\n        length: 1 h\n        states: {"
                + string.Join(", ", Enumerable.Range(0, 7000).Select(n => $"b{n}: record")) + "}\n" },
        { "many blocks and many builds", ManyBlocks() },
        { "a long ring of regulators",
            Head + "builds:\n  b:\n    stance: hand\n    battery: {item: x}\n    devices: {}\n    regulators:\n"
            + string.Concat(Enumerable.Range(0, 6000).Select(n => $"      r{n}: {{fed-by: r{(n + 1) % 6000}}}\n")) },
        { "a broken code unit", Head + "note: \"\\uD800\"\n" },
        { "a code point that doesn't exist", Head + "note: \"\\UFFFFFFFF\"\n" },
        { "a control character", Head + "note: \"a\\0b\\x07\"\n" },
        { "a huge directive", "%YAML 99999999999999999999.1\n---\n" + Head },
        { "not a number", Head + "conditions: {ambient: NaN}\n" },
        { "infinite", Head + "conditions: {ambient: .inf}\n" },
        { "beyond every number", Head + "conditions: {ambient: 1e308 °C}\n" },
        { "beyond a decimal number", Head + "parts: {a: {kind: body, name: a, power: {record: 1e308 W}}}\n" },
        { "negative", Head + "parts: {a: {kind: body, name: a, power: {record: -1 W}}}\n" },
        { "negative count", Head + "kit: {a: {part: b, count: -1}}\n" },
        { "huge count", Head + "kit: {a: {part: b, count: 99999999999}}\n" },
        { "groups where text belongs", Head + "note: {a: b}\nkit: text\nbuilds: [1, 2]\ndays: {d: [x]}\n" },
        { "a group as a key", Head + "kit: {{a: b}: c}\n" },
        { "parts from a missing file", Head + "parts-from: [nowhere.yaml]\n" },
        { "parts from an empty folder", Head + "parts-from: [.]\n".Replace(".]", "empty]", StringComparison.Ordinal) },
        { "parts from itself", Head + "parts-from: [scenario.yaml]\n" },
        { "parts from a name that can't be one", Head + "parts-from: [\"a\\0b\"]\n" },
        { "parts from everywhere", Head + "parts-from: [" + string.Join(", ", Enumerable.Repeat("scenario.yaml", 51)) + "]\n" },
    };

    public static TheoryData<string, string> Bytes => new()
    {
        { "UTF-16 little end first",
            Convert.ToBase64String(Encoding.Unicode.GetPreamble().Concat(Encoding.Unicode.GetBytes(Head)).ToArray()) },
        { "UTF-16 big end first", Convert.ToBase64String(Encoding.BigEndianUnicode.GetPreamble()
            .Concat(Encoding.BigEndianUnicode.GetBytes(Head)).ToArray()) },
        { "UTF-16 without a mark", Convert.ToBase64String(Encoding.Unicode.GetBytes(Head)) },
        { "NUL bytes", Convert.ToBase64String([.. "title: a"u8, 0, 0, .. "b"u8]) },
        { "broken UTF-8", Convert.ToBase64String([.. "title: a"u8, 0xC3, 0x28, .. "b"u8]) },
        { "Latin-1", Convert.ToBase64String([.. "title: caf"u8, 0xE9, 0x0A]) },
    };

    [Theory]
    [MemberData(nameof(Texts), DisableDiscoveryEnumeration = true)]
    public void A_text_that_is_no_scenario_gives_clear_errors_and_nothing_else(string what, string text)
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "empty"));
        IsRefused(what, folder.Write("scenario.yaml", text));
    }

    [Theory]
    [MemberData(nameof(Bytes))]
    public void A_file_that_is_not_text_in_UTF_8_says_so_with_the_place(string what, string bytes)
    {
        using var folder = new TemporaryFolder();
        var problem = Assert.Single(IsRefused(what, folder.Write("scenario.yaml", Convert.FromBase64String(bytes))));
        Assert.Contains("UTF-8", problem.Problem, StringComparison.Ordinal);
        Assert.Equal(1, problem.At.Line);
    }

    [Fact]
    public void A_file_of_100_MB_is_refused_after_its_first_2_MB()
    {
        using var folder = new TemporaryFolder();
        var path = Path.Combine(folder.Path, "large.yaml");
        using (var stream = File.Create(path))
            stream.SetLength(100 * 1024 * 1024);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Contains("larger than 2 MB", Assert.Single(IsRefused("100 MB", path)).Problem, StringComparison.Ordinal);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 10_000_000);
    }

    [Fact]
    public void A_folder_and_a_missing_file_are_told_as_such()
    {
        using var folder = new TemporaryFolder();
        folder.Write("winter-harbour.yaml", Head);
        Assert.Contains("folder", Assert.Single(IsRefused("folder", folder.Path)).Problem, StringComparison.Ordinal);
        var missing = Assert.Single(IsRefused("missing", Path.Combine(folder.Path, "winter-harbor.yaml")));
        Assert.Contains("no such file", missing.Problem, StringComparison.Ordinal);
        Assert.Equal("winter-harbour.yaml", missing.Nearest);
        Assert.Contains("no such file",
            Assert.Single(IsRefused("missing folder", Path.Combine(folder.Path, "none", "a.yaml"))).Problem,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Naming_a_scenario_where_parts_belong_says_just_that()
    {
        using var folder = new TemporaryFolder();
        var path = folder.Write("scenario.yaml", SmallScenario.Text());
        var problem = Assert.Single(ScenarioFile.CheckParts(path));
        Assert.Contains("another kind of file", problem.Problem, StringComparison.Ordinal);
        Assert.False(ScenarioFile.IsPartsFile(path));
        Assert.True(ScenarioFile.IsPartsFile(Repository.PartsFiles[0]));
    }

    [Fact]
    public void A_byte_order_mark_is_accepted()
    {
        using var folder = new TemporaryFolder();
        Assert.NotNull(ScenarioFile.TryRead(folder.Write("scenario.yaml",
            [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(SmallScenario.Text())])).Scenario);
    }

    private static string ManyBlocks()
    {
        var text = new StringBuilder(SmallScenario.Text());
        text.Append("\n  more:\n    blocks:\n");
        for (var block = 0; block < 2500; block++)
            text.Append("      b").Append(block).Append(": {length: 1 min}\n");
        text.Append("unknown: 1\n");
        return text.ToString().Replace("\nbuilds:\n",
            "\nbuilds:\n" + string.Concat(Enumerable.Range(0, 400).Select(n => $"  b{n}: {{stance: hand, battery: {{item: "
                + $"flat}}, devices: {{light: {{}}, camera: {{}}, plate: {{power: {{record: 1 W}}}}}}}}\n")),
                StringComparison.Ordinal);
    }

    private IReadOnlyList<Diagnostic> IsRefused(string what, string path)
    {
        var watch = Stopwatch.StartNew();
        var before = GC.GetAllocatedBytesForCurrentThread();
        var exception = Assert.Throws<ScenarioProblemsException>(() => ScenarioFile.Read(path));
        var bytes = GC.GetAllocatedBytesForCurrentThread() - before;
        output.WriteLine($"{what}: {watch.ElapsedMilliseconds} ms, {bytes / 1e6:F1} MB, {exception.Problems.Count} problems: "
            + $"{exception.Problems[0]}");
        Assert.True(bytes < MostBytes, $"{what} made the reader allocate {bytes} bytes.");
        Assert.InRange(exception.Problems.Count, 1, 500);
        Assert.InRange(exception.Message.Length, 1, 300_000);
        Each.Of(exception.Problems, problem =>
        {
            var told = problem.ToString();
            Assert.DoesNotContain("   at ", told, StringComparison.Ordinal);
            Assert.DoesNotContain("Exception", told, StringComparison.Ordinal);
            Assert.DoesNotContain("(Parameter", told, StringComparison.Ordinal);
            Assert.InRange(told.Length, 20, 3000);
        });
        return exception.Problems;
    }
}
