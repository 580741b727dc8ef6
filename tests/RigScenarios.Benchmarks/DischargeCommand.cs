using System.Globalization;
using System.Text;
using RigScenarios.Batteries;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Benchmarks;

/// <summary>`discharge CASES.json RESULTS.csv`: runs each case of the file and writes how it ended.</summary>
internal static class DischargeCommand
{
    public const string Usage = "discharge CASES.json RESULTS.csv";

    public static int Run(ReadOnlySpan<string> arguments)
    {
        if (arguments.Length != 2)
        {
            Console.Error.WriteLine($"Two files are needed: {Usage}");
            return 2;
        }

        var file = DischargeCaseReader.Read(arguments[0]);
        var options = new DischargeOptions { TimeLimit = file.TimeLimit, SeriesPoints = 0 };
        var text = new StringBuilder("id,t_end_s,cause,z_end,zn_end,T_end_K,V_end\n");
        foreach (var one in file.Cases)
        {
            var result = Discharge.Run(one.Pack, one.Ambient, one.Start, one.Demand, options);
            text.Append(CultureInfo.InvariantCulture,
                $"{Quoted(one.Id)},{result.EndTime.Seconds:G12},{result.Cause.InWords()},"
                + $"{result.EndStateOfCharge.DecimalFractions:G12},{result.EndNearCharge.DecimalFractions:G12},"
                + $"{result.EndTemperature.Kelvins:G12},"
                + $"{result.EndVoltage?.Volts:G12}\n");
        }

        OutputFile.Write(arguments[1], text.ToString());
        Console.WriteLine($"{file.Cases.Count} cases, results in {arguments[1]}");
        return 0;
    }

    private static string Quoted(string id) =>
        id.AsSpan().IndexOfAny(",\"\n\r") < 0 ? id : $"\"{id.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
