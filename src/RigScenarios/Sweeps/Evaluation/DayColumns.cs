namespace RigScenarios.Sweeps.Evaluation;

/// <summary>The columns of power: how the days go.</summary>
internal static class DayColumns
{
    /// <summary>The columns, in the order of tables.</summary>
    public static IReadOnlyList<ColumnReading> All { get; } =
    [
        ColumnReading.OfDays("lasts", "", ColumnKind.YesNo,
            "Whether every essential device ran whenever it was asked for, planned swaps aside.",
            days => SweepCell.Of((bool?)days.Lasts)),
        ColumnReading.OfDays("runtime_h", "h", ColumnKind.Number,
            "From the first block to the first unplanned stop of an essential device; to the end and through the reserve if "
                + "there is none.", days => SweepCell.Of(days.Runtime)),
        ColumnReading.OfDays("ends_at_h", "h", ColumnKind.Number,
            "The moment at which the runtime ends, in hours from midnight of the first day: 17.5 is half past five in the "
                + "afternoon, 25 is one o'clock in the next night.", days => SweepCell.Of(days.EndsAt)),
        ColumnReading.OfDays("reserve_h", "h", ColumnKind.Number,
            "How long the essential devices would run on after the last block, the last day begun again; below zero: from the "
                + "first stop to the end of the last block in which it was wanted.", days => SweepCell.Of(days.Reserve)),
        ColumnReading.OfDays("reserve_is_lower_bound", "", ColumnKind.YesNo,
            "Whether they still ran after ten days, and that was given up.", days => SweepCell.Of(days.ReserveIsLowerBound)),
        ColumnReading.OfDays("stopped_by", "", ColumnKind.Text, "Why the runtime ends; empty where it was given up.",
            days => SweepCell.Of(days.StoppedBy)),
        ColumnReading.OfDays("stopped_in", "", ColumnKind.Text,
            "The block in which it stops; empty where the days are lasted.", days => SweepCell.Of(days.StoppedIn)),
        ColumnReading.OfDays("from_batteries_Wh", "Wh", ColumnKind.Number, "Energy that the rig took from the batteries.",
            days => SweepCell.Of(days.FromBatteries), ColumnNeeds.Batteries),
        ColumnReading.OfDays("energy_left_Wh", "Wh", ColumnKind.Number,
            "What is left in all batteries at the end, at their open-circuit voltage.",
            days => SweepCell.Of(days.EnergyLeft), ColumnNeeds.Batteries),
        ColumnReading.OfDays("coldest_battery_C", "°C", ColumnKind.Number, "Temperature of the battery that was coldest.",
            days => SweepCell.Of(days.Coldest), ColumnNeeds.Batteries),
    ];
}
