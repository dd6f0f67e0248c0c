using TagPage.Core.Strings;
using TagPage.Records.Stock;

namespace TagPage.Web.Words;

/// <summary>How much string there is.</summary>
public static class StockWords
{
    public static string Of(StockUnit unit) => unit == StockUnit.Set ? "sets" : "metres";

    /// <summary>"3.5 sets", "38.4 m"; below zero with a true minus.</summary>
    public static string Of(this StockLength length, long centimetres)
    {
        var amount = length.Amount(centimetres);
        var number = (amount < 0 ? "−" : "") + Formats.Number(Math.Abs(amount));
        return length.Unit == StockUnit.Metre ? number + " m" : number + (amount == 1 ? " set" : " sets");
    }

    public static string Left(StockRow row) => Of(row.Length, row.LeftCm);

    /// <summary>What the owner is told about a string that a job takes; null where there is enough.</summary>
    public static string? TooLittle(StockRow row) => row switch
    {
        { IsBelowZero: true } => $"{row.Name} is out of stock by your records ({Left(row)}). Count it.",
        { IsTooLittle: true } => $"{Left(row)} of {row.Name} left; the rackets that wait for it take {Of(row.Length, row.WaitingCm)}.",
        { IsLow: true } => $"{Left(row)} of {row.Name} left: time to buy.",
        _ => null,
    };

    public static string Of(StockMoveKind kind) => kind switch
    {
        StockMoveKind.Bought => "bought",
        StockMoveKind.Counted => "counted",
        _ => "used",
    };
}
