using Microsoft.Extensions.Logging.Abstractions;
using TagPage.Core.Money;
using TagPage.Records.Import;
using TagPage.Records.Money;
using TagPage.Records.Outbox;
using TagPage.Records.Privacy;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Money;

public sealed class ErasedMoneyTests : IDisposable
{
    private readonly Street _street = new();
    private readonly Till _till;

    public ErasedMoneyTests() => _till = new Till(_street);

    public void Dispose() => _street.Dispose();

    private void Erase() => new EraseStore(_street.Database, new MailFiles(_street.Folder), new Uploads(_street.Folder, _street.Time), _street.Folder, _street.Time, NullLogger<EraseStore>.Instance).Erase(_street.Odalys);

    [Fact]
    public void Erasure_keeps_amounts_days_and_tickets_and_nobodys_name()
    {
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid(method: PaymentMethod.Transfer) with { Note = "from Odalys’s mother" });
        _till.Reprice(_street.Strung, 2600);
        var ticket = _till.Job(_street.Strung).Ticket;

        Erase();

        Assert.Equal($"2026-11-25|Transfer|2450||{ticket}|2450", _street.Records.Text(
            "SELECT paid_on || '|' || method || '|' || p.amount_minor || '|' || note || '|' || past_ticket || '|' || s.amount_minor FROM payment p JOIN payment_share s ON s.payment_id = p.id WHERE p.client_id IS NULL"));
        Assert.Equal(2, _street.Records.Count("charge_change", $"job_id IS NULL AND ticket = {ticket}"));
        Assert.Equal((0, 1), (_street.Records.Count("charge"), _street.Records.Count("past_job", $"ticket = {ticket} AND price_minor = 2600")));
    }

    [Fact]
    public void Bills_keep_their_numbers_and_amounts_and_lose_whose_they_were()
    {
        new BillStore(_street.Database, new ShopStore(_street.Database), _street.Clock).Make(Who.Shop, Party.Client(_street.Odalys), Street.Today);
        _street.Records.Change("UPDATE bill SET to_address = 'Quay 3'; UPDATE bill_line SET desk = 12");

        Erase();

        Assert.Equal(0, _street.Records.Count("bill", "to_address <> ''"));
        Assert.Equal("1||1001||2450", _street.Records.Text("SELECT number || '|' || to_name || '|' || ticket || '|' || whose || '|' || amount_minor FROM bill JOIN bill_line ON bill_id = id WHERE client_id IS NULL AND job_id IS NULL AND racket IS NULL AND desk IS NULL"));
    }

    [Fact]
    public void Payments_of_a_payer_who_pays_for_others_too_stay_theirs()
    {
        var academy = _till.Academy();
        _street.Records.Change("UPDATE client SET payer_id = @academy WHERE id = @Ewan", new { academy, _street.Ewan });
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid());

        Erase();

        Assert.Equal(1, _street.Records.Count("payment", $"payer_id = {academy}"));
    }

    [Fact]
    public void Last_client_of_a_payer_takes_the_payers_name_along()
    {
        _till.Academy();
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid());

        Erase();

        Assert.Equal((0, 1), (_street.Records.Count("payer"), _street.Records.Count("payment", "payer_id IS NULL AND client_id IS NULL")));
    }

    [Fact]
    public void Client_takes_away_what_they_pay_themselves_and_not_what_somebody_else_does()
    {
        _till.Payments.PayJob(Who.Shop, _street.Strung, Till.Paid(1000));
        Assert.Equal([1, 1, 1], Rows());

        _till.Academy();

        Assert.Equal([0, 1, 1], Rows());
    }

    private int[] Rows()
    {
        var sheets = new ExportStore(_street.Database).Read(_street.Odalys, (_, _) => { }).ToDictionary(s => s.Name);
        return [sheets["charge"].Rows.Count, sheets["payment"].Rows.Count, sheets["payment_share"].Rows.Count];
    }
}
