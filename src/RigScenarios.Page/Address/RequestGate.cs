using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Extensions;
using RigScenarios.Page.Requests;

namespace RigScenarios.Page.Address;

/// <summary>
/// What a request must show before anything else looks at it: that it came to this server by its own address, from someone
/// who saw the token, and, where it changes something or opens a connection, from a page of this server.
/// </summary>
internal sealed class RequestGate(OwnAddresses addresses, AccessToken token)
{
    private const string TokenField = "token";

    // The cookie has a secret of its own: the token stays in the address line's history, the cookie nowhere.
    private readonly AccessToken cookie = AccessToken.New();

    // Browsers keep cookies by host and not by port: two servers at once need two names.
    private readonly string cookieName = $"rig-{addresses.Port}";

    /// <summary>Lets a request through, sends it on without its token, or refuses it.</summary>
    /// <returns>Whether the request goes on; otherwise it is answered.</returns>
    /// <exception cref="ProblemException">It may not pass.</exception>
    public bool Lets(HttpContext context)
    {
        var request = context.Request;
        if (!(HttpMethods.IsGet(request.Method) || HttpMethods.IsPost(request.Method) || HttpMethods.IsPut(request.Method)))
            throw new ProblemException(StatusCodes.Status405MethodNotAllowed,
                $"This server doesn't know the method \"{Short(request.Method)}\".");
        var host = request.Headers.Host.ToString();
        if (!addresses.IsHost(host))
            throw new ProblemException(StatusCodes.Status403Forbidden,
                $"This server isn't called \"{Short(host)}\". Use the address that it printed when it was started.");
        if (HttpMethods.IsGet(request.Method) && request.Query.ContainsKey(TokenField))
        {
            if (!token.Is(request.Query[TokenField]))
                throw new ProblemException(StatusCodes.Status403Forbidden, NoKey);
            Welcome(context);
            return false;
        }
        if (!cookie.Is(request.Cookies[cookieName]))
            throw new ProblemException(StatusCodes.Status403Forbidden, NoKey);
        FromOwnPage(request, host);
        return true;
    }

    private const string NoKey =
        "This page opens with the address that was printed when it was started, the one with \"token=\" in it. "
        + "Each start has a new one: look in the window where \"rigscenarios open\" runs.";

    private void Welcome(HttpContext context)
    {
        context.Response.Cookies.Append(cookieName, cookie.Text,
            new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
        var rest = new QueryBuilder(context.Request.Query.Where(field => field.Key != TokenField)
            .SelectMany(field => field.Value, (field, value) => KeyValuePair.Create(field.Key, value ?? "")));
        // One slash in front: with two, a browser would take the path for the name of another server.
        var path = "/" + context.Request.Path.ToUriComponent().TrimStart('/', '\\');
        context.Response.StatusCode = StatusCodes.Status303SeeOther;
        context.Response.Headers.Location = path + rest.ToQueryString();
    }

    private void FromOwnPage(HttpRequest request, string host)
    {
        var origin = request.Headers.Origin.ToString();
        var changes = !HttpMethods.IsGet(request.Method) || IsUpgrade(request);
        if ((changes || origin.Length > 0) && !addresses.IsOrigin(origin, host))
            throw new ProblemException(StatusCodes.Status403Forbidden,
                "This was asked from a page of another site. Only pages of this server may do that.");
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        // "none" is a person who typed the address or opened a bookmark; nothing that changes comes that way.
        if (site.Length > 0 && site != "same-origin" && (changes || (request.Path.StartsWithSegments("/api") && site != "none")))
            throw new ProblemException(StatusCodes.Status403Forbidden,
                "This was asked from a page of another site. Only pages of this server may do that.");
    }

    private static bool IsUpgrade(HttpRequest request) =>
        request.Headers.Upgrade.Count > 0 || HttpMethods.IsConnect(request.Method)
        || request.Path.StartsWithSegments("/api/live") || request.Path.StartsWithSegments("/api/rig/live");

    private static string Short(string text) => text.Length <= 60 ? text : string.Concat(text.AsSpan(0, 57), "...");
}
