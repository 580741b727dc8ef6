using System.Text.Json.Nodes;
using RigScenarios.Batteries;
using UnitsNet;

namespace RigScenarios.Benchmarks.Cases;

/// <summary>How a discharge ended, every figure with all its digits.</summary>
internal static class DischargeAnswer
{
    public static JsonObject Of(DischargeCase one, Duration timeLimit)
    {
        var result = Discharge.Run(one.Pack, one.Ambient, one.Start, one.Demand,
            new DischargeOptions { TimeLimit = timeLimit, SeriesPoints = 0 });
        return new()
        {
            ["id"] = one.Id,
            ["t_end_s"] = result.EndTime.Seconds,
            ["cause"] = result.Cause.InWords(),
            ["at_step"] = result.AtStep,
            ["segments"] = result.SegmentsFinished,
            ["z_end"] = result.EndStateOfCharge.DecimalFractions,
            ["zn_end"] = result.EndNearCharge.DecimalFractions,
            ["T_end_K"] = result.EndTemperature.Kelvins,
            ["V_end"] = result.EndVoltage?.Volts,
            ["chemical_J"] = result.Energies.Chemical.Joules,
        };
    }
}
