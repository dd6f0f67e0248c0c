namespace TagPage.Web.Words.OwnPage;

/// <summary>
/// Bills and receipts, and the email that carries a bill. What tax law asks a bill to say is named as in the VAT directive,
/// 2006/112/EC, Article 226: docs/decisions.md says where each language’s word was read.
/// </summary>
public sealed record OwnPagePaperPhrases
{
    public required string Bill { get; init; }
    public required string Cancelling { get; init; }
    public required string PageOf { get; init; }
    public required string Number { get; init; }
    public required string Date { get; init; }
    public required string StrungDays { get; init; }
    public required string WorkDays { get; init; }
    public required string Days { get; init; }
    public required string TaxNumber { get; init; }
    public required string Ticket { get; init; }
    public required string StrungOn { get; init; }
    public required string DoneOn { get; init; }
    public required string CollectedOn { get; init; }
    public required string Desk { get; init; }
    public required string Junior { get; init; }
    public required string Whole { get; init; }
    public required string Labour { get; init; }
    public required string Strings { get; init; }
    public required string Mains { get; init; }
    public required string Crosses { get; init; }
    public required string Grip { get; init; }
    public required string Grommets { get; init; }
    public required string Rush { get; init; }
    public required string Extra { get; init; }
    public required string Adjustment { get; init; }
    public required string Prepaid { get; init; }
    public required string Visit { get; init; }
    public required string Metres { get; init; }
    public required string More { get; init; }
    public required string Taxable { get; init; }
    public required string TaxAmount { get; init; }
    public required string Vat { get; init; }
    public required string ConsumptionTax { get; init; }
    public required string Tax { get; init; }
    public required string Total { get; init; }
    public required string PaidAlready { get; init; }
    public required string ToPay { get; init; }
    public required string Scan { get; init; }
    public required string ForBill { get; init; }
    public required string Payee { get; init; }
    public required string TransferText { get; init; }
    public required string TakesBack { get; init; }
    public required string PleasePay { get; init; }
    public required string Receipt { get; init; }
    public required string Receipts { get; init; }
    public required string Racket { get; init; }
    public required string Strung { get; init; }
    public required string Done { get; init; }
    public required string Collected { get; init; }
    public required string Paid { get; init; }
    public required string Cash { get; init; }
    public required string Card { get; init; }
    public required string Transfer { get; init; }
    public required string Before { get; init; }
    public required string Restrings { get; init; }
    public required string CoversLabour { get; init; }
    public required string CoversBoth { get; init; }
    public required string PrepaidReceipt { get; init; }
    public required string Bought { get; init; }
    public required string MailSubject { get; init; }
    public required string MailBody { get; init; }
}
