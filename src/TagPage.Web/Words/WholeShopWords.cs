using TagPage.Records.WholeShop;

namespace TagPage.Web.Words;

/// <summary>Why the records of a shop that moved do not fit.</summary>
public static class WholeShopWords
{
    public static string Of(ShopFileWrong wrong) => $"{wrong.File}.csv{(wrong.Line > 0 ? $", line {wrong.Line}" : "")}{(wrong.Column.Length > 0 ? $", {Csv.Kinds.Clip(wrong.Column)}" : "")}: {Why(wrong.Why)} Nothing was taken in.";

    private static string Why(ShopFileFault why) => why switch
    {
        ShopFileFault.FileMissing => "the file is missing.",
        ShopFileFault.UnknownColumn => "this column is unknown. The file may come from another version of the program.",
        ShopFileFault.MissingColumn => "this column is missing. The file may come from another version of the program.",
        ShopFileFault.NoNumber => "this is no number.",
        ShopFileFault.NoBytes => "this is no picture in Base64.",
        ShopFileFault.NoFile => "the file that this names is missing or damaged.",
        ShopFileFault.CellsMissing => "the line has more or fewer cells than the first one.",
        ShopFileFault.RefersToNothing => "the record refers to one that is in none of the files.",
        _ => "the line holds something that cannot be, or that another line has already.",
    };
}
