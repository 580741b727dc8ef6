using System.Text.RegularExpressions;

namespace RigScenarios.Tests.House;

/// <summary>Rules of the house over the text of the source files.</summary>
public sealed partial class SourceRulesTests
{
    [Fact]
    public void A_namespace_is_named_like_its_folder()
    {
        Each.Of(SourceFiles.OfSource, file => Each.Of(Namespaces().Matches(File.ReadAllText(file)),
            match => Assert.Equal(FolderName(file), match.Groups["name"].Value), atLeast: 0), atLeast: 300);
    }

    [Fact]
    public void The_rules_look_at_source_tests_and_pages()
    {
        Assert.True(SourceFiles.OfSource.Count >= 400, $"{SourceFiles.OfSource.Count} files of source");
        Assert.True(SourceFiles.OfTests.Count >= 250, $"{SourceFiles.OfTests.Count} files of tests");
        Assert.True(SourceFiles.OfPages.Count >= 55, $"{SourceFiles.OfPages.Count} files of pages");
    }

    [Fact]
    public void No_file_has_more_than_300_lines() =>
        None(SourceFiles.All.Select(file => (file, Lines: File.ReadLines(file).Count())).Where(one => one.Lines > 300)
            .Select(one => $"{one.file}: {one.Lines} lines"));

    [Fact]
    public void No_line_is_longer_than_130_columns()
    {
        var wrong = SourceFiles.All.SelectMany(file => File.ReadLines(file).Index()
            .Select(line => (line.Index, Columns: line.Item.EnumerateRunes().Count())).Where(line => line.Columns > 130)
            .Select(line => $"{file}, line {line.Index + 1}: {line.Columns} columns"));
        None(wrong);
    }

    // It passes where there is nothing to look at. `Each` says how much there must be, and xunit's own can be told too.
    [Fact]
    public void No_test_passes_because_a_list_is_empty()
    {
        var wrong = SourceFiles.OfTests.Where(file => Path.GetFileName(file) is not "Each.cs" and not "SourceRulesTests.cs")
            .SelectMany(file => PassesOnNothing().Matches(File.ReadAllText(file))
                .Select(match => $"{file}: {match.Value.Trim()}: write Each.Of or Each.HasNot"));
        None(wrong);
    }

    [Theory]
    [InlineData("Assert.All(limits, limit => Assert.True(true))", true)]
    [InlineData("await Assert.AllAsync(limits, check)", true)]
    [InlineData("Assert.True(limits.All(limit => limit.Holds))", true)]
    [InlineData("Assert.False(limits.Any(limit => limit.Fails))", true)]
    [InlineData("Each.Of(limits, limit => Assert.True(limit.Holds))", false)]
    [InlineData("Assert.True(SourceFiles.All.Count > 3)", false)]
    [InlineData("Assert.True(limits.Any(limit => limit.Fails))", false)]
    public void The_search_for_lists_that_may_be_empty_finds_what_it_should(string text, bool found) =>
        Assert.Equal(found, PassesOnNothing().IsMatch(text));

    [Fact]
    public void No_file_or_type_is_named_for_nothing()
    {
        var named = SourceFiles.OfSource.Select(file => Path.GetRelativePath(Path.Combine(Repository.Root, "src"), file))
            .Where(file => Empty().IsMatch(file)).ToList();
        named.AddRange(SourceFiles.OfSource.SelectMany(file => TypeNames().Matches(File.ReadAllText(file))
            .Select(match => match.Groups["name"].Value)).Where(name => Empty().IsMatch(name)));
        None(named);
    }

    [Fact]
    public void No_message_and_no_data_file_calls_anything_safe()
    {
        var wrong = SourceFiles.OfSource.SelectMany(file => Strings().Matches(Comments().Replace(File.ReadAllText(file), ""))
            .Where(match => Promise().IsMatch(match.Value)).Select(match => $"{file}: {match.Value}")).ToList();
        wrong.AddRange(DataFiles().Where(file => Promise().IsMatch(File.ReadAllText(file))));
        None(wrong);
    }

    [Fact]
    public void No_path_of_a_machine_stands_in_source_or_data()
    {
        var wrong = SourceFiles.OfSource.Concat(SourceFiles.OfPages).Concat(DataFiles())
            .Where(file => MachinePath().IsMatch(File.ReadAllText(file)));
        None(wrong);
    }

    // The packages of the checks of the scripts come from wherever the machine gets its packages.
    [Fact]
    public void No_list_of_packages_says_where_they_are_fetched()
    {
        var folder = Path.Combine(Repository.Root, "tests", "Scripts");
        Assert.Contains("omit-lockfile-registry-resolved=true", File.ReadAllText(Path.Combine(folder, ".npmrc")),
            StringComparison.Ordinal);
        var packages = File.ReadAllText(Path.Combine(folder, "package-lock.json"));
        Assert.Contains("\"integrity\"", packages, StringComparison.Ordinal);
        Assert.DoesNotContain("\"resolved\"", packages, StringComparison.Ordinal);
        Each.HasNot(Directory.GetFiles(folder, ".npmrc").Concat(Directory.GetFiles(folder, "package.json")),
            file => File.ReadAllText(file).Contains("://", StringComparison.Ordinal), atLeast: 2);
    }

    // Whoever puts something else in the server's place does so at one door. In a browser: its own files, and its workers; a
    // saved page makes its workers of what it carries.
    [Fact]
    public void The_scripts_that_carry_requests_ask_a_network_and_no_others()
    {
        var source = Path.Combine(Repository.Root, "src");
        var asking = SourceFiles.OfPages.Where(file => file.EndsWith(".js", StringComparison.Ordinal)
            && AsksANetwork().IsMatch(Comments().Replace(File.ReadAllText(file), "")))
            .Select(file => Path.GetRelativePath(source, file).Replace(Path.DirectorySeparatorChar, '/'));
        Assert.Equal(["RigScenarios.Browser/wwwroot/boot.js", "RigScenarios.Page/site/browser/program.js",
            "RigScenarios.Page/site/folder/offline.js", "RigScenarios.Page/site/folder/packed-charts.js",
            "RigScenarios.Page/site/saved/carried.js", "RigScenarios.Page/site/shared/server.js"],
            asking.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("await fetch(path)", true)]
    [InlineData("new WebSocket(address)", true)]
    [InlineData("navigator.sendBeacon('/x')", true)]
    [InlineData("\"/api/shelf\"", true)]
    [InlineData("fetchFile(path)", false)]
    public void The_search_for_what_asks_a_network_finds_what_it_should(string text, bool found) =>
        Assert.Equal(found, AsksANetwork().IsMatch(text));

    [Fact]
    public void The_core_library_knows_no_console_and_no_charts()
    {
        var project = File.ReadAllText(Path.Combine(Repository.Root, "src", "RigScenarios", "RigScenarios.csproj"));
        Assert.DoesNotContain("Spectre", project, StringComparison.Ordinal);
        Assert.DoesNotContain("Plotly", project, StringComparison.Ordinal);
        Assert.DoesNotContain("ProjectReference", project, StringComparison.Ordinal);
        Each.HasNot(SourceFiles.OfSource.Where(file => file
            .Contains($"src{Path.DirectorySeparatorChar}RigScenarios{Path.DirectorySeparatorChar}", StringComparison.Ordinal)),
            file => File.ReadAllText(file).Contains("Console.", StringComparison.Ordinal), atLeast: 250);
    }

    [Theory]
    [InlineData("it is safe to lift", true)]
    [InlineData("a Safe load", true)]
    [InlineData("unsafe code", false)]
    [InlineData("thread-safety", false)]
    public void The_search_for_promises_finds_what_it_should(string text, bool found) =>
        Assert.Equal(found, Promise().IsMatch(text));

    private static void None(IEnumerable<string> wrong)
    {
        var all = wrong.ToList();
        Assert.True(all.Count == 0, string.Join('\n', all));
    }

    private static string FolderName(string file) =>
        Path.GetRelativePath(Path.Combine(Repository.Root, "src"), Path.GetDirectoryName(file)!)
            .Replace(Path.DirectorySeparatorChar, '.');

    private static string[] DataFiles() => Directory.GetFiles(Repository.Data(), "*", SearchOption.AllDirectories);

    [GeneratedRegex(@"^\s*//.*$", RegexOptions.Multiline | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Comments();

    [GeneratedRegex(@"^namespace (?<name>[\w.]+)",
        RegexOptions.Multiline | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Namespaces();

    [GeneratedRegex(@"\b(class|record|struct|interface|enum)\s+(struct\s+|class\s+)?(?<name>[A-Z]\w*)",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex TypeNames();

    [GeneratedRegex(@"\bAssert\.(All(Async)?\((?!.*throwIfEmpty)|True\([^;\n]*[^.\w]?\.All\(|False\([^;\n]*\.Any\()",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex PassesOnNothing();

    [GeneratedRegex("Helper|Util|Manager|Common(?!Practice)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Empty();

    [GeneratedRegex(@"\b(fetch|sendBeacon|WebSocket|XMLHttpRequest|EventSource|SharedWorker|Worker)\(|[""`']/api/",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex AsksANetwork();

    [GeneratedRegex(@"""([^""\\\n]|\\.)*""", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Strings();

    [GeneratedRegex(@"(?<![\w-])safe(ly)?(?![\w-])",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Promise();

    [GeneratedRegex(@"(?<![\w.])/(work|tmp|home|root|Users)/|[A-Z]:\\\\Users",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex MachinePath();
}
