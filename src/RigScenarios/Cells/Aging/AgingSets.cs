namespace RigScenarios.Cells.Aging;

/// <summary>The sets of aging laws that the project has, which of them speaks for a battery, and which make its band.</summary>
public static class AgingSets
{
    /// <summary>J. Schmalstieg et al. 2014: NMC. The set for NMC, NCA and a battery whose chemistry nobody knows.</summary>
    public static AgingSet Nmc => Schmalstieg2014.Set;

    /// <summary>M. Naumann et al. 2018, 2020: LFP.</summary>
    public static AgingSet Lfp => Naumann2020.Set;

    /// <summary>J. Wang et al. 2011: LFP by the charge delivered; no aging by standing.</summary>
    public static AgingSet LfpThroughput => Wang2011.Set;

    /// <summary>A recent high-energy NCA cell, for the band.</summary>
    public static AgingSet Nca => Keil2016.Set;

    /// <summary>A recent high-energy cell of NMC811 with silicon, for the band.</summary>
    public static AgingSet Nmc811Silicon => HighNickelSilicon.Set;

    /// <summary>The storage of <see cref="Lfp"/> with the cycles of <see cref="LfpThroughput"/>, for the band of LFP.</summary>
    public static AgingSet LfpMixed { get; } = new()
    {
        Name = "lfp, cycles by throughput",
        Description = "storage as the 3 Ah cell, cycles as the 2.2 Ah cell of lithium iron phosphate",
        Chemistry = CellChemistries.Lfp,
        Source = Lfp.Source,
        Tested = LfpThroughput.Tested with { Storage = Lfp.Tested.Storage, LongestTime = Lfp.Tested.LongestTime },
        CalendarLoss = Lfp.CalendarLoss,
        CycleLoss = LfpThroughput.CycleLoss,
    };

    /// <summary>The five published sets.</summary>
    public static IReadOnlyList<AgingSet> All { get; } = [Nmc, Lfp, LfpThroughput, Nca, Nmc811Silicon];

    /// <summary>Finds a published set by its name, in capital letters or small; null if none has it.</summary>
    public static AgingSet? Find(string? name) =>
        All.FirstOrDefault(one => string.Equals(one.Name, name?.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>
    /// The set that speaks for a battery, and whether its chemistry was assumed: <see cref="Lfp"/> for LFP, else
    /// <see cref="Nmc"/>. It alone gives capacity and resistance for such cells, 78 % after 500 full cycles is near the usual
    /// rating, and of four measured storage cells it is nearest by far (docs/aging.md). For good cells its cycles are
    /// pessimistic.
    /// </summary>
    /// <param name="chemistry">"nmc", "nca", "lfp", in capital letters or small; null where nobody knows.</param>
    public static (AgingSet Set, bool Assumed) For(string? chemistry) => chemistry?.Trim().ToLowerInvariant() switch
    {
        "lfp" => (Lfp, false),
        "nmc" or "nca" => (Nmc, false),
        _ => (Nmc, true),
    };

    /// <summary>The sets whose spread is the band of a set: that of published fits, no bound on what a cell may do.</summary>
    public static IReadOnlyList<AgingSet> BandFor(AgingSet set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return set.Chemistry.Name == CellChemistries.Lfp.Name ? [Lfp, LfpMixed] : [Nmc, Nca, Nmc811Silicon];
    }
}
