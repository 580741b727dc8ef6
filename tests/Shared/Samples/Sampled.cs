using CsCheck;

namespace RigScenarios.Tests.Shared;

/// <summary>
/// Properties on cases that CsCheck draws. A red case is made smaller by CsCheck, and both are told with the seed that begins at
/// it.
/// </summary>
internal static class Sampled
{
    // Of no meaning: any start does.
    private const ulong FixedSeed = 20_260_301;

    /// <summary>The check passes on every one of so many cases.</summary>
    public static void Holds<T>(this Gen<T> gen, Action<T> check, int cases = 100)
    {
        var chance = Seeds.Wanted is { } wanted ? PCG.Parse(wanted) : Seeds.AreFixed ? new PCG(1, FixedSeed) : new PCG(1);
        for (var i = 0; i < cases; i++)
        {
            var seed = chance.ToString(chance.State);
            var value = gen.Generate(chance, null, out _);
            try
            {
                check(value);
            }
            catch (Exception error) when (error is not OperationCanceledException)
            {
                throw new InvalidOperationException(
                    $"Case {i + 1} of {cases}, seed {seed} ({Seeds.Variable}={seed} begins at it): {error.Message}\n{value}\n"
                        + Smaller(gen, check, seed), error);
            }
        }
    }

    /// <summary>What is stated is true of every one of so many cases.</summary>
    public static void Holds<T>(this Gen<T> gen, Func<T, bool> isTrue, int cases = 100) =>
        gen.Holds(one => Assert.True(isTrue(one), "What the test states is not true here."), cases);

    /// <summary>The check passes, and says of at least so many cases that they were really looked at.</summary>
    public static void Holds<T>(this Gen<T> gen, Action<T, LookedAt> check, int cases, int atLeast)
    {
        var looked = new LookedAt();
        gen.Holds(one => check(one, looked), cases);
        looked.AtLeast(atLeast);
    }

    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> check, int cases = 100) =>
        gen.Holds(one => check(one.Item1, one.Item2), cases);

    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2, LookedAt> check, int cases, int atLeast) =>
        gen.Holds((one, looked) => check(one.Item1, one.Item2, looked), cases, atLeast);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> check, int cases = 100) =>
        gen.Holds(one => check(one.Item1, one.Item2, one.Item3), cases);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> isTrue, int cases = 100) =>
        gen.Holds(one => isTrue(one.Item1, one.Item2, one.Item3), cases);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3, LookedAt> check,
        int cases, int atLeast) =>
        gen.Holds((one, looked) => check(one.Item1, one.Item2, one.Item3, looked), cases, atLeast);

    public static void Holds<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4> check, int cases = 100) =>
        gen.Holds(one => check(one.Item1, one.Item2, one.Item3, one.Item4), cases);

    public static void Holds<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Action<T1, T2, T3, T4, LookedAt> check, int cases,
        int atLeast) =>
        gen.Holds((one, looked) => check(one.Item1, one.Item2, one.Item3, one.Item4, looked), cases, atLeast);

    public static void Holds<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Action<T1, T2, T3, T4, T5> check,
        int cases = 100) =>
        gen.Holds(one => check(one.Item1, one.Item2, one.Item3, one.Item4, one.Item5), cases);

    private static string Smaller<T>(Gen<T> gen, Action<T> check, string seed)
    {
        try
        {
            gen.Sample(check, seed: seed, iter: 500, threads: 1);
            return "It did not fail again.";
        }
        catch (CsCheckException smaller)
        {
            return smaller.Message;
        }
    }
}
