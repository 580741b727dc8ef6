namespace RigScenarios.Cells.Aging;

/// <summary>A stretch of standing: days at a temperature while the charge goes evenly from one value to the other.</summary>
/// <param name="Days">Length, days.</param>
/// <param name="Kelvin">Temperature, K.</param>
/// <param name="From">Charge at its beginning, 0…1.</param>
/// <param name="To">Charge at its end.</param>
/// <param name="Volts">Voltage of the set's cell that is given instead of a charge, V.</param>
internal readonly record struct StandingTime(double Days, double Kelvin, double From, double To, double? Volts = null);

/// <summary>Cycles of one kind.</summary>
/// <param name="FullCycles">Full equivalent cycles.</param>
/// <param name="Condition">Temperature, mean charge, depth and rate.</param>
internal readonly record struct Cycled(double FullCycles, AgingCondition Condition);

/// <summary>What a phase exposes a battery to, in plain numbers: its standing, then its cycles.</summary>
/// <param name="Standings">All of its time.</param>
/// <param name="Cycles">All of its cycles.</param>
/// <param name="ChargingKelvin">Least temperature at which it is charged, K; null: it isn't.</param>
/// <param name="GivenVolts">Mean voltage of the cycles that is given, V.</param>
/// <param name="Day">One shooting day, where its course is given.</param>
internal sealed record Exposure(IReadOnlyList<StandingTime> Standings, IReadOnlyList<Cycled> Cycles,
    double? ChargingKelvin = null, double? GivenVolts = null, AgedDay? Day = null)
{
    /// <summary>All of its time, days.</summary>
    public double Days => Standings.Sum(one => one.Days);

    /// <summary>All of its full cycles.</summary>
    public double FullCycles => Cycles.Sum(one => one.FullCycles);

    /// <summary>The exposure of a phase; a measurement is none.</summary>
    public static Exposure Of(LifePhase phase) => phase switch
    {
        Storage storage => new([At(storage.Length.Days, storage.Temperature.Kelvins, storage.Charge.DecimalFractions)], []),
        Cycling cycling => Of(cycling),
        Shooting { Course: { } course } shooting => Of(shooting, course),
        Shooting shooting => Of(shooting),
        _ => new([], []),
    };

    private static Exposure Of(Cycling cycling)
    {
        var (days, kelvin) = (cycling.Length.Days, cycling.Temperature.Kelvins);
        var (depth, rate) = (cycling.Depth.DecimalFractions, cycling.RatePerHour);
        var volts = cycling.MeanVoltage?.Volts;
        var condition = volts is { } given
            ? AgingCondition.AtVolts(kelvin, given, depth, rate)
            : AgingCondition.AtCharge(kelvin, cycling.MeanCharge!.Value.DecimalFractions, depth, rate);
        var standing = cycling.StandsAt is { } charge
            ? At(days, kelvin, charge.DecimalFractions)
            : At(days, kelvin, condition.Charge) with { Volts = volts };
        return new([standing], [new Cycled(cycling.FullCycles, condition)], kelvin, volts);
    }

    private static Exposure Of(Shooting shooting)
    {
        var (kelvin, depth) = (shooting.ShootTemperature!.Value.Kelvins, shooting.Depth!.Value.DecimalFractions);
        var mean = 1 - (depth / 2);
        return new(
            [Shelf(shooting), At(shooting.Days * shooting.HoursOfDay.Days, kelvin, mean)],
            [new Cycled(shooting.Days * depth, AgingCondition.AtCharge(kelvin, mean, depth, shooting.RatePerHour!.Value))],
            kelvin);
    }

    private static Exposure Of(Shooting shooting, IReadOnlyList<CourseStretch> course)
    {
        var day = AgedDay.Of(course);
        var standings = course.Select(one => new StandingTime(shooting.Days * one.Length.Days, one.Temperature.Kelvins,
            one.From.DecimalFractions, one.To.DecimalFractions));
        var cycles = day.Cycles.Select(one => new Cycled(shooting.Days * one.FullCycles, AgingCondition.AtCharge(
            day.Temperature!.Value.Kelvins, one.MeanCharge.DecimalFractions, one.Depth.DecimalFractions, day.RatePerHour)));
        return new([Shelf(shooting), .. standings], [.. cycles], day.ChargingTemperature?.Kelvins, null, day);
    }

    private static StandingTime Shelf(Shooting shooting) => At(
        Math.Max(0, shooting.Length.Days - (shooting.Days * shooting.HoursOfDay.Days)),
        shooting.ShelfTemperature.Kelvins, shooting.Charge.DecimalFractions);

    private static StandingTime At(double days, double kelvin, double charge) => new(days, kelvin, charge, charge);
}
