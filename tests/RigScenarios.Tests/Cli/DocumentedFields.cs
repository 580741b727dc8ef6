using System.Text.Json;

namespace RigScenarios.Tests.Cli;

/// <summary>Holds the fields of a JSON answer against docs/json.md.</summary>
internal static class DocumentedFields
{
    /// <summary>Asserts that every field stands in one of the sections.</summary>
    /// <param name="json">The answer.</param>
    /// <param name="headings">The headings of the sections, as the page has them.</param>
    public static Task AssertAsync(JsonElement json, params string[] headings) => AssertInAsync("json.md", json, headings);

    /// <summary>The same for another page.</summary>
    /// <param name="file">The page in docs.</param>
    /// <param name="json">The answer.</param>
    /// <param name="headings">The headings of the sections, as the page has them.</param>
    public static async Task AssertInAsync(string file, JsonElement json, params string[] headings)
    {
        var page = await File.ReadAllTextAsync(Path.Combine(Repository.Root, "docs", file),
            TestContext.Current.CancellationToken);
        var sections = string.Concat(headings.Select(heading => Section(page, heading)));
        var names = new HashSet<string>(StringComparer.Ordinal);
        Collect(json, names);
        Assert.True(names.Count >= 20, $"Only {names.Count} fields were looked at.");
        var missing = names.Where(name => !new[] { $"`{name}`", $"`.{name}`", $"`.{name}[]`", $"`{name}[]`" }
            .Any(way => sections.Contains(way, StringComparison.Ordinal))).ToList();
        Assert.True(missing.Count == 0, $"Not in docs/{file}: {string.Join(", ", missing)}");
    }

    private static string Section(string page, string heading)
    {
        var start = page.IndexOf(heading, StringComparison.Ordinal);
        Assert.True(start >= 0, heading);
        var end = page.IndexOf("\n## ", start + heading.Length, StringComparison.Ordinal);
        return end < 0 ? page[start..] : page[start..end];
    }

    private static void Collect(JsonElement element, HashSet<string> names)
    {
        foreach (var item in element.ValueKind == JsonValueKind.Array ? element.EnumerateArray()
            : Enumerable.Empty<JsonElement>())
            Collect(item, names);
        foreach (var field in element.ValueKind == JsonValueKind.Object ? element.EnumerateObject()
            : Enumerable.Empty<JsonProperty>())
        {
            names.Add(field.Name);
            Collect(field.Value, names);
        }
    }
}
