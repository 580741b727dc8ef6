namespace RigScenarios.Cells.Aging;

/// <summary>
/// How far a battery has aged, in plain numbers: <c>x = L^(1/p)</c> of each part and the battery's own pace. The loss is carried
/// from one condition to the next, not the time; under steady conditions x grows evenly, so a stretch of any length is one exact
/// step.
/// </summary>
/// <param name="Set">The laws.</param>
/// <param name="CalendarLoss">x of the loss by standing.</param>
/// <param name="CycleLoss">x of the loss by cycles.</param>
/// <param name="CalendarGrowth">x of the growth by standing.</param>
/// <param name="CycleGrowth">x of the growth by cycles.</param>
/// <param name="Pace">g of the losses.</param>
/// <param name="GrowthPace">g of the growths.</param>
internal readonly record struct LifeState(AgingSet Set, double CalendarLoss = 0, double CycleLoss = 0, double CalendarGrowth = 0,
    double CycleGrowth = 0, double Pace = 1, double GrowthPace = 1)
{
    /// <summary>What the model takes as the least capacity of a battery, whatever it went through.</summary>
    public const double LeastCapacity = 0.05;

    public double LossByStanding => Set.CalendarLoss?.At(CalendarLoss) ?? 0;

    public double LossByCycles => Set.CycleLoss.At(CycleLoss);

    public double? GrowthByStanding => Set.CalendarGrowth?.At(CalendarGrowth);

    public double? GrowthByCycles => Set.CycleGrowth?.At(CycleGrowth);

    /// <summary>aQ.</summary>
    public double CapacityLeft => Math.Max(LeastCapacity, 1 - LossByStanding - LossByCycles);

    /// <summary>aR: by its own laws, or by the rule where the set has none.</summary>
    public double ResistanceFactor => Set.KnowsResistance
        ? 1 + GrowthByStanding!.Value + GrowthByCycles!.Value
        : 1 + (Set.Chemistry.GrowthPerLoss.Value * (1 - CapacityLeft));

    /// <summary>The state after an exposure, so many times over.</summary>
    public LifeState After(Exposure exposure, double times = 1)
    {
        var grown = this;
        foreach (var one in exposure.Standings)
        {
            if (one.Days > 0)
                grown = grown.Stand(one, times * one.Days);
        }

        foreach (var one in exposure.Cycles)
        {
            if (one.FullCycles > 0)
                grown = grown.Cycle(one.Condition, times * one.FullCycles);
        }

        return grown;
    }

    private LifeState Stand(StandingTime one, double days) => this with
    {
        CalendarLoss = CalendarLoss + (days * Speed(Set.CalendarLoss, one, Pace)),
        CalendarGrowth = CalendarGrowth + (days * Speed(Set.CalendarGrowth, one, GrowthPace)),
    };

    private LifeState Cycle(AgingCondition condition, double cycles) => this with
    {
        CycleLoss = CycleLoss + (cycles * Set.CycleLoss.Speed(condition, Pace)),
        CycleGrowth = CycleGrowth + (cycles * (Set.CycleGrowth?.Speed(condition, GrowthPace) ?? 0)),
    };

    private static double Speed(AgingPart? part, StandingTime one, double pace) => part is null ? 0
        : one.Volts is { } volts ? part.Speed(AgingCondition.AtVolts(one.Kelvin, volts), pace)
        : part.MeanSpeed(one.Kelvin, one.From, one.To, pace);
}
