using Microsoft.AspNetCore.Routing;
using RigScenarios.Page.OwnFiles;

namespace RigScenarios.Page.Rigs;

/// <summary>The guided form of one's own rig.</summary>
internal sealed class RigEndpoints(RigFiles files, PageLimits limits)
{
    public void Map(IEndpointRouteBuilder routes) => _ = (files, limits);
}
