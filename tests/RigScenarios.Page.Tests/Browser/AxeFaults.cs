using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace RigScenarios.Page.Tests.Browser;

/// <summary>What axe-core finds on pages, whatever weight it gives to it.</summary>
internal sealed class AxeFaults
{
    private readonly List<string> faults = [];
    private int pages;

    /// <summary>Looks at a page as it stands now.</summary>
    /// <param name="page">The page.</param>
    /// <param name="where">How it is named where something is found.</param>
    public async Task LookAsync(IPage page, string where)
    {
        var result = await page.RunAxe();
        // Where the rules found nothing to hold for, they were not run.
        Assert.True(result.Passes.Length >= 15, $"{where}: only {result.Passes.Length} rules were held");
        pages++;
        faults.AddRange(result.Violations.Select(violation => $"{where}: {violation.Id}, {violation.Impact} ({violation.Help}): "
            + string.Join(" | ", violation.Nodes.Take(4).Select(node => node.Html))));
    }

    /// <summary>Nothing was found, and so many pages were looked at.</summary>
    public void AssertNone(int atLeast)
    {
        Assert.True(pages >= atLeast, $"{pages} pages were looked at.");
        Assert.True(faults.Count == 0, string.Join('\n', faults));
    }
}
