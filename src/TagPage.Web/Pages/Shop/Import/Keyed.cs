using TagPage.Web.Csv;

namespace TagPage.Web.Pages.Shop.Import;

/// <summary>The rows of a file that other files point at by their keys.</summary>
public sealed class Keyed<T>(string file) where T : class
{
    private readonly Dictionary<string, T> _byKey = new(StringComparer.OrdinalIgnoreCase);

    public List<T> Rows { get; } = [];

    /// <summary>False where the file was not sent or did not read at all; then nothing is said about keys that point at it.</summary>
    public bool IsReadable { get; set; }

    public void Add(SheetRow row, Column<string> column, T value)
    {
        Rows.Add(value);
        if (row.Get(column) is { } key && !_byKey.TryAdd(key, value))
            row.Refuse(column, $"“{Kinds.Clip(key)}” stands in this file twice. Give each line a key of its own.");
    }

    /// <summary>What a cell points at; null, with the reason among the problems, where there is no such key.</summary>
    public T? Find(SheetRow row, Column<string> column)
    {
        if (row.Get(column) is not { } key)
            return null;
        if (_byKey.TryGetValue(key, out var value))
            return value;
        if (IsReadable)
            row.Refuse(column, $"“{Kinds.Clip(key)}” does not stand in {file}. Add it there, or correct it here.");
        return null;
    }
}
