namespace TagPage.Web.Words;

/// <summary>A racket's public page.</summary>
public sealed record TagPhrases
{
    public required string Headline { get; init; }
    public required string Past { get; init; }
    public required string NoStrings { get; init; }
    public required string NotStrungYet { get; init; }
    public required string NothingDue { get; init; }
    public required string By { get; init; }
    public required string WasDue { get; init; }
    public required string CameOut { get; init; }
    public required string Begins { get; init; }
    public required string NotInPlay { get; init; }
    public required string Life { get; init; }
    public required string LastDay { get; init; }
    public required string Used { get; init; }
    public required string StateGood { get; init; }
    public required string StateDueSoon { get; init; }
    public required string StatePast { get; init; }
    public required string StateNoStrings { get; init; }
    public required string StateNew { get; init; }
    public required string StateNotInPlay { get; init; }
    public required string Loss { get; init; }
    public required string LossSlow { get; init; }
    public required string LossPast { get; init; }
    public required string LossHalf { get; init; }
    public required string LossLine { get; init; }
    public required string Tape { get; init; }
    public required string CallShop { get; init; }
    public required string AddToCalendar { get; init; }
    public required string ArmCaution { get; init; }
    public required string StrungNow { get; init; }
    public required string LastStrings { get; init; }
    public required string Elsewhere { get; init; }
    public required string Mains { get; init; }
    public required string Crosses { get; init; }
    public required string All { get; init; }
    public required string Strung { get; init; }
    public required string OnePiece { get; init; }
    public required string PreStretched { get; init; }
    public required string Measured { get; init; }
    public required string RightAfter { get; init; }
    public required string OnGauge { get; init; }
    public required string Before { get; init; }
    public required string Tension { get; init; }
    public required string Strings { get; init; }
    public required string Reading { get; init; }
    public required Counted Earlier { get; init; }
    public required string YoursHeading { get; init; }
    public required string YoursLink { get; init; }
    public required string ShopHelps { get; init; }
    public required string MarkedLost { get; init; }
    public required string LostHeading { get; init; }
    public required string LostText { get; init; }
    public required string FoundButton { get; init; }
    public required string Footer { get; init; }
    public required string TypeAnother { get; init; }
    public required string Retired { get; init; }
    public required string Unassigned { get; init; }
    public required string Refused { get; init; }
    public required string RefusedHint { get; init; }
    public required string CalendarSummary { get; init; }
    public required string Language { get; init; }
}
