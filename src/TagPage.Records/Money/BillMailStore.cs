using Dapper;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;

namespace TagPage.Records.Money;

/// <summary>Sends a bill by email. Only the shop may.</summary>
public sealed class BillMailStore(Database database, OutboxStore outbox)
{
    /// <param name="who">Only the shop may.</param>
    /// <param name="id">The bill's.</param>
    /// <param name="mail">Its words.</param>
    /// <param name="shopCanSend">The shop has an address of its own.</param>
    public Outcome Send(Who who, long id, WrittenMail mail, bool shopCanSend) => database.WriteAsOwner(who, c =>
    {
        if (c.QuerySingleOrDefault<BillRow>(BillStore.GetSql, new { who.IsOwner, id }) is not { } bill)
            return new Outcome.Absent();
        if (bill.Mail is null || !shopCanSend)
            return new Outcome.Refused(new BillUnaddressed());
        outbox.Queue(c, new NewMail(MailKind.ClientNotice, bill.ClientId, mail.Subject, mail.Body) { BillId = id, ToAddress = bill.ClientId is null ? bill.Mail : null });
        return new Outcome.Done(id);
    });
}
