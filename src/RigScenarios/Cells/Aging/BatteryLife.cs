namespace RigScenarios.Cells.Aging;

/// <summary>
/// What is left of a battery after a history of storage and use, by a published set of aging laws. docs/aging.md has the
/// equations, what each set was tested on, and how far the sets are off on measured cells.
/// </summary>
public static class BatteryLife
{
    /// <summary>Follows a battery, new at first, through the phases in their order.</summary>
    /// <param name="set">The laws.</param>
    /// <param name="assumedSet">Whether the set is the default of an unknown chemistry; the warnings then say so.</param>
    /// <param name="phases">What it went through; none: it is new.</param>
    /// <param name="pattern">What goes on after them; if null, the last phase that is no measurement.</param>
    /// <exception cref="ArgumentException">A phase gives a voltage of the set's cell, and the set knows none.</exception>
    public static LifeResult After(AgingSet set, bool assumedSet, IReadOnlyList<LifePhase> phases, LifePhase? pattern = null)
    {
        ArgumentNullException.ThrowIfNull(set);
        ArgumentNullException.ThrowIfNull(phases);
        foreach (var one in pattern is null ? phases : [.. phases, pattern])
        {
            if (one is Cycling { MeanVoltage: not null } && set.Chemistry.Name == CellChemistries.Lfp.Name)
                throw new ArgumentException(
                    $"A phase gives a mean voltage, and the set '{set.Name}' knows none; accepted: a mean charge.",
                    nameof(phases));
        }

        var state = new LifeState(set);
        var (days, cycles) = (0.0, 0.0);
        var aged = new List<AgedPhase>(phases.Count);
        foreach (var phase in phases)
        {
            var warnings = new SortedSet<AgingWarning>(
                Comparer<AgingWarning>.Create((one, other) => string.CompareOrdinal(one.Name(), other.Name())));
            var exposure = Exposure.Of(phase);
            if (phase is Measured measured)
            {
                state = MeasuredLife.Take(state, measured, warnings);
            }
            else
            {
                state = state.After(exposure);
                days += exposure.Days;
                cycles += exposure.FullCycles;
                AgingOutside.Add(set, exposure, days, cycles, warnings);
            }

            if (state.CapacityLeft < LifeResult.Replaced.DecimalFractions)
                warnings.Add(AgingWarning.Knee);
            if (!set.KnowsResistance)
                warnings.Add(AgingWarning.ResistanceByRule);
            if (assumedSet)
                warnings.Add(AgingWarning.DefaultModel);
            aged.Add(AgedPhase.Of(phase, state, exposure.Day, [.. warnings]));
        }

        return new LifeResult(set, aged, state, pattern ?? phases.LastOrDefault(phase => phase is not Measured));
    }
}
