using System.Globalization;
using RigScenarios.Benchmarks.Cases;

namespace RigScenarios.Checks.Batteries;

/// <summary>A reference discharge: the case and the end that the independent solver found.</summary>
/// <param name="Case">Pack, demand and start.</param>
/// <param name="EndSeconds">End time.</param>
/// <param name="Cause">End cause in words.</param>
/// <param name="Charge">State of charge at the end.</param>
/// <param name="NearCharge">That of the near well; null where the file gives none.</param>
/// <param name="Kelvin">Temperature at the end.</param>
/// <param name="Volts">Terminal voltage at the end; null where none exists.</param>
/// <param name="AtStep">Whether the end was found right after a step.</param>
/// <param name="Segments">Segments finished before.</param>
internal sealed record ReferenceDischarge(
    DischargeCase Case, double EndSeconds, string Cause, double Charge, double? NearCharge, double Kelvin,
    double? Volts, bool AtStep, int Segments);

/// <summary>
/// 115 discharges of invented packs, 60 of them with two wells, solved by an independent program: SciPy's DOP853, relative
/// tolerance 1e-10, begun anew at each step of
/// the demand and each point of the table, events polished; cross-checked with CVODE.
/// </summary>
internal static class ReferenceDischarges
{
    private static readonly (string Cases, string Results)[] Sets =
    [
        ("discharge-cases", "discharge-results"), ("discharge-cold-cases", "discharge-cold-results"),
        ("cold-cases-2", "cold-cases-2-results"),
    ];

    public static UnitsNet.Duration TimeLimit { get; } = UnitsNet.Duration.FromSeconds(172_800);

    public static IReadOnlyDictionary<string, ReferenceDischarge> All { get; } = Sets.SelectMany(Read)
        .ToDictionary(one => one.Case.Id);

    public static TheoryData<string> Ids => [.. All.Keys];

    private static IEnumerable<ReferenceDischarge> Read((string Cases, string Results) set)
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "data");
        var cases = DischargeCaseReader.Read(Path.Combine(folder, $"{set.Cases}.json")).Cases.ToDictionary(one => one.Id);
        var lines = File.ReadAllLines(Path.Combine(folder, $"{set.Results}.csv"));
        var columns = lines[0].Split(',');
        foreach (var line in lines.Skip(1))
        {
            var cells = line.Split(',');
            string Cell(string name) => cells[Array.IndexOf(columns, name)];
            double Number(string name) => double.Parse(Cell(name), CultureInfo.InvariantCulture);
            yield return new ReferenceDischarge(
                cases[Cell("id")], Number("t_end_s"), Cell("cause"), Number("z_end"),
                columns.Contains("zn_end") ? Number("zn_end") : null, Number("T_end_K"),
                Cell("V_end").Length == 0 ? null : Number("V_end"), Cell("at_step") == "yes",
                int.Parse(Cell("segment"), CultureInfo.InvariantCulture));
        }
    }
}
