using System.Diagnostics;
using Dapper;
using TagPage.Records.Outbox;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Mail;

/// <summary>A shop that sends its email to a server on this machine, driven by hand.</summary>
internal static class MailShop
{
    public static TestShop Of(int port)
    {
        var shop = new TestShop
        {
            IsNew = true,
            Settings =
            {
                ["TagPage:Smtp:Host"] = "127.0.0.1",
                ["TagPage:Smtp:Port"] = $"{port}",
                ["TagPage:Smtp:Tls"] = "None",
            },
        };
        shop.Database.Write(c => c.Execute("""
            INSERT INTO shop (id, name, phone, mail, country, time_zone, currency, tension_unit)
            VALUES (1, 'Heron Lane Strings', '+442079460958', 'shop@heron.example', 'GB', 'Europe/London', 'GBP', 'Lb');
            INSERT INTO client (id, name, mail) VALUES (1, 'Zoë Ng', 'zoe@client.example');
            """));
        return shop;
    }

    public static void Queue(this TestShop shop, MailKind kind = MailKind.FoundNotice, string subject = "Hello") =>
        shop.Database.Write(c => shop.Get<OutboxStore>().Queue(c, new NewMail(kind, 1, subject, "…")));

    /// <summary>The mail sender's next rounds, whatever prevents them; it looks every five seconds.</summary>
    public static async Task Looks(this TestShop shop, int times)
    {
        for (var n = 0; n < times; n++)
        {
            await Record.ExceptionAsync(() => shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken));
            shop.Clock.Advance(TimeSpan.FromSeconds(5));
        }
    }

    public static string MailStates(this TestShop shop) => shop.Records.Text("SELECT group_concat(state, ' ') FROM (SELECT state FROM outbox ORDER BY id)");

    /// <summary>Waits until something that happens in the background is true.</summary>
    public static async Task Until(Func<bool> isSo, TimeSpan? atMost = null)
    {
        var since = Stopwatch.GetTimestamp();
        while (!isSo())
        {
            Assert.True(Stopwatch.GetElapsedTime(since) < (atMost ?? TimeSpan.FromSeconds(20)), "It did not come to be so in time.");
            await Task.Delay(TimeSpan.FromMilliseconds(5), TestContext.Current.CancellationToken);
        }
    }
}
