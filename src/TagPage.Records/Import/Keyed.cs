namespace TagPage.Records.Import;

/// <summary>The rows of a file that other files refer to by their keys, in any case.</summary>
public sealed class Keyed<T> where T : class
{
    private readonly Dictionary<string, T> _byKey = new(StringComparer.OrdinalIgnoreCase);

    public List<T> Rows { get; } = [];

    /// <summary>False where the file was not sent or did not read at all; then nothing is said about keys that point at it.</summary>
    public bool IsReadable { get; set; }

    /// <summary>Adds a row; false where its key is another row's, which keeps it.</summary>
    public bool Add(string? key, T row)
    {
        Rows.Add(row);
        return key is null || _byKey.TryAdd(key, row);
    }

    public T? Find(string key) => _byKey.GetValueOrDefault(key);
}
