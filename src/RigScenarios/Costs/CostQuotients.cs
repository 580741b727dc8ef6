using UnitsNet;

namespace RigScenarios.Costs;

/// <summary>What a shooting day, a delivered kilowatt-hour and an hour of reserve cost over the years that are looked at: plain
/// quotients of the cost over the years. Null where a figure is missing or what it would be shared over is nothing.</summary>
/// <param name="PerShootingDay">All of the cost over all shooting days of the years.</param>
/// <param name="PerKilowattHour">The cost of owning the batteries over the energy that they give the rig on those days; the wear
/// of one battery over its whole life is told where batteries grow old.</param>
/// <param name="PerHourOfReserve">The cost of the batteries over the hours that the rig would run on after wrap.</param>
public sealed record CostQuotients(decimal? PerShootingDay, decimal? PerKilowattHour, decimal? PerHourOfReserve)
{
    /// <summary>The quotients.</summary>
    /// <param name="cost">The cost over the years.</param>
    /// <param name="perDay">Energy from the batteries on one shooting day; 0 or more.</param>
    /// <param name="reserve">How long the rig would run on after the last block; below 0 where the days are not reached.</param>
    public static CostQuotients Of(YearsCost cost, Energy perDay, Duration reserve)
    {
        ArgumentNullException.ThrowIfNull(cost);
        var days = (decimal)cost.DaysPerYear * cost.Terms.Years;
        return new(Over(cost.Total, days), Over(cost.Batteries, days * (decimal)perDay.KilowattHours),
            Over(cost.Batteries, (decimal)reserve.Hours));
    }

    private static decimal? Over(decimal cost, decimal by) => by > 0 ? cost / by : null;
}
