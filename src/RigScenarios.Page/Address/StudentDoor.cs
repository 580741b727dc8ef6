using Microsoft.AspNetCore.Http;

namespace RigScenarios.Page.Address;

/// <summary>
/// The way in for a class: the address with the code of one task opens that task's page, and what that page asks for that task,
/// and nothing else. Neither the key of the pages nor their cookie is given out with it.
/// </summary>
/// <param name="port">The server's port, for the cookie's name.</param>
/// <param name="isCode">Tells whether a text is the code of a task that is there.</param>
internal sealed class StudentDoor(int port, Func<string, bool> isCode)
{
    /// <summary>The path of a task's page, before its code.</summary>
    public const string Page = "/lesson";

    private const string Requests = "/api/lesson";

    private readonly AccessToken cookie = AccessToken.New();
    private readonly string cookieName = $"rig-class-{port}";

    /// <summary>Whether a request is one that whoever has a task's code may send; every other one needs the keys.</summary>
    public bool Lets(HttpContext context)
    {
        var request = context.Request;
        // Scripts and styles hold nothing of anybody's, and a class needs them too.
        if (request.Path.StartsWithSegments("/assets"))
            return HttpMethods.IsGet(request.Method) && cookie.Is(request.Cookies[cookieName]);
        var rest = request.Path.StartsWithSegments(Page, out var ofPage) && HttpMethods.IsGet(request.Method) ? ofPage.Value
            : request.Path.StartsWithSegments(Requests, out var ofRequest) ? ofRequest.Value : null;
        if (rest is not ['/', .. var within] || !isCode(within.Split('/')[0]))
            return false;
        if (request.Path.StartsWithSegments(Page))
            context.Response.Cookies.Append(cookieName, cookie.Text,
                new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/assets", IsEssential = true });
        return true;
    }
}
