using System.Text.Json;

namespace RigScenarios.Page.Tests.Servers;

/// <summary>What is read from an answer.</summary>
internal static class Answers
{
    public static async Task<JsonElement> JsonAsync(this HttpResponseMessage answer)
    {
        using (answer)
        {
            using var document =
                JsonDocument.Parse(await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken));
            return document.RootElement.Clone();
        }
    }

    public static async Task<string> TextAsync(this HttpResponseMessage answer)
    {
        using (answer)
            return await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    /// <summary>The texts of the problems of an answer.</summary>
    public static string Problems(this JsonElement json) =>
        string.Join('\n', json.GetProperty("problems").EnumerateArray()
        .Select(problem => problem.GetProperty("text").GetString()));

    public static string Text(this JsonElement json, string name) => json.GetProperty(name).GetString()!;
}
