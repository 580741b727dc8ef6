using System.Text.Json.Nodes;
using RigScenarios.Benchmarks.Cases.Aging;
using RigScenarios.Benchmarks.Cases.Balance;
using RigScenarios.Benchmarks.Cases.Days;
using RigScenarios.Benchmarks.Cases.Fits;

namespace RigScenarios.Benchmarks.Cases.Sets;

/// <summary>
/// The demos and the cases that independent programs have solved, each with how the library answers it: whoever runs the
/// library elsewhere, such as in a browser, can hold its answers against those of this machine.
/// </summary>
/// <param name="Name">Its name.</param>
/// <param name="Path">Its file or folder, from the root of the checkout, with "/" between names.</param>
/// <param name="Count">How many cases an answer has.</param>
/// <param name="Answer">Answers all of them, given the file or folder where it lies now.</param>
internal sealed record CaseSet(string Name, string Path, Func<JsonNode, int> Count, Func<string, JsonNode> Answer)
{
    private const string Data = "tests/RigScenarios.Checks/data";

    private static readonly string[] Demos =
        ["island-crossing", "market-hall", "night-dolly", "pottery-class", "river-ferry", "teaching-kit", "winter-harbour"];

    /// <summary>What the demos take their parts from: a folder that lies wherever they lie.</summary>
    public const string Parts = "data/parts";

    /// <summary>Within which share of itself a figure is the same on another machine.</summary>
    public double Within { get; init; } = 1e-9;

    /// <summary>All sets.</summary>
    public static IReadOnlyList<CaseSet> All { get; } =
    [
        .. Demos.Select(name => new CaseSet(name, $"data/scenarios/{name}.yaml", Fields, DemoAnswer.Of)),
        new("discharges", $"{Data}/discharge-cases.json", Entries, Discharges),
        new("cold discharges", $"{Data}/discharge-cold-cases.json", Entries, Discharges),
        new("cold discharges with two wells", $"{Data}/cold-cases-2.json", Entries, Discharges),
        // Among the runs are some into a power limit, where the current turns with an infinite slope.
        new("networks", $"{Data}/network-cases.json", Entries, Networks) { Within = 1e-7 },
        new("days with several batteries", $"{Data}/day-cases", Fields,
            folder => Named(DayCase.In(folder), one => DayAnswer.Of(one))),
        new("whole days", $"{Data}/one-day-cases", Fields, folder => Named(DayCase.In(folder), one => OneDayAnswer.Of(one))),
        new("balance", $"{Data}/balance-cases.json", Entries,
            file => new JsonArray([.. BalanceCaseReader.Read(file).Select(BalanceAnswer.Of)])),
        new("aging", $"{Data}/aging-cases.json", Entries,
            file => new JsonArray([.. AgingCaseReader.Read(file).Select(AgingAnswer.Of)])),
        // What can hardly be told apart is told with a ratio of up to 10^8, which carries the rounding of its small half.
        new("fits", $"{Data}/fit-cases", Entries, FitCaseAnswers.In) { Within = 1e-7 },
    ];

    private static int Entries(JsonNode answer) => answer.AsArray().Count;

    private static int Fields(JsonNode answer) => answer.AsObject().Count;

    private static JsonArray Discharges(string path)
    {
        var file = DischargeCaseReader.Read(path);
        return [.. file.Cases.Select(one => DischargeAnswer.Of(one, file.TimeLimit))];
    }

    private static JsonArray Networks(string path)
    {
        var file = NetworkCaseReader.Read(path);
        return [.. file.Static.Select(NetworkAnswer.Of), .. file.Runs.Select(one => NetworkRunAnswer.Of(one).ToJson(one.Id))];
    }

    private static JsonObject Named(IEnumerable<DayCase> cases, Func<DayCase, JsonObject> answer) =>
        new(cases.Select(one => KeyValuePair.Create(one.Id, (JsonNode?)answer(one))));
}
