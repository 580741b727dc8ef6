namespace RigScenarios.Cells.Aging;

/// <summary>What a measurement makes of the state: it holds from here on, and sets the battery's own pace where the history is
/// known.</summary>
internal static class MeasuredLife
{
    // The spread between cells of one type: a pace outside is more likely a wrong history.
    private const double LeastPace = 0.25, GreatestPace = 4;

    // Below this sum of a loss or growth, its ratio to a measurement says more about the measurement.
    private const double LeastToScale = 0.005;

    /// <summary>The state after the measurement; what has to be said of it goes to the warnings.</summary>
    public static LifeState Take(LifeState state, Measured measured, ISet<AgingWarning> warnings)
    {
        if (measured.CapacityLeft.DecimalFractions > 1)
            warnings.Add(AgingWarning.MeasuredAboveNew);
        var loss = Math.Max(0, 1 - measured.CapacityLeft.DecimalFractions);
        var predicted = state.LossByStanding + state.LossByCycles;
        return measured.HistoryKnown && predicted >= LeastToScale
            ? Scaled(state, loss / predicted, measured.ResistanceFactor, warnings)
            : Halved(state, loss, measured.ResistanceFactor, warnings);
    }

    // The parts as the history made them, all larger or smaller alike: what aged so many times as fast goes on so.
    private static LifeState Scaled(LifeState state, double ratio, double? resistance, ISet<AgingWarning> warnings)
    {
        var set = state.Set;
        var scaled = state with
        {
            CalendarLoss = set.CalendarLoss?.StateOf(ratio * state.LossByStanding) ?? 0,
            CycleLoss = set.CycleLoss.StateOf(ratio * state.LossByCycles),
            Pace = Held(state.Pace * ratio, warnings),
        };
        if (!set.KnowsResistance)
            return scaled;
        var (standing, cycles) = (state.GrowthByStanding!.Value, state.GrowthByCycles!.Value);
        if (resistance is { } factor && standing + cycles < LeastToScale)
            return Grown(scaled, factor - 1);
        var own = resistance is { } known ? Math.Max(0, known - 1) / (standing + cycles) : ratio;
        return scaled with
        {
            CalendarGrowth = set.CalendarGrowth!.StateOf(own * standing),
            CycleGrowth = set.CycleGrowth!.StateOf(own * cycles),
            GrowthPace = Held(state.GrowthPace * own, warnings),
        };
    }

    // Nobody knows which part made the loss: half by each.
    private static LifeState Halved(LifeState state, double loss, double? resistance, ISet<AgingWarning> warnings)
    {
        var set = state.Set;
        var byStanding = set.KnowsStorage ? loss / 2 : 0;
        var halved = state with
        {
            CalendarLoss = set.CalendarLoss?.StateOf(byStanding) ?? 0,
            CycleLoss = set.CycleLoss.StateOf(loss - byStanding),
            Pace = 1,
        };
        if (!set.KnowsResistance)
            return halved;
        if (resistance is { } factor)
            return Grown(halved, factor - 1);
        warnings.Add(AgingWarning.ResistanceByRule);
        return Grown(halved, set.Chemistry.GrowthPerLoss.Value * loss);
    }

    private static LifeState Grown(LifeState state, double growth) => state with
    {
        CalendarGrowth = state.Set.CalendarGrowth!.StateOf(Math.Max(0, growth) / 2),
        CycleGrowth = state.Set.CycleGrowth!.StateOf(Math.Max(0, growth) / 2),
        GrowthPace = 1,
    };

    private static double Held(double pace, ISet<AgingWarning> warnings)
    {
        if (pace is < LeastPace or > GreatestPace)
            warnings.Add(AgingWarning.PaceLimited);
        return Math.Clamp(pace, LeastPace, GreatestPace);
    }
}
