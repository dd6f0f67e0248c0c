using System.Net;
using MimeKit;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Who owes what, their account, bills and receipts.</summary>
public sealed class BillTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Visitor _runa;
    private readonly long _odalys, _job;

    public BillTests()
    {
        _shop.Records.Shop();
        (_odalys, _, _, _, _job) = _shop.Records.Family();
        _runa = _shop.Owner();
    }

    private string Account => $"/shop/money/client/{_odalys}";

    public void Dispose() => _shop.Dispose();

    private async Task<string> Write()
    {
        var account = await _runa.Open(Account);
        Assert.Contains("November 2026", account.Main, StringComparison.Ordinal);
        return (await _runa.Post(account, account.Form($"{Account}?handler=Bill"))).Location!;
    }

    [Fact]
    public async Task What_is_owed_leads_to_the_account_where_it_is_paid()
    {
        var owed = await _runa.Open("/shop/money");
        Assert.Contains("£24.50", owed.Main, StringComparison.Ordinal);
        Assert.Equal(Account, owed.Document.QuerySelector("main table a")!.GetAttribute("href"));

        await _runa.Send(await _runa.Open(Account), ("Input.Amount", "30,00"), ("Input.How", "Transfer"), ("Input.Note", "<i>mum</i>"));

        var account = await _runa.Open(Account);
        Assert.Contains("£5.50 in credit", account.Main, StringComparison.Ordinal);
        Assert.Contains("<i>mum</i>", account.Main, StringComparison.Ordinal);
        Assert.Equal(TestShop.Today, _shop.Get<JobStore>().Get(Who.Shop, _job)!.PaidOn);
    }

    [Fact]
    public async Task Credit_pays_the_next_racket_by_one_press()
    {
        await _runa.Send(await _runa.Open(Account), ("Input.Amount", "100"), ("Input.How", "Cash"));
        var next = _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_odalys, "Lena Ferran")));
        var account = await _runa.Open(Account);

        await _runa.Send(account, account.Form($"{Account}?handler=Credit"));

        Assert.Equal(TestShop.Today, _shop.Get<JobStore>().Get(Who.Shop, next)!.PaidOn);
    }

    [Theory]
    [InlineData("", "Enter an amount above zero.")]
    [InlineData("0", "Enter an amount above zero.")]
    [InlineData("1.005", "Enter an amount in GBP with two decimals at most, like 24.50.")]
    public async Task Account_takes_no_payment_of_nothing(string amount, string sentence)
    {
        var answer = await _runa.Send(await _runa.Open(Account), ("Input.Amount", amount), ("Input.How", "Cash"));

        Assert.Equal([sentence], answer.Errors);
        Assert.Equal(0, _shop.Records.Count("payment"));
    }

    [Fact]
    public async Task Bill_is_a_page_a_PDF_and_an_email_with_the_PDF()
    {
        var address = await Write();
        var page = await _runa.Open(address);
        foreach (var words in new[] { "Invoice 2026-0001", "Ferrygate Racket Bench", "Odalys Ferran", "Pim Ferran, 1", "£24.50" })
            Assert.Contains(words, page.Main, StringComparison.Ordinal);
        var pdf = await (await _runa.Get($"{address}?handler=Pdf")).Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);

        await _runa.Send(page, page.Form($"{address}?handler=Mail"));

        await _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        var mail = await MimeMessage.LoadAsync(Assert.Single(Directory.GetFiles(Path.Combine(_shop.Folder, "mail"), "*.eml")), TestContext.Current.CancellationToken);
        Assert.Equal(("Invoice 2026-0001 from Ferrygate Racket Bench", OnFile.CanaryMail), (mail.Subject, mail.To.Mailboxes.Single().Address));
        var attached = Assert.IsType<MimePart>(Assert.Single(mail.Attachments));
        Assert.Equal(("Invoice 2026-0001.pdf", "application/pdf"), (attached.FileName, attached.ContentType.MimeType));
        using var content = new MemoryStream();
        await attached.Content!.DecodeToAsync(content, TestContext.Current.CancellationToken);
        Assert.Equal("%PDF-"u8.ToArray(), content.ToArray()[..5]);
    }

    [Fact]
    public async Task Bill_its_email_and_its_file_are_in_the_clients_language_and_the_owner_reads_which_before()
    {
        _shop.Records.Change("UPDATE client SET language = 'de'");
        Assert.Contains("Written in Deutsch, their language on file", (await _runa.Open(Account)).Main, StringComparison.Ordinal);
        var address = await Write();
        var page = await _runa.Open(address);
        Assert.Contains("It is written in Deutsch, the client’s language on file that day.", page.Main, StringComparison.Ordinal);
        Assert.Equal("Rechnung 2026-0001", page.Document.QuerySelector("main .paper[lang=de] h1")!.TextContent);

        await _runa.Send(page, page.Form($"{address}?handler=Mail"));

        await _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        var mail = await MimeMessage.LoadAsync(Assert.Single(Directory.GetFiles(Path.Combine(_shop.Folder, "mail"), "*.eml")), TestContext.Current.CancellationToken);
        Assert.Equal(("Rechnung 2026-0001 von Ferrygate Racket Bench", "Rechnung 2026-0001.pdf"), (mail.Subject, Assert.IsType<MimePart>(Assert.Single(mail.Attachments)).FileName));
        Assert.Equal("Guten Tag Odalys Ferran,\n\nim Anhang finden Sie: Rechnung 2026-0001.\n\nFreundliche Grüße\nFerrygate Racket Bench", mail.TextBody!.ReplaceLineEndings("\n").Trim());
        var receipt = await _runa.Open($"/shop/money/receipt/{_job}");
        Assert.Equal($"Beleg zu Auftrag {_shop.Get<JobStore>().Get(Who.Shop, _job)!.Ticket}", receipt.Document.QuerySelector("main .paper[lang=de] h1")!.TextContent);
    }

    [Fact]
    public async Task Bill_says_how_much_string_by_the_metre_as_the_receipt_does_and_so_does_the_one_that_cancels_it()
    {
        _shop.Records.Change("DELETE FROM charge; INSERT INTO charge (job_id, kind, centimetres, metre_minor, amount_minor) VALUES (@_job, 'Strings', 1200, 83, 996)", new { _job });
        var address = await Write();
        var page = await _runa.Open(address);
        var counter = await _runa.Open((await _runa.Post(page, page.Form($"{address}?handler=Cancel"))).Location!);

        foreach (var paper in new[] { page, counter, await _runa.Open($"/shop/money/receipt/{_job}") })
            Assert.Contains("strings (12 m at £0.83 a metre)", paper.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Payers_bill_goes_to_the_payer()
    {
        _shop.Records.Change("INSERT INTO payer (id, name, mail) VALUES (1, 'Hall Academy', 'office@hall.example'); UPDATE client SET payer_id = 1, language = 'de'; UPDATE shop SET language = 'pt'");
        var account = await _runa.Open("/shop/money/payer/1");
        var address = (await _runa.Post(account, account.Form("/shop/money/payer/1?handler=Bill"))).Location!;
        var page = await _runa.Open(address);

        await _runa.Send(page, page.Form($"{address}?handler=Mail"));

        await _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        var mail = await MimeMessage.LoadAsync(Assert.Single(Directory.GetFiles(Path.Combine(_shop.Folder, "mail"), "*.eml")), TestContext.Current.CancellationToken);
        Assert.Equal("office@hall.example", mail.To.Mailboxes.Single().Address);
        Assert.Equal("Fatura 2026-0001 – Ferrygate Racket Bench", mail.Subject);
        Assert.Contains("Hall Academy", mail.TextBody, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cancelled_bill_says_so_and_leads_to_the_one_that_cancels_it()
    {
        var address = await Write();
        var page = await _runa.Open(address);

        var counter = await _runa.Open((await _runa.Post(page, page.Form($"{address}?handler=Cancel"))).Location!);

        Assert.Contains("-£24.50", counter.Main, StringComparison.Ordinal);
        Assert.Contains("cancelling 2026-0001", counter.Main, StringComparison.Ordinal);
        Assert.Contains("cancelled by", (await _runa.Open(address)).Main, StringComparison.Ordinal);
        await Write();
    }

    [Fact]
    public async Task Square_to_pay_stands_on_bills_in_euros_with_an_account_alone()
    {
        Assert.Null((await _runa.Open(await Write())).Document.QuerySelector("main .paper svg"));
        _shop.Records.Change("UPDATE shop SET currency = 'EUR'; INSERT INTO money_setting (id, iban) VALUES (1, 'DE89370400440532013000')");
        _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_odalys, "Lena Ferran")), strungOn: new(2026, 11, 2));

        var page = await _runa.Open(await Write());

        Assert.NotNull(page.Document.QuerySelector("main .paper svg[aria-label]"));
        Assert.Contains("DE89 3704 0044 0532 0130 00", page.Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("SELECT 1", "no account was entered when it was written")]
    [InlineData("INSERT INTO money_setting (id, iban) VALUES (1, 'DE89370400440532013000')", "for euros and Swiss francs only, and the amount is in GBP")]
    [InlineData("INSERT INTO money_setting (id, iban) VALUES (1, 'DE89370400440532013000'); UPDATE shop SET currency = 'CHF'", "into accounts in Switzerland and Liechtenstein only")]
    [InlineData("INSERT INTO money_setting (id, iban) VALUES (1, 'CH9300762011623852957'); UPDATE shop SET currency = 'CHF', country = 'CH'", "the shop’s address needs a postcode")]
    [InlineData("INSERT INTO money_setting (id, iban) VALUES (1, 'CH4431999123000889012'); UPDATE shop SET currency = 'EUR', country = 'CH'", "the shop’s address needs a postcode")]
    [InlineData("UPDATE job SET price_minor = 2450, paid_on = '2026-11-25'; INSERT INTO payment (id, client_id, paid_on, method, amount_minor, made_at, made_by) VALUES (1, 1, '2026-11-25', 'Cash', 2450, '2026-11-25T09:00:00.000Z', 'x'); INSERT INTO payment_share (payment_id, job_id, amount_minor, made_at, made_by) SELECT 1, id, 2450, '2026-11-25T09:00:00.000Z', 'x' FROM job", "nothing is left to pay")]
    public async Task Page_of_a_bill_says_why_it_has_no_square(string change, string why)
    {
        _shop.Records.Change(change);

        var page = await _runa.Open(await Write());

        Assert.Null(page.Document.QuerySelector("main .paper svg"));
        Assert.Contains("It has no square to pay with: ", page.Main, StringComparison.Ordinal);
        Assert.Contains(why, page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("square", page.Document.QuerySelector("main .paper")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Cancelled_bill_says_that_it_has_no_square_for_that()
    {
        var address = await Write();
        var page = await _runa.Open(address);
        var counter = await _runa.Open((await _runa.Post(page, page.Form($"{address}?handler=Cancel"))).Location!);

        foreach (var paper in new[] { counter, await _runa.Open(address) })
            Assert.Contains("because it is cancelled or cancels another one", paper.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Bill_to_a_Swiss_QR_account_has_a_square_with_a_reference_that_its_words_name_too()
    {
        _shop.Records.Change("INSERT INTO money_setting (id, iban) VALUES (1, 'CH4431999123000889012'); UPDATE shop SET currency = 'CHF', country = 'CH', street = 'Seestrasse 12', town = '8004 Zürich'");

        var page = await _runa.Open(await Write());

        Assert.NotNull(page.Document.QuerySelector("main .paper svg"));
        Assert.DoesNotContain("no square", page.Main, StringComparison.Ordinal);
        Assert.Matches(@"CH44 3199 9123 0008 8901 2, with the number 00 00000 00000 00012 02600 0001\d\.", page.Main);
    }

    [Fact]
    public async Task Prices_page_says_why_bills_will_have_no_square()
    {
        Assert.DoesNotContain("no square", (await _runa.Open("/shop/money/prices")).Main, StringComparison.Ordinal);
        _shop.Records.Change("INSERT INTO money_setting (id, iban) VALUES (1, 'DE89370400440532013000')");

        Assert.Contains("Bills have no square to pay with: banks’ apps read one for euros and Swiss francs only, and the amount is in GBP.", (await _runa.Open("/shop/money/prices")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Receipt_says_what_was_paid_and_what_is_left()
    {
        await _runa.Send(await _runa.Open($"/shop/jobs/paid/{_job}"), ("Input.How", "Card"), ("Input.Amount", "10"));

        var receipt = await _runa.Open($"/shop/money/receipt/{_job}");

        foreach (var words in new[] { "Receipt for ticket", "Paid, card, 25 Nov 2026", "-£10.00", "£14.50" })
            Assert.Contains(words, receipt.Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.OK, (await _runa.Get($"/shop/money/receipt/{_job}?handler=Pdf")).StatusCode);
    }

    [Fact]
    public async Task Looking_at_money_changes_nothing()
    {
        var bill = await Write();
        var before = _shop.Database.Dump();

        foreach (var path in new[] { "/shop/money", Account, bill, $"{bill}?handler=Pdf", $"/shop/money/receipt/{_job}", $"/shop/money/receipt/{_job}?handler=Pdf" })
            Assert.Equal(HttpStatusCode.OK, (await _runa.Get(path)).StatusCode);

        Assert.Equal(before, _shop.Database.Dump());
    }
}
