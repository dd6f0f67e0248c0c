namespace TagPage.Core.Money;

/// <summary>
/// What a line of a job's price is for. Whole: a price agreed for everything. Strings: mains and crosses of one set.
/// Adjustment: what makes the lines come to a price that was agreed.
/// </summary>
public enum ChargeKind { Whole, Labour, Strings, Mains, Crosses, Grip, Grommets, Rush, Extra, Adjustment }
