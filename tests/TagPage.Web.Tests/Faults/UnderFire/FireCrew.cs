using System.Collections.Concurrent;
using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults.UnderFire;

/// <summary>People who press as fast as the program answers, and who press the same again when it does not.</summary>
/// <param name="address">Of the program, in all its lives.</param>
/// <param name="random">Of the whole fight.</param>
internal sealed class FireCrew(Uri address, Random random) : IDisposable
{
    private readonly List<HttpClient> _clients = [];
    private readonly ConcurrentBag<Press> _unanswered = [];

    /// <summary>One press of a form, which can be repeated as it was.</summary>
    private sealed record Press(Visitor By, string Kind, string Key, WebPage Page, IHtmlFormElement Form, (string, string)[] Fields);

    /// <summary>What the program said is done.</summary>
    public ConcurrentBag<(string Kind, string Key)> Told { get; } = [];

    /// <summary>Answers that were neither yes nor silence.</summary>
    public ConcurrentBag<string> Odd { get; } = [];

    public int PressedAgain { get; private set; }

    public Visitor Newcomer()
    {
        var client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = address, Timeout = TimeSpan.FromSeconds(60) };
        _clients.Add(client);
        return new Visitor(client);
    }

    /// <summary>Somebody found a racket and writes; each comes from another network address.</summary>
    public Task Finds(Visitor finder, Func<long> racket) => Repeat(async () =>
    {
        finder.Client.DefaultRequestHeaders.Remove("X-Forwarded-For");
        finder.Client.DefaultRequestHeaders.Add("X-Forwarded-For", $"{Next(11, 190)}.{Next(0, 256)}.{Next(0, 256)}.{Next(1, 255)}");
        var (key, page) = (Key(), await finder.FoundPage(FireField.CodeOf(racket())));
        await Do(new Press(finder, "words", key, page, page.Form("/message"), [("Input.Message", key), ("Input.Reach", "")]));
    });

    /// <summary>A client logs an hour on one day after the other, going back.</summary>
    public Task Plays(Visitor phone, long racket, Func<DateOnly> day) => Repeat(async () =>
    {
        var on = day().ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var page = await phone.Open($"/my/hours/{racket}");
        await Do(new Press(phone, "hours", $"{racket} {on}", page, FormOf(page), [("Input.PlayedOn", on), ("Input.LastDay", on), ("Input.Hours", "1")]));
    });

    public Task TakesIn(Visitor owner, Func<long> racket) => Repeat(async () =>
    {
        var (key, page) = (Key(), await owner.Open($"/shop/jobs/new?racket={racket()}"));
        await Do(new Press(owner, "job", key, page, FormOf(page), [("Input.Note", key)]));
    });

    public Task IsPaid(Visitor owner, Func<long> client) => Repeat(async () =>
    {
        var (key, page) = (Key(), await owner.Open($"/shop/money/client/{client()}"));
        var form = page.Document.QuerySelectorAll<IHtmlFormElement>("main form").Single(f => f.QuerySelector("[name='Input.Amount']") is not null);
        await Do(new Press(owner, "payment", key, page, form, [("Input.Amount", "1"), ("Input.How", "Cash"), ("Input.Note", key)]));
    });

    /// <summary>Whoever got no answer presses once more.</summary>
    public async Task PressAgain()
    {
        while (_unanswered.TryTake(out var press))
        {
            PressedAgain++;
            await Do(press);
        }
    }

    public void Dispose() => _clients.ForEach(c => c.Dispose());

    private static string Key() => Guid.NewGuid().ToString("N");

    private static IHtmlFormElement FormOf(WebPage page) => page.Document.QuerySelector<IHtmlFormElement>("main form[method=post]")
        ?? throw new InvalidOperationException($"No form on {page.Path}: {page.Status} {page.Main}");

    private int Next(int from, int to)
    {
        lock (random)
            return random.Next(from, to);
    }

    private async Task Do(Press press)
    {
        try
        {
            var answer = await press.By.Post(press.Page, press.Form, press.Fields);
            if (answer.Status is HttpStatusCode.Found || (answer.Status == HttpStatusCode.OK && answer.Errors.Count == 0))
                Told.Add((press.Kind, press.Key));
            else
                Odd.Add($"{press.Kind}: {answer.Status} {answer.Location} {string.Join(' ', answer.Errors)}");
        }
        catch (Exception e) when (IsSilence(e))
        {
            _unanswered.Add(press);
            throw;
        }
    }

    /// <summary>Until nobody answers any more.</summary>
    private static async Task Repeat(Func<Task> once)
    {
        try
        {
            while (true)
                await once();
        }
        catch (Exception e) when (IsSilence(e))
        {
        }
    }

    private static bool IsSilence(Exception e) => e is HttpRequestException or IOException;
}
