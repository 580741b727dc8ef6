using RigScenarios.Cells;
using UnitsNet;

namespace RigScenarios.Travel;

/// <summary>What an edition of the rules says of rechargeable lithium batteries that a passenger or crew member carries for
/// personal use.</summary>
public sealed record PassengerRules
{
    /// <summary>Up to and including this a battery needs no approval by the airline.</summary>
    public required Sourced<Energy> WithoutApproval { get; init; }

    /// <summary>Up to and including this a battery may be carried with the airline's approval; above it in no baggage at
    /// all.</summary>
    public required Sourced<Energy> WithApproval { get; init; }

    /// <summary>Most spare batteries a person of any kind together: those above <see cref="WithoutApproval"/>, power banks and
    /// dry cells among them; unless the airline agrees to more.</summary>
    public required Sourced<int> Spares { get; init; }

    /// <summary>Most of them above <see cref="WithoutApproval"/>.</summary>
    public required Sourced<int> LargeSpares { get; init; }

    /// <summary>Most devices with a battery in them a person, unless the airline agrees to more.</summary>
    public required Sourced<int> Devices { get; init; }

    /// <summary>Most of them that are power banks; null in editions that set no number for these alone.</summary>
    public Sourced<int>? PowerBanks { get; init; }

    /// <summary>Each spare battery's contacts are covered.</summary>
    public required Sourced<string> Contacts { get; init; }

    /// <summary>Where spare batteries travel.</summary>
    public required Sourced<string> SparesPlace { get; init; }

    /// <summary>Where a device with its battery in it travels.</summary>
    public required Sourced<string> DevicesPlace { get; init; }

    /// <summary>What an airline may take for a power bank, with the words of one.</summary>
    public required Sourced<string> Outlets { get; init; }

    /// <summary>What else a traveller must do, each with its source.</summary>
    public required IReadOnlyList<Sourced<string>> Conduct { get; init; }
}
