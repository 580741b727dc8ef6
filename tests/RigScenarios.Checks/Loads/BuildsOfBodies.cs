using RigScenarios.Balance;
using RigScenarios.Builds;
using RigScenarios.Parts;
using UnitsNet;

namespace RigScenarios.Checks.Loads;

/// <summary>Builds of bodies without size, for worked examples of what carries what.</summary>
internal static class BuildsOfBodies
{
    /// <summary>A body of a mass whose centre lies some way ahead of where it is held.</summary>
    public static Part Body(PartKind kind, Mass mass, Length centreAhead, Mass? rated = null) => new()
    {
        Kind = kind,
        Mass = mass,
        HeldAt = MountingFace.Middle,
        Centre = new(centreAhead, Length.Zero, Length.Zero),
        RatedLoad = rated,
    };

    /// <summary>The mass with a weight in a book that takes g = 9.8 m/s² or gives newtons.</summary>
    public static Mass Weighing(double newtons) => Mass.FromKilograms(newtons / 9.80665);

    /// <summary>A build on a tripod; each thing sits on another, or on the head, so far ahead of it.</summary>
    public static BuildInPlace Of(params (string Name, Part Part, string? On, Length Ahead)[] things) => BuildInPlace.Of(
        new Build
        {
            Carries = [.. things.Select(thing => thing.Name)],
            Places = new(things.Select(thing => KeyValuePair.Create(thing.Name,
                new PlaceInUse { On = thing.On, Forward = thing.Ahead }))),
        },
        name => things.FirstOrDefault(thing => thing.Name == name).Part);
}
