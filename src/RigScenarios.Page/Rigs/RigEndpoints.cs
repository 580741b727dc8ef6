using System.Text.Json;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using RigScenarios.Drafts;
using RigScenarios.Page.Runs;
using RigScenarios.Page.Settings;
using RigScenarios.Requests;
using RigScenarios.Requests.Rigs;
using RigScenarios.Requests.Runs;
using RigScenarios.Search.Rigs;
using UnitsNet;

namespace RigScenarios.Page.Rigs;

/// <summary>The line of the form of one's own rig; with the search for the best rig, whose solver is a program of the machine's
/// own.</summary>
internal sealed class RigEndpoints(PageRequests requests, PageSockets pages, PageLimits limits)
{
    public void Map(IEndpointRouteBuilder routes) => routes.MapGet("/api/rig/live", LiveAsync);

    private Task LiveAsync(HttpContext context) => pages.ServeAsync(context, limits.LargestJsonBytes, null, async left =>
        new Dictionary<string, Func<RunWork>>(await requests.RigLine.Queues(left), StringComparer.Ordinal)
        {
            ["best"] = () => Best,
        });

    /// <summary>The best rigs for the money that is given, in the place of this one; of a search that is stopped those that it
    /// has found so far.</summary>
    private Task Best(JsonElement json, RunReply reply, CancellationToken cancellation)
    {
        var time = limits.SearchTime;
        var question = RigForMoney.Of(RigPlaces.Given(json, requests.Places.Of(json)));
        var how = new RigSearchOptions(Duration.FromSeconds(time.TotalSeconds)) { Enough = cancellation };
        var result = RigSearch.Find(question, how, new SearchTime(reply, time), CancellationToken.None);
        if (!result.IsStopped || result.Picks.Count > 0)
            reply.Keep("best-rig", writer => BestRigJson.Write(writer, result));
        cancellation.ThrowIfCancellationRequested();
        reply.End("done", _ => { });
        return Task.CompletedTask;
    }
}
