namespace TagPage.Records.Money;

/// <summary>The one who pays: a client, or a payer in their stead. The other number is null and in SQL equals nobody.</summary>
public sealed record Party
{
    private Party()
    {
    }

    public long? ClientId { get; private init; }

    public long? PayerId { get; private init; }

    public static Party Client(long id) => new() { ClientId = id };

    public static Party Payer(long id) => new() { PayerId = id };
}
