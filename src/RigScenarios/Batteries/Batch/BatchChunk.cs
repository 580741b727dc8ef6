namespace RigScenarios.Batteries.Batch;

/// <summary>Some cases of a batch that one core works off at a time, with room that is used again.</summary>
/// <param name="size">The most cases.</param>
internal sealed class BatchChunk(int size)
{
    private readonly BatchCase[] cases = new BatchCase[size];
    private readonly BatchCaseEnd[] ends = new BatchCaseEnd[size];
    private readonly int[] oneWell = new int[size];
    private readonly int[] twoWells = new int[size];
    private int count;

    /// <summary>How the cases ended.</summary>
    public ReadOnlySpan<BatchCaseEnd> Ends => ends.AsSpan(0, count);

    /// <summary>Begins anew with so many cases, which are to be filled.</summary>
    public Span<BatchCase> Begin(int number)
    {
        count = number;
        return cases.AsSpan(0, number);
    }

    /// <summary>Runs the cases to their ends.</summary>
    /// <param name="width">How many side by side.</param>
    public void Run(LaneWidth width)
    {
        var (near, far) = (0, 0);
        for (var i = 0; i < count; i++)
        {
            if (cases[i].NearShare < 1)
                twoWells[far++] = i;
            else
                oneWell[near++] = i;
        }

        Run<OneWell>(width, oneWell.AsSpan(0, near));
        Run<TwoWells>(width, twoWells.AsSpan(0, far));
    }

    private void Run<TWells>(LaneWidth width, ReadOnlySpan<int> which) where TWells : IWells
    {
        if (which.IsEmpty)
            return;
        if (width == LaneWidth.Eight)
            Run<EightLanes, TWells>(which);
        else if (width == LaneWidth.Four)
            Run<FourLanes, TWells>(which);
        else
            Run<OneLane, TWells>(which);
    }

    private void Run<T, TWells>(ReadOnlySpan<int> which) where T : unmanaged, ILanes<T> where TWells : IWells
    {
        using var runner = new LaneRunner<T, TWells>();
        runner.Run(cases, which, ends);
    }
}
