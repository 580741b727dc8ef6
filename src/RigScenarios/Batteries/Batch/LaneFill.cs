namespace RigScenarios.Batteries.Batch;

/// <summary>Puts a case into a lane.</summary>
/// <typeparam name="T">The lanes.</typeparam>
/// <typeparam name="TWells">One well or two.</typeparam>
internal static class LaneFill<T, TWells> where T : unmanaged, ILanes<T> where TWells : IWells
{
    // Two time constants closer to each other than this part are taken as so far apart: their difference is divided by.
    private const double LeastDistance = 2e-4;

    /// <summary>The pack, the air and the limits.</summary>
    public static void Pack(ref LanePack<T> pack, int lane, in BatchCase one)
    {
        Lane.Set(ref pack.Tables, lane, BitConverter.Int64BitsToDouble(one.Curves.Address));
        Lane.Set(ref pack.TableCells, lane, one.Curves.Cells);
        Lane.Set(ref pack.LastCell, lane, one.Curves.Cells - 1);
        Lane.Set(ref pack.ColdestUsable, lane, one.Curves.ColdestUsable);
        Lane.Set(ref pack.Groups, lane, one.Groups);
        Lane.Set(ref pack.UnitsPerCharge, lane, 1 / one.ChargePerUnit);
        Lane.Set(ref pack.GroupResistance0, lane, one.Groups * one.Resistance0);
        Lane.Set(ref pack.Resistance1, lane, one.Resistance1);
        Lane.Set(ref pack.Resistance2, lane, one.Resistance2);
        Lane.Set(ref pack.LeadResistance, lane, one.LeadResistance);
        Lane.Set(ref pack.ActivationTemperature, lane, one.ActivationTemperature);
        Lane.Set(ref pack.ActivationShift, lane, -one.ActivationTemperature / PackParameters.ReferenceTemperature);
        Lane.Set(ref pack.Floor, lane, one.ResistanceFloor);
        Times(ref pack, lane, one);
        Lane.Set(ref pack.AmbientKelvin, lane, one.AmbientKelvin);
        Lane.Set(ref pack.CutoffVoltage, lane, one.CutoffVoltage);
        Lane.Set(ref pack.MaximumCurrent, lane, one.MaximumCurrent);
        Lane.Set(ref pack.MaximumKelvin, lane, one.MaximumKelvin);
        Lane.Set(ref pack.StartCharge, lane, one.Charge);
        if (!TWells.HasFar)
            return;
        Lane.Set(ref pack.LagPerCharge, lane, (1 - one.NearShare) / one.NearShare);
        Lane.Set(ref pack.FarPerLag, lane, one.NearShare / (1 - one.NearShare));
        Lane.Set(ref pack.ExchangeTemperature, lane, one.ExchangeActivationTemperature);
        Lane.Set(ref pack.ExchangeLogarithm, lane,
            (one.ExchangeActivationTemperature / PackParameters.ReferenceTemperature) - Math.Log(one.ExchangeTime));
        Lane.Set(ref pack.MixingCharge, lane, one.Groups * one.ChargePerUnit * one.NearShare);
    }

    /// <summary>The hinges of the usable capacity.</summary>
    public static void Hinges(Span<LaneHinge<T>> hinges, int lane, BatchCurves curves)
    {
        for (var i = 0; i < hinges.Length; i++)
        {
            var hinge = i < curves.Hinges.Length ? curves.Hinges[i] : default;
            Lane.Set(ref hinges[i].From, lane, hinge.From);
            Lane.Set(ref hinges[i].Width, lane, hinge.Width);
            Lane.Set(ref hinges[i].Slope, lane, hinge.Slope);
        }
    }

    /// <summary>The state at the start.</summary>
    public static void Start(ref LaneBlock<T> block, int lane, in BatchCase one)
    {
        ref var state = ref block.State;
        Lane.Set(ref state.Charge, lane, one.Charge);
        Lane.Set(ref state.Voltage1, lane, one.Voltage1);
        Lane.Set(ref state.Voltage2, lane, one.Voltage2);
        Lane.Set(ref state.Kelvin, lane, one.Kelvin);
        Lane.Set(ref state.Lag, lane, TWells.HasFar ? one.Lag : 0);
        Lane.Set(ref block.Delivered, lane, 0);
        Lane.Set(ref block.LowestKelvin, lane, one.Kelvin);
        Lane.Set(ref block.Grazed, lane, double.PositiveInfinity);
    }

    private static void Times(ref LanePack<T> pack, int lane, in BatchCase one)
    {
        var first = one.TimeConstant1;
        var rate1 = 1 / first;
        var rate2 = Apart(1 / one.TimeConstant2, rate1);
        var cooling = one.HeatConductance / one.HeatCapacity;
        Lane.Set(ref pack.TimeConstant1, lane, first);
        Lane.Set(ref pack.Rate1, lane, rate1);
        Lane.Set(ref pack.Rate2, lane, rate2);
        Lane.Set(ref pack.CoolingRate, lane, cooling);
        Lane.Set(ref pack.KelvinPerJoule, lane, 1 / one.HeatCapacity);
        Lane.Set(ref pack.QuickOn2, lane, rate2 / (rate2 - rate1));
        Lane.Set(ref pack.QuickOnHeat, lane, 1 / one.HeatCapacity / (Apart(cooling, rate1) - rate1));
    }

    private static double Apart(double rate, double other) =>
        Math.Abs(rate - other) < LeastDistance * other ? other * (1 + LeastDistance) : rate;
}
