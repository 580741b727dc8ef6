using System.Text.RegularExpressions;

namespace RigScenarios.Tests.House;

/// <summary>Rules of the house over the text of the source files.</summary>
public sealed partial class SourceRulesTests
{
    private static readonly string[] SourceFiles =
        [.. Directory.GetFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories)];

    [Fact]
    public void A_namespace_is_named_like_its_folder()
    {
        Assert.True(SourceFiles.Length > 300);
        var wrong = SourceFiles.Where(file => !Namespaces().Matches(File.ReadAllText(file))
            .All(match => match.Groups["name"].Value == FolderName(file)));
        Assert.Empty(wrong);
    }

    [Fact]
    public void No_source_file_has_more_than_300_lines() =>
        Assert.DoesNotContain(SourceFiles, file => File.ReadLines(file).Count() > 300);

    [Fact]
    public void No_line_is_longer_than_130_columns()
    {
        var wrong = SourceFiles.SelectMany(file => File.ReadLines(file).Index().Where(line => line.Item.Length > 130)
            .Select(line => $"{file}, line {line.Index + 1}: {line.Item.Length} columns"));
        Assert.Empty(wrong);
    }

    [Fact]
    public void No_file_or_type_is_named_for_nothing()
    {
        var named = SourceFiles.Select(file => Path.GetRelativePath(Path.Combine(Repository.Root, "src"), file))
            .Where(file => Empty().IsMatch(file)).ToList();
        named.AddRange(SourceFiles.SelectMany(file => TypeNames().Matches(File.ReadAllText(file))
            .Select(match => match.Groups["name"].Value)).Where(name => Empty().IsMatch(name)));
        Assert.Empty(named);
    }

    [Fact]
    public void No_message_and_no_data_file_calls_anything_safe()
    {
        var wrong = SourceFiles.SelectMany(file => Strings().Matches(Comments().Replace(File.ReadAllText(file), ""))
            .Where(match => Promise().IsMatch(match.Value)).Select(match => $"{file}: {match.Value}")).ToList();
        wrong.AddRange(DataFiles().Where(file => Promise().IsMatch(File.ReadAllText(file))));
        Assert.Empty(wrong);
    }

    [Fact]
    public void No_path_of_a_machine_stands_in_source_or_data()
    {
        var wrong = SourceFiles.Concat(DataFiles()).Where(file => MachinePath().IsMatch(File.ReadAllText(file)));
        Assert.Empty(wrong);
    }

    [Fact]
    public void The_core_library_knows_no_console_and_no_charts()
    {
        var project = File.ReadAllText(Path.Combine(Repository.Root, "src", "RigScenarios", "RigScenarios.csproj"));
        Assert.DoesNotContain("Spectre", project, StringComparison.Ordinal);
        Assert.DoesNotContain("Plotly", project, StringComparison.Ordinal);
        Assert.DoesNotContain("ProjectReference", project, StringComparison.Ordinal);
        Assert.DoesNotContain(SourceFiles.Where(file => file
            .Contains($"src{Path.DirectorySeparatorChar}RigScenarios{Path.DirectorySeparatorChar}", StringComparison.Ordinal)),
            file => File.ReadAllText(file).Contains("Console.", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("it is safe to lift", true)]
    [InlineData("a Safe load", true)]
    [InlineData("unsafe code", false)]
    [InlineData("thread-safety", false)]
    public void The_search_for_promises_finds_what_it_should(string text, bool found) =>
        Assert.Equal(found, Promise().IsMatch(text));

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

    [GeneratedRegex("Helper|Util|Manager|Common(?!Practice)", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Empty();

    [GeneratedRegex(@"""([^""\\\n]|\\.)*""", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Strings();

    [GeneratedRegex(@"(?<![\w-])safe(ly)?(?![\w-])",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex Promise();

    [GeneratedRegex(@"(?<![\w.])/(work|tmp|home|root|Users)/|[A-Z]:\\\\Users",
        RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant, 5000)]
    private static partial Regex MachinePath();
}
