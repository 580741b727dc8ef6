using RigScenarios.Batteries;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Tests.Batteries;

/// <summary>Invented packs and demands for the tests of this folder.</summary>
internal static class Packs
{
    public static Battery Label { get; } = new()
    {
        Energy = Energy.FromWattHours(98),
        Voltage = ElectricPotential.FromVolts(14.4),
    };

    public static Pack Default { get; } = PackModel.From(Label, null, null, null).Pack;

    public static DemandSegment Watts(double seconds, double watts) =>
        new(Duration.FromSeconds(seconds), Power.FromWatts(watts), ElectricCurrent.Zero, ElectricConductance.Zero);

    public static DischargeResult Run(this Pack pack, double celsius, Demand demand, DischargeStart? start = null,
        DischargeOptions? options = null) =>
        Discharge.Run(
            pack, Temperature.FromDegreesCelsius(celsius), start ?? DischargeStart.Full, demand,
            options ?? DischargeOptions.Default,
            TestContext.Current.CancellationToken);

    public static Demand Takes { get; } = new([Watts(600, 22), Watts(120, 60), Watts(300, 5), Watts(180, 45)]);
}
