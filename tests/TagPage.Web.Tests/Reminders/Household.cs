using TagPage.Records.Outbox;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>Odalys with Pim's racket 1, strung in September and past its date, in a shop that can be written to.</summary>
internal sealed class Household
{
    public Household(TestShop shop)
    {
        Shop = shop;
        shop.Records.Shop();
        Client = shop.Records.Client("Odalys Ferran", OnFile.CanaryPhone, OnFile.CanaryMail);
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

    public string Link(long reminder) => "/n/" + Shop.Get<LinkTokens>().Token(LinkPurpose.Reminder, reminder, Secret(reminder, "secret"));

    public string StopLink(long reminder) => "/n/stop/" + Shop.Get<LinkTokens>().Token(LinkPurpose.StopReminders, reminder, Secret(reminder, "stop_secret"));

    private string Secret(long reminder, string column) => Value($"SELECT {column} FROM reminder WHERE id = {reminder}")!;

    /// <summary>Odalys opens the link and answers for the first racket.</summary>
    public async Task<WebPage> Answer(long reminder, string answer, params (string Name, string Value)[] more)
    {
        var odalys = Shop.Stranger();
        return await odalys.Send(await odalys.Open(Link(reminder)), [("Input.Rackets[0].Answer", answer), .. more]);
    }

    public string? Value(string sql) => Shop.Records.Text(sql);
}
