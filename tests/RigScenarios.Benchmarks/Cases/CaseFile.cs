using System.Text.Json;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>What all case files have in common: JSON with a list of named cases.</summary>
internal static class CaseFile
{
    public static JsonDocument Parse(string path)
    {
        try
        {
            return JsonDocument.Parse(File.ReadAllBytes(path));
        }
        catch (JsonException error)
        {
            throw new CaseFileException($"{path}, line {error.LineNumber + 1}: not valid JSON ({error.Message}).", error);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new CaseFileException($"{path}: {(File.Exists(path) ? error.Message : "there is no such file.")}", error);
        }
    }

    /// <summary>All cases of a file.</summary>
    /// <param name="path">The file.</param>
    /// <param name="read">Makes one of them; null where something of it is wrong, which is then noted, or it is none to be
    /// read.</param>
    /// <exception cref="CaseFileException">Something is wrong; the message tells all of it.</exception>
    public static IReadOnlyList<T> Read<T>(string path, Func<string, JsonElement, CaseFields, List<string>, T?> read)
        where T : class
    {
        using var document = Parse(path);
        var problems = new List<string>();
        var cases = Cases(path, document.RootElement, problems)
            .Select(one => read(one.Id, one.Element, one.Fields, problems)).OfType<T>().ToList();
        if (problems.Count > 0)
            throw new CaseFileException(string.Join(Environment.NewLine, problems));
        return cases;
    }

    /// <summary>The cases with their names; what is wrong with the list or a name is noted.</summary>
    public static IEnumerable<(string Id, JsonElement Element, CaseFields Fields)> Cases(string path, JsonElement root,
        List<string> problems)
    {
        if (!CaseFields.Find(root, "cases", out var list) || list.ValueKind != JsonValueKind.Array)
        {
            new CaseFields(path, problems).Problem("cases", "missing; accepted: a list of cases");
            yield break;
        }

        var ids = new HashSet<string>();
        foreach (var (index, element) in list.EnumerateArray().Index())
        {
            var id = CaseFields.Find(element, "id", out var name) && name.ValueKind == JsonValueKind.String
                ? name.GetString()! : "";
            var fields = new CaseFields($"{path}, case {(id.Length > 0 ? id : $"number {index + 1}")}", problems);
            if (id.Length == 0)
                fields.Problem("id", "missing; accepted: a name");
            else if (!ids.Add(id))
                fields.Problem("id", "used twice; accepted: a name for each case");
            yield return (id, element, fields);
        }
    }
}
