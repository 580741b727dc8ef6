namespace RigScenarios.Scenarios;

/// <summary>How somebody comes to have a thing of the kit: what decides whether it costs anything.</summary>
public enum Had
{
    /// <summary>It is there already and costs nothing more.</summary>
    Owned,

    /// <summary>It is bought: its price once, and what it brings when it is sold again.</summary>
    Bought,

    /// <summary>It is rented for the days of the job.</summary>
    Rented,
}

/// <summary>Whether the prices of a scenario have value added tax in them.</summary>
public enum ValueAddedTax
{
    /// <summary>Without it.</summary>
    Net,

    /// <summary>With it.</summary>
    Gross,
}
