using System.Text;

namespace RigScenarios.Benchmarks.AgedCells;

/// <summary>The beginning of docs/aging.md: what is computed, and how words and days become phases.</summary>
internal static class LawsSection
{
    public static void Write(StringBuilder text) => text.Append("""
        # Aging

        Made by `dotnet run -c Release --project tests/RigScenarios.Benchmarks -- aged-cells DATA docs/aging.md`, where DATA
        is the folder with the measured cells (last section); change the model or the command, not this page. A test fails
        where the two differ.

        What is left of a battery after a history of storage and use: its capacity `aQ` and its resistance `aR`, both over
        those of the new battery, as docs/discharge.md takes them. Code: `src/RigScenarios/Cells/Aging`.

        Nobody can say this well of a battery that was never measured. Published fits differ by a factor of four, and cells of one
        type by as much as their users' habits. So every forecast carries the band of the fits, and the errors on measured cells
        (last section). **A measured capacity outweighs any set**: run the battery down once at a known load, and enter what it
        gave.

        ## Equations

        Up to four parts, each with its own law `L = a·u^p`: loss by standing Lc and growth Gc over days, loss by cycles Ly and
        growth Gy over full cycles (one full discharge and one full charge). a depends on the conditions, p never does.

            aQ = max(0.05, 1 - Lc - Ly)        aR = 1 + Gc + Gy
            x = L^(1/p),   dx = (g·a)^(1/p)·du            g: the battery's own pace, 1 unless measured

        - The loss is carried from one condition to the next, not the time. Under steady conditions x grows evenly: a stretch
          of any length is one exact step, may be cut anywhere, and the order of stretches does not matter to the end. There
          is no step size to choose. A mean temperature for a changing one would be wrong (a is convex): each gets a stretch
          of its own.
        - Where the charge goes evenly from one value to another, x takes the integral over it (five-point Gauss-Legendre between
          the knots of the voltage table).
        - Standing ages a battery all the time, also while it works, at the charge and temperature of the moment; cycles add
          to it. No part acts on another.
        - `aQ` and `aR` stay as they are through one scenario; its days are added after it.

        ## What a shooting day contributes

        The day's course of charge, from leaving the shelf to lying there again, in stretches with a length, a charge at both ends
        and a temperature. Its cycles come from rainflow counting (three points, ASTM E1049): each with its depth, its mean charge
        and a count of 1 or 0.5. For all of them: the rate is the charge that fell per hour of falling, the temperature the mean
        over the changes of charge; the charging temperature is the least of a stretch in which it rises. A day of which only the
        depth d is known is one cycle from full: mean charge 1 - d/2, ten hours, 20 °C. The rest of the time is storage.

        A month is 30.4375 days; "bought March 2023" is the 15th. The words stand for (the project's choice):

        | kept | charge | place | °C | emptied | depth |
        | --- | --- | --- | --- | --- | --- |
        | full | 1 | fridge | 8 | a little | 0.2 |
        | half | 0.5 | room | 20 | half | 0.5 |
        | as it came back | 1 - depth | warm store | 30 | mostly | 0.8 |
        | | | hot van (all the time) | 45 | to the end | 1 |

        ## What was measured

        - A measured capacity m over a known history scales all four parts by the same factor, so that `aQ = m`. The battery
          goes on at that pace, held within a quarter and four times that of the set: the spread between cells. A measured
          resistance scales the growths by a factor of its own.
        - Second-hand, or with less than half a point of loss to scale: the measured loss is taken half by standing, half by
          cycles; the growth is the measured one or follows from the loss (below); the pace is that of the set.
        - A capacity measured by a run is known to two points; below four points of loss the pace is hardly known.
        - Where no law of its own says how the resistance grows, it follows from the capacity: `aR = 1 + k·(1 - aQ)`.
          docs/discharge.md, "Age", has k, where it comes from, and how far cells lie from it.

        """);
}
