using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>Keys of one file and references to them from others; errors go among the problems of their row.</summary>
internal static class Keys
{
    public static void Add<T>(this Keyed<T> rows, SheetRow row, Column<string> column, T value) where T : class
    {
        var key = row.Get(column);
        if (!rows.Add(key, value))
            row.Refuse(column, $"“{Kinds.Clip(key!)}” is in this file twice. Give each line its own key.");
    }

    /// <summary>What a cell points at; null, with the reason among the problems, where there is no such key.</summary>
    /// <param name="rows">The rows it can refer to.</param>
    /// <param name="row">Where it stands.</param>
    /// <param name="column">Its column.</param>
    /// <param name="file">The name of the file that holds the keys.</param>
    public static T? Find<T>(this Keyed<T> rows, SheetRow row, Column<string> column, string file) where T : class
    {
        if (row.Get(column) is not { } key)
            return null;
        if (rows.Find(key) is { } found)
            return found;
        if (rows.IsReadable)
            row.Refuse(column, $"“{Kinds.Clip(key)}” is not in {file}. Add it there, or correct it here.");
        return null;
    }
}
