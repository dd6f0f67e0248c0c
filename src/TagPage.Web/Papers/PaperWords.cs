using TagPage.Core.Money;
using TagPage.Core.Text;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Papers;

/// <summary>What a bill and a receipt say in the language of whoever gets it. What somebody typed stays as it is.</summary>
public sealed class PaperWords(Language language)
{
    /// <param name="code">As it is kept on file; a language that clients are not written to in becomes English.</param>
    public static PaperWords In(string? code) => new(OwnPageWords.Fitting(Languages.OfOrEnglish(code)));

    /// <summary>A client’s receipts are in their language, those of somebody who pays for others in the shop’s.</summary>
    public static PaperWords For(string? payer, string clientLanguage, ShopDetails shop) => In(payer is null ? clientLanguage : shop.Language);

    public Language Language => language;

    public OwnPagePaperPhrases Say { get; } = OwnPageWords.Of(language).Paper;

    public string List(params IEnumerable<string> parts) => string.Join(language.Phrases.Time.Comma, parts.Where(part => part.Length > 0));

    public string Days(DateOnly from, DateOnly to) => from == to ? language.Day(from) : Say.Days.Fill(("from", language.Day(from)), ("to", language.Day(to)));

    public string On(string phrase, DateOnly day) => phrase.Fill(("day", language.DayInText(day)));

    /// <summary>A player with the racket’s number; empty for none.</summary>
    public string Whose(string player, int racket) => List(player, $"{racket}");

    public string Whose(BillLine line) => line switch
    {
        { Desk: { } desk, Racket: { } racket } => Say.Desk.Fill(("desk", $"{desk}"), ("player", line.Whose.Length > 0 ? line.Whose : Say.Junior), ("number", $"{racket}")),
        { Whose.Length: > 0, Racket: { } racket } => Whose(line.Whose, racket),
        _ => line.Whose,
    };

    public string Of(BillLine line, string currency) => line is { Restrings: { } restrings, Covers: { } covers } ? Restrings(restrings, covers) : Line(line.Kind, line.Words, line.Centimetres, line.MetreMinor, currency);

    /// <summary>Sold in advance.</summary>
    public string Restrings(int restrings, PrepaidCover covers) =>
        List(Say.Restrings.Fill(("n", $"{restrings}")), covers == PrepaidCover.Labour ? Say.CoversLabour : Say.CoversBoth);

    public string Of(ChargeLine line, string currency) => Line(line.Kind, line.Words, line.Centimetres, line.MetreMinor, currency);

    private string Line(ChargeKind kind, string words, int? centimetres, long? metreMinor, string currency)
    {
        var length = centimetres is { } cm && metreMinor is { } metre ? Say.Metres.Fill(("length", language.Number(cm / 100m)), ("price", language.Money(metre, currency))) : "";
        if (kind == ChargeKind.Extra && words.Length > 0)
            return words;
        var more = List(words, length);
        return more.Length > 0 ? Say.More.Fill(("what", Of(kind)), ("more", more)) : Of(kind);
    }

    private string Of(ChargeKind kind) => kind switch
    {
        ChargeKind.Whole => Say.Whole,
        ChargeKind.Visit => Say.Visit,
        ChargeKind.Labour => Say.Labour,
        ChargeKind.Strings => Say.Strings,
        ChargeKind.Mains => Say.Mains,
        ChargeKind.Crosses => Say.Crosses,
        ChargeKind.Grip => Say.Grip,
        ChargeKind.Grommets => Say.Grommets,
        ChargeKind.Rush => Say.Rush,
        ChargeKind.Extra => Say.Extra,
        ChargeKind.Prepaid => Say.Prepaid,
        _ => Say.Adjustment,
    };

    public string Of(PaymentMethod method) => method switch
    {
        PaymentMethod.Cash => Say.Cash,
        PaymentMethod.Card => Say.Card,
        PaymentMethod.Transfer => Say.Transfer,
        _ => Say.Before,
    };

    /// <summary>
    /// What each rate is worked out from, and what comes of it, so that all of it adds up to the total; nothing where prices hold no tax.
    /// </summary>
    public IEnumerable<(string, string)> Taxes(IEnumerable<TaxPart> parts, string country, string currency)
    {
        var name = SalesTaxes.Of(country) switch
        {
            SalesTax.Vat => Say.Vat,
            SalesTax.Consumption => Say.ConsumptionTax,
            _ => Say.Tax,
        };
        var rates = parts.Where(part => part.BasisPoints > 0 || part.Gross != 0).ToList();
        foreach (var part in rates.Any(part => part.BasisPoints > 0) ? rates : [])
        {
            var rate = language.Percent(part.BasisPoints / 100m);
            yield return (Say.Taxable.Fill(("rate", rate)), language.Money(part.Net, currency));
            yield return (language.Sentence(Say.TaxAmount.Fill(("tax", name), ("rate", rate))), language.Money(part.Amount, currency));
        }
    }
}
