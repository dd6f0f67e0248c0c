using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Nudges;

/// <summary>Odalys with Pim's racket 1, strung in September and past its date, in a shop that can be written to.</summary>
internal sealed class Household
{
    public Household(TestShop shop)
    {
        Shop = shop;
        shop.Records.Shop();
        Client = shop.Records.Client("Odalys Ferran", Records.CanaryPhone, Records.CanaryMail);
        Player = shop.Records.Player(Client, "Pim Ferran", junior: true);
        Racket = shop.Records.Racket(Player);
        Tag = shop.Records.LiveTag(Racket).ToString();
        shop.Records.Job(Racket, strungOn: new(2026, 9, 1));
    }

    public TestShop Shop { get; }

    public long Client { get; }

    public long Player { get; }

    public long Racket { get; }

    public string Tag { get; }

    public string Link(long nudge) => "/n/" + Shop.Get<LinkKeys>().Token(LinkPurpose.Nudge, nudge, Secret(nudge, "secret"));

    public string StopLink(long nudge) => "/n/stop/" + Shop.Get<LinkKeys>().Token(LinkPurpose.StopNudges, nudge, Secret(nudge, "stop_secret"));

    private string Secret(long nudge, string column) => Value($"SELECT {column} FROM nudge WHERE id = {nudge}")!;

    /// <summary>Odalys opens the link and answers for the first racket.</summary>
    public async Task<WebPage> Answer(long nudge, string answer, params (string Name, string Value)[] more)
    {
        var odalys = Shop.Stranger();
        return await odalys.Send(await odalys.Open(Link(nudge)), [("Input.Rackets[0].Answer", answer), .. more]);
    }

    public string? Value(string sql) => Shop.Records.Text(sql);
}
