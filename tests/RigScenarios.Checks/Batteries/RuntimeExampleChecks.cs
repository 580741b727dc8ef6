using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Batteries;

/// <summary>Times that makers print, from no more than what a label says.</summary>
public class RuntimeExampleChecks
{
    // "The camera draws approximately 60 watts … a 90 Wh battery will run the camera and accessories for about 90 minutes, a
    // 30 Wh battery for about 30 minutes." Energy over power; the project takes off what stays behind and what warms the
    // cells, most of the small battery at twice its capacity in an hour. Its voltage is taken as 14.4 V.
    [Theory]
    [Source(SourceKind.DataSheet,
        "operation manual of a 4K cinema camera, section power consumption, quoted on a user's page; second-hand")]
    [InlineData(90, 90, -2.4)]
    [InlineData(30, 30, -7.0)]
    public void A_60_W_camera_runs_as_long_as_its_manual_says_less_what_is_stated(double wattHours,
        double minutes, double percent)
    {
        var battery = new Battery
        {
            Energy = Energy.FromWattHours(wattHours),
            Voltage = ElectricPotential.FromVolts(14.4),
            Chemistry = "nmc",
            MaximumCurrent = ElectricCurrent.FromAmperes(10),
        };

        var run = Discharge.Run(PackModel.From(battery, null, null, Age.New).Pack, Temperature.FromDegreesCelsius(20),
            DischargeStart.Full, Demand.OfPower(Power.FromWatts(60)), new DischargeOptions { SeriesPoints = 0 },
            TestContext.Current.CancellationToken);

        StatedError.Holds(run.EndTime.Minutes, minutes, percent, 0.3);
    }

    // A label counts rated capacity times nominal voltage, rated at a fifth of the capacity in an hour and 20 °C: so under that
    // load a new battery should give what its label says, within the leads' loss.
    [Theory]
    [Source(SourceKind.FromMemory,
        "IEC 61960-3:2017, rated capacity: 0.2 It A at 20 °C; energy of a label: rated capacity times nominal "
        + "voltage")]
    [InlineData("nmc", 98, 14.4, -0.6)]
    [InlineData("nmc", 190, 14.4, -0.7)]
    [InlineData("lfp", 90, 12.8, -1.7)]
    public void A_battery_gives_the_energy_of_its_label_and_what_is_stated(string chemistry, double wattHours, double volts,
        double percent)
    {
        var battery = new Battery
        {
            Energy = Energy.FromWattHours(wattHours),
            Voltage = ElectricPotential.FromVolts(volts),
            Chemistry = chemistry,
        };

        var run = Discharge.Run(PackModel.From(battery, null, null, Age.New).Pack, Temperature.FromDegreesCelsius(20),
            DischargeStart.Full, Demand.OfCurrent(ElectricCurrent.FromAmperes(0.2 * wattHours / volts)),
            new DischargeOptions { SeriesPoints = 0 }, TestContext.Current.CancellationToken);

        StatedError.Holds(run.Energies.Delivered.WattHours, wattHours, percent, 0.3);
    }

    // 4 A to 4.2 V until 100 mA: 60 min. Whole minutes, and of a maker who rounds: one point.
    [Fact]
    [Source(SourceKind.DataSheet,
        "specification of cell INR18650-25R, 3.4 rapid charge and its time, as annotated in a public data set; "
        + "second-hand")]
    public void A_rapid_charge_takes_as_long_as_the_sheet_says_less_what_is_stated()
    {
        var cell = PackModel.From(
            new Battery
            {
                Energy = Energy.FromWattHours(9),
                Voltage = ElectricPotential.FromVolts(3.6),
                Chemistry = "nmc",
                LeadResistance = ElectricResistance.Zero,
            },
            Mass.FromGrams(45),
            new BoxSize(Length.FromMillimeters(18.33), Length.FromMillimeters(18.33), Length.FromMillimeters(64.85)),
            Age.New).Pack;
        var setting = new ChargeSetting(ElectricCurrent.FromAmperes(4))
        {
            Termination = ElectricCurrent.FromMilliamperes(100),
            Highest = Temperature.FromDegreesCelsius(60),
        };

        var charge = ChargeRun.Run(cell, Temperature.FromDegreesCelsius(25),
            new DischargeStart { StateOfCharge = Ratio.Zero }, setting, TestContext.Current.CancellationToken);

        Assert.Equal(ChargeEnd.Full, charge.End);
        StatedError.Holds(charge.EndTime.Minutes, 60, -6.7, 1);
    }

    // At least 30 % at -20 °C and 0.2 C, at least 70 % at 20 °C and 1C, both of the charge at 20 °C and 0.2 C.
    [Theory]
    [Source(SourceKind.FromMemory, "IEC 61960-3:2017, discharge performance of cells")]
    [InlineData(-20, 0.2, 0.30)]
    [InlineData(20, 1, 0.70)]
    public void A_cell_gives_what_the_standard_asks_of_any(double celsius, double rate, double part)
    {
        Assert.InRange(AmpereHours(celsius, rate) / AmpereHours(20, 0.2), part, 1);

        static double AmpereHours(double celsius, double rate) => Discharge.Run(
            MeasuredCell.Model.Cell(), Temperature.FromDegreesCelsius(celsius), DischargeStart.Full,
            Demand.OfCurrent(ElectricCurrent.FromAmperes(rate * MeasuredCell.Model.CapacityAmpereHours)),
            new DischargeOptions { SeriesPoints = 0 }).Energies.ChargeDrawn.AmpereHours;
    }
}
