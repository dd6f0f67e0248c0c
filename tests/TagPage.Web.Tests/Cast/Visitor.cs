using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Parser;

namespace TagPage.Web.Tests.Cast;

/// <summary>Somebody with a browser: opens pages, fills the forms found there and sends them.</summary>
public sealed class Visitor(HttpClient client)
{
    public HttpClient Client => client;

    public Task<HttpResponseMessage> Get(string path) => client.GetAsync(new Uri(path, UriKind.RelativeOrAbsolute), Token);

    public async Task<WebPage> Open(string path) => await WebPage.Of(await Get(path), path);

    /// <summary>Sends the page's form as a browser would, with some fields changed.</summary>
    public async Task<WebPage> Send(WebPage page, params (string Name, string Value)[] fields) =>
        await Send(page, page.Document.QuerySelector<AngleSharp.Html.Dom.IHtmlFormElement>("main form[method=post]:not(.undo)")!, fields);

    /// <summary>The same with one of several forms. Like a browser it goes on to where a refused form is shown.</summary>
    public async Task<WebPage> Send(WebPage page, AngleSharp.Html.Dom.IHtmlFormElement form, params (string Name, string Value)[] fields) =>
        await Follow(await Post(page, form, fields));

    /// <summary>Where a refused form is shown; every other answer as it is.</summary>
    public async Task<WebPage> Follow(WebPage answer) => answer.Status == HttpStatusCode.SeeOther ? await Open(answer.Location!) : answer;

    /// <summary>The answer to the sending itself.</summary>
    public async Task<WebPage> Post(WebPage page, AngleSharp.Html.Dom.IHtmlFormElement form, params (string Name, string Value)[] fields)
    {
        var values = FormValues.Of(form);
        foreach (var (name, value) in fields)
            values.Set(name, value);
        var action = form.GetAttribute("action") is { Length: > 0 } given ? given : page.Path;
        using var content = new FormUrlEncodedContent(values.Pairs);
        return await WebPage.Of(await client.PostAsync(new Uri(action, UriKind.RelativeOrAbsolute), content, Token), action);
    }

    private static CancellationToken Token => TestContext.Current.CancellationToken;
}

/// <summary>An answer and, where it is HTML, its document.</summary>
public sealed record WebPage(HttpResponseMessage Response, string Text, IDocument Document, string Path)
{
    public HttpStatusCode Status => Response.StatusCode;

    /// <summary>Where a redirect points, as path and query.</summary>
    public string? Location => Response.Headers.Location?.ToString();

    /// <summary>What can be pressed there; null where nothing can.</summary>
    public IElement? Form() => Document.QuerySelector("main form[method=post]");

    public string Main => Document.QuerySelector("main")?.TextContent ?? "";

    public IReadOnlyList<string> Errors => [.. Document.QuerySelectorAll(".error").Select(e => e.TextContent)];

    public static async Task<WebPage> Of(HttpResponseMessage response, string path)
    {
        var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        return new WebPage(response, text, new HtmlParser().ParseDocument(text), path);
    }
}
