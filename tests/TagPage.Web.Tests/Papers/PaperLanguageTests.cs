using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using TagPage.Core.Money;
using TagPage.Core.Text;
using TagPage.Labels.Papers;
using TagPage.Labels.Tests.Cast;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Prepaid;
using TagPage.Records.Shop;
using TagPage.Web.Papers;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Papers;

/// <summary>
/// Bills and receipts in all languages, read back from the PDF with poppler. Words that tax law asks for are those of the VAT directive,
/// 2006/112/EC, Article 226: German as datenbank.nwb.de prints it, French as lawyers quote it, Portuguese as Article 36 of the country’s own
/// tax code says it after the directive; English, Spanish and Italian from memory. Japanese and Chinese from memory.
/// </summary>
[Long]
public sealed partial class PaperLanguageTests
{
    public static TheoryData<string> Codes => [.. Languages.All.Select(l => l.Code)];

    [Theory]
    [InlineData("en", "Invoice 2026-0007", "Taxable amount at 20%", "VAT at 20%", "Total", "3 Nov 2026", "€1,234.50")]
    [InlineData("es", "Factura 2026-0007", "Base imponible al 20 %", "IVA al 20 %", "Importe total", "3 nov 2026", "1.234,50 €")]
    [InlineData("fr", "Facture 2026-0007", "Base d’imposition à 20 %", "TVA à 20 %", "Montant total", "3 nov. 2026", "1 234,50 €")]
    [InlineData("de", "Rechnung 2026-0007", "Steuerbemessungsgrundlage zu 20 %", "Mehrwertsteuer zu 20 %", "Gesamtbetrag", "3. Nov. 2026", "1.234,50 €")]
    [InlineData("it", "Fattura 2026-0007", "Base imponibile, aliquota 20%", "IVA, aliquota 20%", "Totale", "3 nov 2026", "1.234,50 €")]
    [InlineData("pt", "Fatura 2026-0007", "Valor tributável à taxa de 20%", "IVA à taxa de 20%", "Valor total", "3 nov. 2026", "1 234,50 €")]
    [InlineData("ja", "請求書 2026-0007", "20%対象（税抜）", "付加価値税（20%）", "合計", "2026年11月3日", "€1,234.50")]
    [InlineData("zh", "账单 2026-0007", "不含税金额（税率 20%）", "增值税（税率 20%）", "合计", "2026年11月3日", "€1,234.50")]
    public void Bill_has_the_languages_own_words_days_and_amounts(string code, params string[] words)
    {
        var text = Text(BillPaper.Of(Bill(code)));

        Assert.All(words, word => Assert.Contains(Tight(word), Tight(text), StringComparison.Ordinal));
        Assert.Contains(Tight(words[0]), Tight(BillPaper.FileName(Bill(code))), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void No_English_word_is_left_and_nothing_typed_is_lost(string code)
    {
        foreach (var sheet in new[] { BillPaper.Of(Bill(code)), BillPaper.Of(Counter(code)), ReceiptPaper.Of([Ticket(code)], Shop, new PriceList()), ReceiptPaper.Of([Ticket(code), Ticket(code)], Shop, new PriceList()),
            ReceiptPaper.Of(Sale(code, PrepaidCover.Labour), Shop, new PriceList { TaxNumber = "模板" }), ReceiptPaper.Of(Sale(code, PrepaidCover.LabourAndStrings), Shop, new PriceList { TaxNumber = "模板" }), BillPaper.Of(OfSale(code)) })
        {
            var text = Text(sheet);
            Assert.Contains("Ferrygate", text, StringComparison.Ordinal);
            Assert.Contains("Odalys Ferrán", text, StringComparison.Ordinal);
            Assert.Contains("模板", text, StringComparison.Ordinal);
            Assert.Contains(Tight(sheet.Title), Tight(text), StringComparison.Ordinal);
            foreach (var said in sheet.Rows.Select(row => row.Text).Concat(sheet.Facts.Concat(sheet.Sums).SelectMany(pair => new[] { pair.Name, pair.Value })).Concat(sheet.Notes))
                Assert.Contains(Tight(said), Tight(text), StringComparison.Ordinal);
            if (code != "en")
                Assert.Empty(Words(text).Intersect(EnglishAlone(code)));
        }
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Amounts_are_the_same_to_the_cent_in_every_language(string code)
    {
        Assert.Equal(Digits(BillPaper.Of(Bill("en"))), Digits(BillPaper.Of(Bill(code))));
        Assert.Equal(Digits(ReceiptPaper.Of([Ticket("en")], Shop, new PriceList())), Digits(ReceiptPaper.Of([Ticket(code)], Shop, new PriceList())));
        Assert.Equal("1234.50", BillPaper.Of(Bill(code)).Square!.Payload.Split('\n')[7].TrimEnd('\r')[3..]);
    }

    [Fact]
    public void English_words_would_be_noticed() => Assert.NotEmpty(Words(Text(BillPaper.Of(Bill("en")))).Intersect(EnglishAlone("de")));

    [Fact]
    public void Receipt_for_what_somebody_else_pays_is_in_the_shops_language()
    {
        var shop = Shop with { Language = "fr" };
        var ticket = Ticket("de");

        Assert.Equal("Beleg zu Auftrag 1001", ReceiptPaper.Of([ticket], shop, new PriceList()).Title);
        Assert.Equal("Reçu de la commande 1001", ReceiptPaper.Of([ticket with { Job = ticket.Job with { Payer = "Club" } }], shop, new PriceList()).Title);
    }

    [Theory]
    [InlineData("GB", "VAT at 20%")]
    [InlineData("JP", "Consumption tax at 20%")]
    [InlineData("US", "Tax at 20%")]
    [InlineData("", "Tax at 20%")]
    public void Tax_is_called_what_the_shops_country_calls_it(string country, string name)
    {
        var bill = Bill("en");

        Assert.Contains(name, BillPaper.Of(bill with { SenderJson = bill.SenderJson.Replace("\"DE\"", $"\"{country}\"", StringComparison.Ordinal) }).Sums.Select(sum => sum.Name));
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Bases_and_taxes_add_up_to_the_total_where_a_part_bears_no_tax(string code)
    {
        var sheet = BillPaper.Of(Charging(code, (6319, 2000), (2800, 0), (2800, 0)));
        var amounts = Amounts(sheet);

        Assert.Equal([5266, 1053, 5600, 0, 11919], amounts);
        Assert.Equal(amounts[^1], amounts[..^1].Sum());
        Assert.Equal(PaperWords.In(code).Say.Taxable.Fill(("rate", PaperWords.In(code).Language.Percent(0))), sheet.Sums[2].Name);
        Assert.All(sheet.Sums, sum => Assert.Contains(Tight(sum.Name), Tight(Text(sheet)), StringComparison.Ordinal));
    }

    [Fact]
    public void Bill_without_any_tax_has_its_total_alone() => Assert.Equal([5600], Amounts(BillPaper.Of(Charging("en", (2800, 0), (2800, 0)))));

    private static BillRow Charging(string code, params (long Minor, int TaxBp)[] lines) => Bill(code) with
    {
        PaidMinor = 0,
        TotalMinor = lines.Sum(line => line.Minor),
        Lines = [.. lines.Select((line, i) => new BillLine { JobId = i, Ticket = 1001 + i, StrungOn = new(2026, 11, 3), Whose = "Pim Ferrán", Racket = 2, Kind = ChargeKind.Whole, AmountMinor = line.Minor, TaxBp = line.TaxBp })],
    };

    private static long[] Amounts(Sheet sheet) => [.. sheet.Sums.Select(sum => long.Parse(string.Concat(sum.Value.Where(char.IsAsciiDigit)), CultureInfo.InvariantCulture))];

    private static BillRow Bill(string code) => new()
    {
        Id = 1,
        Year = 2026,
        Number = 7,
        ClientId = 1,
        ToName = "Odalys Ferrán",
        FromOn = new(2026, 11, 1),
        ToOn = new(2026, 11, 30),
        IssuedOn = new(2026, 11, 3),
        Currency = "EUR",
        Language = code,
        PaidMinor = 1000,
        TotalMinor = 124450,
        SenderJson = """{"Name":"Ferrygate","Street":"Kai 3","Town":"10115 Berlin","Country":"DE","TaxNumber":"DE000000000","Iban":"DE89370400440532013000","AccountName":"Ferrygate"}""",
        Lines = [.. Enum.GetValues<ChargeKind>().SelectMany((kind, i) => new[]
        {
            new BillLine { JobId = i, Ticket = 1001 + i, StrungOn = new(2026, 11, 3), IsVisit = kind == ChargeKind.Visit, Whose = i % 3 == 2 ? "" : "Pim Ferrán", Racket = 2, Desk = i % 3 == 0 ? null : 12, Kind = kind,
                AmountMinor = kind == ChargeKind.Labour ? 124450 : 0, TaxBp = 2000, Centimetres = kind == ChargeKind.Mains ? 650 : null, MetreMinor = kind == ChargeKind.Mains ? 125 : null },
            new BillLine { JobId = i, Ticket = 1001 + i, StrungOn = new(2026, 11, 3), Whose = "Pim Ferrán", Racket = 2, Kind = ChargeKind.Extra, Words = "Schablone – 模板", TaxBp = 0 },
        })],
    };

    private static BillRow Counter(string code) => Bill(code) with { CancelsId = 2, CancelsYear = 2026, CancelsNumber = 6 };

    private static BillRow OfSale(string code) => Bill(code) with
    {
        Lines = [new BillLine { PrepaidId = 1, Restrings = 5, Covers = PrepaidCover.Labour, StrungOn = new(2026, 11, 3), Kind = ChargeKind.Prepaid, AmountMinor = 124450, TaxBp = 2000 }],
        ToAddress = "模板",
    };

    private static PrepaidStore.Sale Sale(string code, PrepaidCover covers) =>
        new() { BoughtOn = new(2026, 11, 3), Restrings = 5, Covers = covers, AmountMinor = 8000, TaxBp = 1900, Name = "Odalys Ferrán", Language = code };

    private static ShopDetails Shop => new() { Name = "Ferrygate", Country = "AT", Currency = "EUR", Language = "it" };

    private static ReceiptPaper.Ticket Ticket(string code) => new(
        new JobRow { Ticket = 1001, Client = "Odalys Ferrán", ClientLanguage = code, Player = "Pim Ferrán", Number = 2, StrungOn = new(2026, 11, 8), CollectedOn = new(2026, 11, 11), LaidMinor = 1000 },
        [new ChargeLine { Kind = ChargeKind.Labour, AmountMinor = 1850, TaxBp = 1900 }, new ChargeLine { Kind = ChargeKind.Grip, Words = "Schablone – 模板", AmountMinor = 650, TaxBp = 1900 }],
        [.. Enum.GetValues<PaymentMethod>().Select((method, i) => new PaymentStore.Row { Id = i + 1, Method = method, PaidOn = new(2026, 11, 8), LaidMinor = 250 })]);

    private static List<string> Digits(Sheet sheet) =>
        [.. sheet.Rows.Select(row => row.Amount).Concat(sheet.Sums.Select(sum => sum.Value)).Append(sheet.SquareWords.Count > 1 ? sheet.SquareWords[1] : "").Select(amount => string.Concat(amount.Where(c => char.IsAsciiDigit(c) || c == '-')))];

    private static string Text(Sheet sheet) => Tools.InFolder(folder =>
    {
        File.WriteAllBytes(Path.Combine(folder, "paper.pdf"), SheetPdf.Of(sheet));
        return Tools.Run(Tools.Poppler("pdftotext"), folder, "-layout", "paper.pdf", "-");
    });

    /// <summary>Without blanks and hyphens that only break lines, and without ligatures.</summary>
    private static string Tight(string text) => string.Concat(text.Normalize(NormalizationForm.FormKC).Where(c => !char.IsWhiteSpace(c) && c != '\u00AD'));

    private static IEnumerable<string> Words(string text) => Letters().Matches(text).Select(m => m.Value.ToLowerInvariant()).Distinct();

    /// <summary>Words of English papers that papers in another language have no use for.</summary>
    private static IEnumerable<string> EnglishAlone(string code) => Phrases("en").Except(Phrases(code));

    private static List<string> Phrases(string code)
    {
        using var stream = typeof(Language).Assembly.GetManifestResourceStream($"TagPage.Web.Words.OwnPage.{code}.json")!;
        return [.. JsonNode.Parse(stream)!["paper"]!.AsObject().Where(phrase => !phrase.Key.StartsWith("mail", StringComparison.Ordinal))
            .SelectMany(phrase => Words(Braces().Replace(phrase.Value!.GetValue<string>(), " ")))];
    }

    [GeneratedRegex(@"\p{L}{2,}")]
    private static partial Regex Letters();

    [GeneratedRegex(@"\{\w+\}")]
    private static partial Regex Braces();
}
