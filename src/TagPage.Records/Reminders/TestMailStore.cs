using TagPage.Records.Outbox;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Reminders;

/// <summary>An email from the shop to the shop, to see whether email arrives.</summary>
public sealed class TestMailStore(Database database, OutboxStore outbox, ShopStore shops, TimeProvider clock)
{
    /// <summary>Queues one, once for each form key.</summary>
    public Outcome Send(Who who, string formKey, string subject, MailText body) => database.WriteOnceAsOwner(who, formKey, clock.GetUtcNow(), c =>
        shops.Get().Mail is null
            ? new Outcome.Refused(new ShopHasNoMail())
            : new Outcome.Done(outbox.Queue(c, new NewMail(MailKind.ShopNotice, null, subject, body))));
}
