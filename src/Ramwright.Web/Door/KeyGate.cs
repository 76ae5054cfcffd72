using System.Net;
using Microsoft.AspNetCore.Antiforgery;
using Microsoft.AspNetCore.Mvc;

namespace Ramwright.Web.Door;

/// <summary>
/// Lets nobody in who has not shown the key. It is taken from the address once and then taken out of it, or typed into a form; the
/// browser keeps a pass that no script and no other site can use.
/// </summary>
internal static class KeyGate
{
    private const string Cookie = "bench-pass", Place = "/key";

    /// <summary>How long a wrong key is thought about; one at a time, whoever asks.</summary>
    private static readonly TimeSpan Thought = TimeSpan.FromSeconds(1);

    /// <summary>Puts the gate before everything else.</summary>
    public static void UseKeyGate(this WebApplication app, AccessKey key)
    {
        var oneAtATime = new SemaphoreSlim(1, 1);
        AccessKey pass = key;       // the form's field has the same name
        app.Use(async (context, next) =>
        {
            HttpRequest request = context.Request;
            if (request.Query.TryGetValue("key", out var shown) && HttpMethods.IsGet(request.Method))
            {
                if (await IsKey(shown))
                {
                    Admit(context, key);
                    context.Response.Redirect(request.Path.HasValue && request.Path != Place ? request.PathBase + request.Path : "/");
                    return;
                }

                context.Response.Redirect(Place + "?wrong=yes");
                return;
            }

            if (key.Knows(request.Cookies[Cookie]) || request.Path == Place || IsLook(request.Path))
                await next(context);
            else if (HttpMethods.IsGet(request.Method) && !context.WebSockets.IsWebSocketRequest && request.Headers.Accept.ToString().Contains("text/html", StringComparison.Ordinal))
                context.Response.Redirect(Place);
            else
                context.Response.StatusCode = StatusCodes.Status401Unauthorized;
        });
        app.MapGet(Place, (HttpContext context, IAntiforgery forgery) => Results.Content(Form(forgery.GetAndStoreTokens(context), context.Request.Query.ContainsKey("wrong")), "text/html"));
        app.MapPost(Place, async (HttpContext context, [FromForm] string key) =>
        {
            if (!await IsKey(key))
                return Results.Redirect(Place + "?wrong=yes");
            Admit(context, pass);
            return Results.Redirect("/");
        });

        async Task<bool> IsKey(string? typed)
        {
            await oneAtATime.WaitAsync();
            try
            {
                if (key.Is(typed))
                    return true;
                await Task.Delay(Thought);
                return false;
            }
            finally
            {
                oneAtATime.Release();
            }
        }
    }

    private static void Admit(HttpContext context, AccessKey key) =>
        context.Response.Cookies.Append(Cookie, key.Pass, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });

    // the form itself must look like the bench
    private static bool IsLook(PathString path) => path.Value is { } p && !p[1..].Contains('/') && (p.EndsWith(".css", StringComparison.Ordinal) || p.EndsWith(".svg", StringComparison.Ordinal));

    private static string Form(AntiforgeryTokenSet token, bool wrong) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head><meta charset="utf-8" /><meta name="viewport" content="width=device-width, initial-scale=1" /><meta name="color-scheme" content="light dark" />
        <title>The key: Ramwright</title><link rel="stylesheet" href="/bench.css" /></head>
        <body><header class="top"><span class="mark">Ramwright</span></header>
        <main class="plain"><h1>The key, please</h1>
        <p>It was printed where the bench was started.</p>
        {(wrong ? "<p class=\"fault\" role=\"alert\">That is not the key.</p>" : "")}
        <form method="post" action="/key" class="asked"><label for="key">key <input id="key" name="key" type="text" autocomplete="off" autocapitalize="characters" maxlength="60" required /></label>
        <input type="hidden" name="{WebUtility.HtmlEncode(token.FormFieldName)}" value="{WebUtility.HtmlEncode(token.RequestToken)}" />
        <button type="submit" class="chief">Open</button></form></main></body></html>
        """;
}
