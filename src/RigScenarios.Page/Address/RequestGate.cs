using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.Extensions;
using RigScenarios.Requests.Messages;

namespace RigScenarios.Page.Address;

/// <summary>
/// What a request must show before anything else looks at it: that it came to this server by its own address, from someone
/// who saw the key, and, where it changes something or opens a connection, from a page of this server.
/// </summary>
/// <remarks>
/// Browsers send a cookie to every port of a host: a server of somebody else on this machine gets it from whoever visits that
/// server's pages. So the cookie alone opens only the empty pages; whatever they ask for needs the page's key besides, which
/// lies where a browser shows it to pages of this very port alone.
/// </remarks>
internal sealed class RequestGate(OwnAddresses addresses, AccessToken token, OneTimeKeys keys, Strangers strangers,
    StudentDoor students)
{
    /// <summary>The header that carries the page's key.</summary>
    public const string KeyHeader = "Rig-Key";

    /// <summary>The protocol of a living page's connection. The page's key is named beside it, for a browser lets a page send no
    /// header there.</summary>
    public const string Protocol = "rig";

    private const string TokenField = "token";
    private const string OnceField = "once";

    private readonly AccessToken cookie = AccessToken.New();
    private readonly AccessToken pageKey = AccessToken.New();

    // Two servers at once need two names, for they share the host's cookies.
    private readonly string cookieName = $"rig-{addresses.Port}";

    /// <summary>Lets a request through, sends it on without its key, or refuses it.</summary>
    /// <returns>Whether the request goes on; otherwise it is answered.</returns>
    /// <exception cref="ProblemException">It may not pass.</exception>
    public async Task<bool> LetsAsync(HttpContext context)
    {
        var request = context.Request;
        if (!(HttpMethods.IsGet(request.Method) || HttpMethods.IsPost(request.Method) || HttpMethods.IsPut(request.Method)))
            throw new ProblemException(StatusCodes.Status405MethodNotAllowed,
                $"This server doesn't know the method \"{Short(request.Method)}\".");
        var host = request.Headers.Host.ToString();
        if (!addresses.IsHost(host))
            throw new ProblemException(StatusCodes.Status403Forbidden,
                $"This server isn't called \"{Short(host)}\". Use the address that it printed when it was started.");
        if (HttpMethods.IsGet(request.Method) && (request.Query.ContainsKey(TokenField) || request.Query.ContainsKey(OnceField)))
        {
            MayEnter(request);
            Room(context);
            await WelcomeAsync(context);
            return false;
        }
        var isStudent = students.Lets(context);
        if (!isStudent && (!cookie.Is(request.Cookies[cookieName]) || (NeedsKey(request) && !pageKey.Is(KeyOf(request)))))
            throw new ProblemException(StatusCodes.Status403Forbidden,
                request.Path.StartsWithSegments(StudentDoor.Page) ? NoTask : NoKey);
        Room(context);
        FromOwnPage(request, host);
        return true;
    }

    private const string NoKey =
        "This page opens with the address that was printed when it was started, the one with \"token=\" in it. "
        + "Each start has a new one: look in the window where \"rigscenarios open\" runs.";

    private const string NoTask =
        "There is no task at this address. Compare it with the one that your teacher gave you, letter by letter.";

    private const string Spent =
        "This address opens the pages once, and it was used already or is older than two minutes. Open the address that "
            + "stands in "
        + "the window where \"rigscenarios open\" runs. If no browser of yours has shown the pages yet, somebody else on this "
        + "machine may have taken it: then stop the program with Ctrl-C and start it again.";

    private void MayEnter(HttpRequest request)
    {
        if (token.Is(request.Query[TokenField]))
            return;
        var once = request.Query.ContainsKey(TokenField) ? OneTimeKey.Unknown : keys.Take(request.Query[OnceField]);
        // A browser that is in already and comes by its first address once more, from its history or with a tab that it restores.
        if (once == OneTimeKey.Taken || (once == OneTimeKey.Spent && cookie.Is(request.Cookies[cookieName])))
            return;
        throw new ProblemException(StatusCodes.Status403Forbidden, once == OneTimeKey.Spent ? Spent : NoKey);
    }

    private void Room(HttpContext context)
    {
        if (!strangers.Knows(context))
            throw new ProblemException(StatusCodes.Status503ServiceUnavailable,
                "More connections are open than any browser needs. Close pages that you don't need.");
    }

    private Task WelcomeAsync(HttpContext context)
    {
        context.Response.Cookies.Append(cookieName, cookie.Text,
            new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
        var rest = new QueryBuilder(context.Request.Query.Where(field => field.Key is not (TokenField or OnceField))
            .SelectMany(field => field.Value, (field, value) => KeyValuePair.Create(field.Key, value ?? "")));
        // One slash in front: with two, a browser would take the path for the name of another server.
        var path = "/" + context.Request.Path.ToUriComponent().TrimStart('/', '\\');
        return WelcomePage.WriteAsync(context, pageKey.Text, path + rest.ToQueryString());
    }

    // The pages themselves hold nothing of anybody's; what they ask for does.
    private static bool NeedsKey(HttpRequest request) =>
        request.Path.StartsWithSegments("/api") || request.Path.StartsWithSegments("/picture");

    private static string? KeyOf(HttpRequest request) => request.Headers[KeyHeader] is [{ } key] ? key
        : IsUpgrade(request) ? request.Headers.SecWebSocketProtocol.ToString().Split(',', StringSplitOptions.TrimEntries)
            .FirstOrDefault(name => name != Protocol)
        : null;

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
