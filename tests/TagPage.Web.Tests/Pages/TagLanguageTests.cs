using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Pages;

public sealed class TagLanguageTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly TagCode _code;
    private readonly long _racket;

    public TagLanguageTests() => (_, _, _racket, _code, _) = _shop.Records.Family();

    public void Dispose() => _shop.Dispose();

    public static TheoryData<string> Codes => [.. Languages.All.Select(l => l.Code)];

    [Theory]
    [InlineData("en", "Restring in 14 days", "by 9 Dec 2026", "Racket 1 · red tape · tennis", "About a third left: 14 days, because of the hours played")]
    [InlineData("es", "Encordar dentro de 14 días", "a más tardar el 9 dic 2026", "Raqueta 1 · cinta: rojo · tenis", "Queda un tercio, más o menos: 14 días, por las horas jugadas")]
    [InlineData("fr", "À recorder dans 14 jours", "d’ici au 9 déc. 2026", "Raquette 1 · bande\u00A0: rouge · tennis", "Il en reste environ un tiers\u00A0: 14 jours, en raison des heures jouées")]
    [InlineData("de", "Neu bespannen in 14 Tagen", "bis 9. Dez. 2026", "Schläger 1 · Band: rot · Tennis", "Noch etwa ein Drittel übrig: 14 Tage, wegen der Spielstunden")]
    [InlineData("it", "Da incordare tra 14 giorni", "entro il 9 dic 2026", "Racchetta 1 · nastro: rosso · tennis", "Resta circa un terzo: 14 giorni, per le ore giocate")]
    [InlineData("pt", "Encordoar daqui a 14 dias", "até 9 dez. 2026", "Raquete 1 · fita: vermelho · ténis", "Resta cerca de um terço: 14 dias, por causa das horas jogadas")]
    [InlineData("ja", "張り替え：14日後", "2026年12月9日まで", "ラケット1 · テープ：赤 · テニス", "残り約3分の1：14日（使用時間による）")]
    [InlineData("zh", "14天后换线", "2026年12月9日前", "球拍1 · 胶带：红色 · 网球", "约剩三分之一：14天，依据打球时数")]
    public async Task Player_reads_the_answer_in_the_phones_language(string code, string headline, string date, string label, string life)
    {
        var page = await Open("/t/" + _code, code);

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal(code, page.Document.DocumentElement.GetAttribute("lang"));
        Assert.Equal(headline, page.Document.QuerySelector("h1")!.TextContent);
        Assert.Equal(date, page.Document.QuerySelector(".by")!.TextContent);
        Assert.Contains(label, page.Main, StringComparison.Ordinal);
        Assert.Contains(life, page.Main, StringComparison.Ordinal);
        Assert.Equal(life, page.Document.QuerySelector("svg[role=img]")!.GetAttribute("aria-label"));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public async Task Every_answer_of_a_code_is_whole_and_in_one_language(string code)
    {
        var tags = new[] { _code, _shop.Records.BlankTag(), _shop.Records.RetiredTag(), TagCode.Draw(System.Security.Cryptography.RandomNumberGenerator.Fill) };
        foreach (var path in tags.Select(t => "/t/" + t).Append("/t").Append("/t/ABC").Append("/"))
        {
            var page = await Open(path, code);
            Assert.Equal(code, page.Document.DocumentElement.GetAttribute("lang"));
            Assert.DoesNotContain("{", page.Document.Body!.TextContent, StringComparison.Ordinal);
            foreach (var canary in new[] { OnFile.CanaryPhone, OnFile.CanaryMail, OnFile.CanaryNote, "Pim", "Odalys", "Ferran", "Pellmore" })
                Assert.DoesNotContain(canary, page.Text, StringComparison.Ordinal);
            if (code != "en")
                Assert.DoesNotMatch(@"\b(racket|strings|the|shop|type|tag)\b", page.Main.ToLowerInvariant());
        }
    }

    [Theory]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'")]
    [InlineData("DELETE FROM job")]
    [InlineData("UPDATE racket SET state = 'Resting'")]
    [InlineData("UPDATE job SET strung_on = '2026-10-09', pieces = 1, mains_pre_stretch = 10")]
    [InlineData("UPDATE racket SET own_date = '2026-11-25'")]
    public async Task Every_state_is_whole_in_every_language(string change)
    {
        _shop.Database.Write(c => Dapper.SqlMapper.Execute(c, change));
        foreach (var language in Languages.All)
        {
            var page = await Open("/t/" + _code, language.Code);
            Assert.Equal(HttpStatusCode.OK, page.Status);
            Assert.DoesNotContain("{", page.Document.Body!.TextContent, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Chosen_language_wins_over_the_phones_and_stays_on_the_pages_links()
    {
        var page = await Open($"/t/{_code}?lang=ja&utm=x", "fr");

        Assert.Equal("ja", page.Document.DocumentElement.GetAttribute("lang"));
        var links = page.Document.QuerySelectorAll("a[href^='/']").Select(a => a.GetAttribute("href")!).ToList();
        Assert.NotEmpty(links);
        Assert.All(links, href => Assert.EndsWith("?lang=ja", href, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Language_that_was_not_chosen_is_in_no_link()
    {
        var page = await Open("/t/" + _code, "ja");

        Assert.All(page.Document.QuerySelectorAll("a[href^='/']"), a => Assert.DoesNotContain("lang", a.GetAttribute("href")!, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("?lang=tlh")]
    [InlineData("?lang=")]
    [InlineData("?lang=ja&lang=de")]
    [InlineData("?lang=%22%3E%3Cscript%3E")]
    public async Task Unknown_choice_is_no_choice(string query)
    {
        var page = await Open($"/t/{_code}{query}", "es");

        Assert.Equal("es", page.Document.DocumentElement.GetAttribute("lang"));
        Assert.DoesNotContain("<script", page.Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Chooser_names_every_language_in_its_own_words_after_the_content()
    {
        var page = await Open("/t/" + _code, "de");

        var links = page.Document.QuerySelectorAll("footer nav a").ToList();
        Assert.Equal(Languages.All.Select(l => (l.Code, l.Name)), links.Select(a => (a.GetAttribute("lang")!, a.TextContent)));
        Assert.All(links, a => Assert.Equal($"?lang={a.GetAttribute("hreflang")}", a.GetAttribute("href")));
        Assert.Equal("de", Assert.Single(links, a => a.HasAttribute("aria-current")).GetAttribute("lang"));
        Assert.Empty(page.Document.QuerySelectorAll("main nav"));
    }

    [Fact]
    public async Task Typed_code_keeps_the_chosen_language()
    {
        var form = (await Open("/t?lang=it", "de")).Document.QuerySelector<IHtmlFormElement>("main form")!;
        var lang = form.Elements.OfType<IHtmlInputElement>().Single(i => i.Name == "lang").Value;

        var answer = await _shop.Stranger().Get($"/t?code={_code}&lang={lang}");

        Assert.Equal($"/t/{_code}?lang=it", answer.Headers.Location!.ToString());
    }

    [Fact]
    public async Task Kept_page_is_given_to_its_own_language_only()
    {
        var german = await Open("/t/" + _code, "de");
        var french = await Open("/t/" + _code, "fr");
        var again = await Open("/t/" + _code, "de-CH, en;q=0.5");
        var chosen = await Open($"/t/{_code}?lang=de", "fr");

        Assert.Equal(german.Text, again.Text);
        Assert.Equal(german.Response.Headers.ETag, again.Response.Headers.ETag);
        Assert.NotEqual(german.Response.Headers.ETag, french.Response.Headers.ETag);
        Assert.NotEqual(german.Text, chosen.Text);
        Assert.Contains("Accept-Language", german.Response.Headers.Vary);
    }

    [Fact]
    public async Task Calendar_entry_is_in_the_pages_language()
    {
        var file = await (await _shop.Stranger().Get($"/t/{_code}/restring.ics?lang=es")).Content.ReadAsStringAsync(TestContext.Current.CancellationToken);

        Assert.Contains("SUMMARY:Encordar la raqueta 1 (rojo)", file, StringComparison.Ordinal);
        Assert.DoesNotContain("Restring", file.Replace("//Restring by//", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Owners_own_colour_stays_as_typed()
    {
        _shop.Database.Write(c => Dapper.SqlMapper.Execute(c, "UPDATE racket SET tape_colour = 'sea green'"));

        Assert.Contains("Band: sea green", (await Open("/t/" + _code, "de")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public async Task Page_of_a_lost_racket_with_thirty_jobs_fits_into_8_KB_in_every_language(string code)
    {
        foreach (var n in Enumerable.Range(1, 29))
            _shop.Records.Job(_racket, new DateOnly(2026, 10, 1).AddDays(-37 * n));
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20', lost_note = 'Left under the second bench of court 3 at Eastmere on Sunday evening, in a grey bag without a name. A reward waits at the desk. Many thanks!'");
        using var request = Request("/t/" + _code, code);
        request.Headers.TryAddWithoutValidation("Accept-Encoding", "gzip");

        var answer = await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken);
        var bytes = (await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Length;

        Assert.Equal(["gzip"], answer.Content.Headers.ContentEncoding);
        Assert.InRange(bytes, 1000, 8 * 1024);
    }

    [Theory]
    [InlineData("/t/ABC/restring.ics", "de", "de")]
    [InlineData("/t/ABC/restring.ics?lang=ja", "de", "ja")]
    [InlineData("/problem/404", "de", "en")]
    public async Task Page_that_is_not_there_says_so_in_the_visitors_language_where_pages_speak_it(string path, string phone, string expected)
    {
        using var request = Request(path, phone);
        var page = await WebPage.Of(await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken), path);

        Assert.Equal(HttpStatusCode.NotFound, page.Status);
        Assert.Equal(expected, page.Document.DocumentElement.GetAttribute("lang"));
        Assert.Equal(Languages.Of(expected)!.Phrases.Problem.Absent, page.Document.QuerySelector("h1")!.TextContent);
    }

    [Theory]
    [InlineData("/%2500")]
    [InlineData("/t/%2500")]
    [InlineData("/my/%25ff")]
    public async Task Address_that_was_written_as_one_twice_is_a_page_that_is_not_there(string address) =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Stranger().Get(address)).StatusCode);

    [Fact]
    public async Task Shop_area_stays_English_whatever_the_browser_asks_for()
    {
        using var request = Request("/shop/rackets/" + _racket, "ja");
        request.Headers.Add(TestSignIn.Header, "Owner");
        var page = await WebPage.Of(await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken), "");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Equal("en", page.Document.DocumentElement.GetAttribute("lang"));
        Assert.Contains("in 14 days, about a third left", page.Main, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"[\p{IsHiragana}\p{IsKatakana}\p{IsCJKUnifiedIdeographs}]", page.Main);
    }

    private async Task<WebPage> Open(string path, string accept)
    {
        using var request = Request(path, accept);
        return await WebPage.Of(await _shop.Stranger().Client.SendAsync(request, TestContext.Current.CancellationToken), path);
    }

    private static HttpRequestMessage Request(string path, string accept)
    {
        var request = new HttpRequestMessage(HttpMethod.Get, new Uri(path, UriKind.Relative));
        request.Headers.TryAddWithoutValidation("Accept-Language", accept);
        return request;
    }
}
