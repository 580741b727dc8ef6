using System.Globalization;
using System.Text;
using RigScenarios.Cells.Aging;
using UnitsNet;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The part of docs/aging.md about the sets: laws, sources, what each was tested on, traps.</summary>
internal static class SetsSection
{
    public static void Write(StringBuilder text)
    {
        text.Append("""

            ## The sets

            T in kelvin, t in days, N in full cycles, s the charge 0…1 (in a cycle its mean), d the depth 0…1, c the rate in
            1/h, V the voltage of the set's own cell at s.

                nmc             Lc  max(0, 7.543 V - 23.75)·1e6·exp(-6976/T)                       p 0.75
                                Gc  max(0, 5.270 V - 16.32)·1e5·exp(-5986/T)                       p 0.75
                                Ly  sqrt(4.10)·(7.348e-3 (V-3.667)² + 7.600e-4 + 4.081e-3 d)       p 0.5
                                Gy  4.10·max(1.5e-5, 2.153e-4 (V-3.725)² - 1.521e-5 + 2.798e-4 d)  p 1
                lfp             Lc  sqrt(86400)·kq·exp(-Eq h)·(cq (s-0.5)³ + dq)                   p 0.5   h = (1/T - 1/298.15)/R
                                Gc  86400·kr·exp(-Er h)·(cr (s-0.5)² + dr)                         p 1
                                Ly  0.01·(aq c + bq)·(cy (d-0.6)³ + dy)                            p 0.5   c held in 0.2…1
                                Gy  0.01·(ar c + br)·(cz (d-0.5)³ + dz)                            p 1
                lfp-throughput  Ly  0.01·2.2^0.55·B(c)·exp(-(31700 - 370.3 c)/(8.314 T))           p 0.55  c held in 0.5…10
                nca, nmc811si   Lc  A·exp(B/T)·exp(C s/T)                                          p 0.512, 0.743
                                Ly  (a + b c + c' d)·(exp(d'/T) + exp(-e/T))                       p 0.699, 0.695

            The constants stand in one file a set beside its source. A set holds for any capacity, as N is relative.

            | set | fitted on | source |
            | --- | --- | --- |

            """);
        foreach (var set in AgingSets.All)
            text.Append(CultureInfo.InvariantCulture, $"| {set.Name} | {set.Description} | {set.Source} |\n");
        text.Append("""

            What each was tested on; the ends are inside. Outside of it the figures are extrapolated, and the answer says so:
            below 35 °C always for `nmc`.

            | set | stored °C | cycled °C | rate 1/h | depth | stored at charge | longest | of these |
            | --- | --- | --- | --- | --- | --- | --- | --- |

            """);
        foreach (var set in AgingSets.All)
        {
            var tested = set.Tested;
            text.Append(CultureInfo.InvariantCulture,
                $"| {set.Name} | {Celsius(tested.Storage)} | {Celsius(tested.Cycles)} | {Numbers(tested.RatePerHour)} | "
                + $"{Shares(tested.Depth)} | {Shares(tested.StorageCharge)} | {Longest(tested)} | {tested.Unsure} |\n");
        }

        text.Append("""

            Which speaks for a battery: `lfp` for LFP; `nmc` for NMC, NCA and a battery whose chemistry nobody knows. It alone
            gives capacity and resistance for such cells, 500 full cycles leave it near the usual rating, and of the four
            measured storage cells it is nearest by far; a battery of a few shoots a month ages mostly by standing. Its cycles
            are pessimistic for good cells. The **band** is the same history, measurements included, through `nmc`, `nca` and
            `nmc811si`; for LFP through `lfp` and through the storage of `lfp` with the cycles of `lfp-throughput`: the spread
            of published fits, no bound on what a cell may do.

            Traps:

            - `nmc` counts the charge both ways: 4.10 Ah for a full cycle of its 2.05 Ah cell. One way would halve the cycles.
            - Its V is that of its own cell. The default open-circuit table has some 50 mV more at half charge, which would be
              10 % more loss by standing.
            - Its growth by cycles is straight in N; one public program takes the root.
            - `lfp`: the growth by standing has (s - 0.5) squared, one public program has it cubed. Of the growth by cycles
              only the authors' full digits will do: the printed, rounded pair gives a fifth of it at 1C. It falls below zero
              above 1.26C, hence the upper hold.
            - `lfp-throughput` knows nothing of standing. A fit of Wang et al. 2014 on NMC with LMO is left out: with its
              printed digits a cell heals while it is cycled between 13 and 36 °C.
            - No set knows a charge below 10 °C, which plates lithium, or the knee below 80 %, after which a battery falls fast.

            """);
    }

    private static string Celsius(TestedRange<Temperature>? range) => range is { } tested
        ? Between(tested.Least.DegreesCelsius, tested.Greatest.DegreesCelsius) : "–";

    private static string Shares(TestedRange<Ratio>? range) => range is { } tested
        ? Between(tested.Least.DecimalFractions, tested.Greatest.DecimalFractions) : "–";

    private static string Numbers(TestedRange<double>? range) => range is { } tested
        ? Between(tested.Least, tested.Greatest) : "–";

    private static string Between(double least, double greatest) =>
        string.Create(CultureInfo.InvariantCulture, $"{Math.Round(least, 9):0.###} to {Math.Round(greatest, 9):0.###}");

    private static string Longest(AgingRange tested)
    {
        var parts = new List<string>();
        if (tested.LongestTime is { } time)
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"{time.Days:0} days"));
        if (tested.MostCycles is { } cycles)
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"{cycles:0} cycles"));
        return parts.Count == 0 ? "–" : string.Join(", ", parts);
    }
}
