namespace TagPage.Core.Money;

/// <summary>
/// What a line of a job’s price is for. Whole: a price agreed for everything. Visit: the same of work without new strings. Strings: mains and crosses of one set.
/// Adjustment: what makes the lines come to a price that was agreed. Prepaid: what a restring paid in advance takes off, below zero.
/// </summary>
public enum ChargeKind { Whole, Visit, Labour, Strings, Mains, Crosses, Grip, Grommets, Rush, Extra, Adjustment, Prepaid }
