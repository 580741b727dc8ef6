namespace RigScenarios.Search.Upgrades;

/// <summary>What can be owned, what it costs and brings, and what a kit is good for, as a search for an upgrade path sees
/// it.</summary>
/// <remarks>Every member is called from several threads at once and gives the same answer for the same question.</remarks>
public interface IUpgradeModel
{
    /// <summary>The names of the things that matter: owned already or to be had. At least one, at most 60.</summary>
    IReadOnlyList<string> Things { get; }

    /// <summary>What is owned now, by its place in <see cref="Things"/>.</summary>
    IReadOnlyList<int> Owned { get; }

    /// <summary>What a thing costs in a year, zero or more; null where it is not to be had, or nobody knows its price.</summary>
    /// <param name="thing">The thing, from 0.</param>
    /// <param name="year">The year, from 0.</param>
    decimal? Price(int thing, int year);

    /// <summary>What a thing brings that is sold in a year, zero or more; null where it is kept. It depends on the year and not
    /// on when the thing was bought.</summary>
    /// <param name="thing">The thing, from 0.</param>
    /// <param name="year">The year, from 0.</param>
    decimal? Resale(int thing, int year);

    /// <summary>What a kit is good for.</summary>
    /// <param name="owned">The things, by their places, rising.</param>
    /// <param name="cancellation">Stops the work.</param>
    UpgradeState Look(IReadOnlyList<int> owned, CancellationToken cancellation);
}

/// <summary>What a kit is good for.</summary>
/// <param name="IsFeasible">Whether everything that must hold holds; null where that is not known, which counts as not.</param>
/// <param name="Goal">The figure that shall be small; where it is no number the kit counts as not feasible.</param>
public sealed record UpgradeState(bool? IsFeasible, double Goal)
{
    internal bool Counts => IsFeasible is true && !double.IsNaN(Goal);
}
