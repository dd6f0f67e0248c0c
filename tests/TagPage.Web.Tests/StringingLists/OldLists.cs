using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.StringingLists;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>Lists brought in without a browser, and with one.</summary>
internal static class OldLists
{
    public static readonly string[] Headings = ["Client", "Racket", "Date", "String", "Tension"];

    public static string List(params string[] lines) => string.Join('\n', lines.Prepend(string.Join(';', Headings)));

    /// <summary>Read with these settings, or what the headings say.</summary>
    public static ListReading Read(string text, Func<ListSettings, ListSettings>? with = null)
    {
        var table = ListTable.Of(text);
        Assert.Null(table.Wrong);
        return ListReader.Read(table, Settings(table, with), new ShopDetails { Country = "GB", Currency = "GBP", TensionUnit = TensionUnit.Lb }, TestShop.Today);
    }

    public static ListSettings Settings(ListTable table, Func<ListSettings, ListSettings>? with = null) =>
        (with ?? (s => s))(new ListSettings { Columns = HeadingWords.Guess(table.Headings), Sport = Sport.Tennis, TensionUnknown = 52, OtherRackets = RacketQuestion.One });

    public static (ListReading Reading, ListPlan Plan) Plan(TestShop shop, string text, Func<ListSettings, ListSettings>? with = null, OtherMatches others = OtherMatches.Merge)
    {
        var table = ListTable.Of(text);
        var settings = Settings(table, with);
        var reading = ListReader.Read(table, settings, shop.Get<ShopStore>().Get(), TestShop.Today);
        return (reading, shop.Get<ListPlanner>().Plan(reading, settings, new ImportChoices { Others = others }));
    }

    /// <summary>All strings are polyester of 1.25 mm where nothing else is said.</summary>
    public static ListSettings Polyester(ListSettings settings, IEnumerable<string> keys) =>
        settings with { Strings = keys.ToDictionary(key => key, _ => new StringAnswer(null, Material.Polyester, 1.25m)) };

    /// <summary>Brings a list in, all of it.</summary>
    public static long Bring(TestShop shop, string text, Func<ListSettings, ListSettings>? with = null)
    {
        var open = Plan(shop, text, with).Plan.Strings.Select(q => q.Key).ToList();
        var plan = Plan(shop, text, s => Polyester((with ?? (x => x))(s), open)).Plan;
        Assert.True(plan.IsComplete);
        var done = Assert.IsType<Outcome.Done>(shop.Get<StringingListStore>().Begin(Who.Shop, new StringingListEntry
        {
            FormKey = FormKey.New(),
            Name = "list.csv",
            Lines = [.. plan.Lines.Select(line => line.Write).OfType<StringingLine>()],
            Headings = "[]",
        }));
        shop.Get<StringingListWorker>().Round();
        return done.Id;
    }

    public static async Task<WebPage> Send(Visitor visitor, byte[] list)
    {
        var page = await visitor.Open("/shop/import/list");
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in FormValues.Of(page.Document.QuerySelector<IHtmlFormElement>("main form")!).Pairs.Where(p => p.Key != "Sent"))
            content.Add(new StringContent(value), name);
        content.Add(new ByteArrayContent(list), "Sent", "old list.csv");
        return await visitor.Follow(await WebPage.Of(await visitor.Client.PostAsync(new Uri("/shop/import/list", UriKind.Relative), content, TestContext.Current.CancellationToken), page.Path));
    }

    public static Task<WebPage> Send(Visitor visitor, string list) => Send(visitor, Encoding.UTF8.GetBytes(list));
}
