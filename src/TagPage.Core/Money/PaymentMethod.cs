namespace TagPage.Core.Money;

/// <summary>How money came in. Before: it was paid before these records began, nobody knows how.</summary>
public enum PaymentMethod { Cash, Card, Transfer, Before }
