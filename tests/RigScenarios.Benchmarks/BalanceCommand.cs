using System.Text.Json.Nodes;
using RigScenarios.Balance;
using RigScenarios.Benchmarks.Cases.Balance;

namespace RigScenarios.Benchmarks;

/// <summary>`balance CASES.json RESULTS.json`: asks the library what each case of the file asks and writes the answers.</summary>
internal static class BalanceCommand
{
    public const string Usage = "balance CASES.json RESULTS.json";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine($"Two files are needed: {Usage}");
            return 2;
        }

        var cases = BalanceCaseReader.Read(arguments[0]);
        var results = new JsonObject
        {
            ["model"] = "balance-model.md",
            ["format"] = "balance-format.md",
            ["standardGravityMPerS2"] = StandardGravity.Value.MetersPerSecondSquared,
            ["results"] = new JsonArray([.. cases.Select(BalanceAnswer.Of)]),
        };
        OutputFile.Write(arguments[1], results.ToJsonString());
        Console.WriteLine($"{cases.Count} cases, results in {arguments[1]}");
        return 0;
    }
}
