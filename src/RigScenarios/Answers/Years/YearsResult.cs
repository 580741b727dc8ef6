using RigScenarios.Batteries;
using RigScenarios.Cells;
using RigScenarios.Cells.Aging;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Answers.Years;

/// <summary>A day by the three lines of a band. Null where it does not come within 40 years.</summary>
/// <param name="Middle">By the set that speaks for the battery.</param>
/// <param name="Earliest">The earliest of the published fits.</param>
/// <param name="Latest">The latest of the published fits.</param>
public sealed record DateBand(DateOnly? Middle, DateOnly? Earliest, DateOnly? Latest);

/// <summary>The planned days on one date.</summary>
/// <param name="Date">The date.</param>
/// <param name="Years">Years from now.</param>
/// <param name="Days">In the air of the plan, by the set that speaks for each battery.</param>
/// <param name="Least">The same with the least capacity left of the published fits.</param>
/// <param name="Greatest">The same with the most.</param>
/// <param name="Cold">In the cold; null where the planned days are as cold already.</param>
/// <param name="ColdLeast">In the cold, with the least.</param>
/// <param name="ColdGreatest">In the cold, with the most.</param>
public sealed record DaysOnDate(DateOnly Date, double Years, DayFigures Days, DayFigures Least, DayFigures Greatest,
    DayFigures? Cold, DayFigures? ColdLeast, DayFigures? ColdGreatest);

/// <summary>A battery's age on one date.</summary>
/// <param name="Date">The date.</param>
/// <param name="Years">Years from now.</param>
/// <param name="Age">By the set that speaks for it.</param>
/// <param name="Least">With the least capacity left of the published fits.</param>
/// <param name="Greatest">With the most.</param>
public sealed record AgeOnDate(DateOnly Date, double Years, Age Age, Age Least, Age Greatest);

/// <summary>Why a battery is to be replaced.</summary>
public enum ReplaceCause
{
    /// <summary>Only 80 % of the capacity is left: the usual convention, for the fits know no sudden fall.</summary>
    Capacity,

    /// <summary>The planned days no longer last.</summary>
    Days,
}

/// <summary>When a battery is to be replaced: the earlier of two dates.</summary>
/// <param name="Date">The date; its middle null where neither comes within 40 years.</param>
/// <param name="Cause">Which of the two comes first by the middle line; null where neither comes.</param>
public sealed record Replacement(DateBand Date, ReplaceCause? Cause);

/// <summary>The wear of a battery: the price of a new one spread over its life. What owning all batteries over some years comes
/// to, with resale and the next ones, is <see cref="Costs.CostQuotients"/>.</summary>
/// <param name="Price">What a new one costs by its parts file; null where no price is known.</param>
/// <param name="ShootingDays">Shooting days of its life.</param>
/// <param name="Delivered">Energy that it delivers on them.</param>
/// <param name="PerShootingDay">Price over the shooting days; null where either is not known.</param>
/// <param name="PerKilowattHour">Price over the energy.</param>
public sealed record BatteryCost(
    Money? Price, double? ShootingDays, Energy? Delivered, Money? PerShootingDay, Money? PerKilowattHour);

/// <summary>One battery over the years.</summary>
public sealed record BatteryOutlook
{
    /// <summary>Its short name.</summary>
    public required string Name { get; init; }

    /// <summary>Its name for people.</summary>
    public required string Title { get; init; }

    /// <summary>What is known of its age.</summary>
    public required KnownAge Known { get; init; }

    /// <summary>How it is kept and used from now on; what is left open in it is taken as usual.</summary>
    public required LifeInWords Use { get; init; }

    /// <summary>Whether each shoot to come is the planned day; false where so many of them don't fit into a month, so that the
    /// words stand for it.</summary>
    public required bool DaysAsPlanned { get; init; }

    /// <summary>Its age now, with the ends of the band.</summary>
    public AgeOnDate Now => Ages[0];

    /// <summary>Its age month by month, the first now.</summary>
    public required IReadOnlyList<AgeOnDate> Ages { get; init; }

    /// <summary>When 80 % of the capacity is left.</summary>
    public required DateBand Eighty { get; init; }

    /// <summary>When it is to be replaced.</summary>
    public required Replacement Replace { get; init; }

    /// <summary>What it costs until then.</summary>
    public required BatteryCost Cost { get; init; }

    /// <summary>What its figures rest on that is not as it should be.</summary>
    public required IReadOnlyList<AgingWarning> Warnings { get; init; }
}

/// <summary>One way to keep the batteries, run like the others.</summary>
/// <param name="Kept">At which charge.</param>
/// <param name="Place">Where.</param>
/// <param name="IsAsNow">Whether it is the way of now.</param>
/// <param name="After">What is left of the battery, and how the planned days go, after 1, 3 and 5 years.</param>
/// <param name="Eighty">When 80 % of the capacity is left; null beyond 40 years.</param>
/// <param name="LastDay">The first day on which the planned days no longer last; null beyond 40 years.</param>
public sealed record StorageCase(Kept Kept, StoragePlace Place, bool IsAsNow, IReadOnlyList<StorageYear> After,
    DateOnly? Eighty, DateOnly? LastDay);

/// <summary>What a way to keep the batteries leaves after some years.</summary>
/// <param name="Years">How many.</param>
/// <param name="Age">The battery's age.</param>
/// <param name="Days">The planned days with it.</param>
public sealed record StorageYear(int Years, Age Age, DayFigures Days);

/// <summary>The years ahead of the batteries of one build and its days.</summary>
public sealed record YearsResult
{
    /// <summary>The answer of today.</summary>
    public required RigAnswer Now { get; init; }

    /// <summary>What was asked.</summary>
    public required YearsQuestion Question { get; init; }

    /// <summary>The day from which on it is told.</summary>
    public required DateOnly From { get; init; }

    /// <summary>The planned days over the years, the first now.</summary>
    public required IReadOnlyList<DaysOnDate> Days { get; init; }

    /// <summary>The planned days if every battery were new.</summary>
    public required DayFigures New { get; init; }

    /// <summary>Whether they last with new batteries: else no age is to blame, and no date is told.</summary>
    public bool LastsWhenNew => New.Lasts(Now.Options.Wish);

    /// <summary>When the planned days no longer last with all batteries growing older together.</summary>
    public required DateBand LastDay { get; init; }

    /// <summary>Each battery.</summary>
    public required IReadOnlyList<BatteryOutlook> Batteries { get; init; }

    /// <summary>Ways to keep all of them, the one that leaves most first; the figures of age are those of the battery that was
    /// asked about.</summary>
    public required IReadOnlyList<StorageCase> Storage { get; init; }

    /// <summary>How many days were run.</summary>
    public required int Runs { get; init; }
}
