using System.Text;

namespace TagPage.Web.Csv;

/// <summary>A kind of CSV file: its name and what it can hold.</summary>
/// <param name="File">clients.csv</param>
/// <param name="Purpose">One line for people.</param>
/// <param name="Columns">In the order the template writes them.</param>
public sealed record Sheet(string File, string Purpose, IReadOnlyList<Column> Columns)
{
    /// <summary>What this program calls such a file where it gives one away; null where it gives none.</summary>
    public string? GivenAs { get; init; }

    /// <summary>Whether a file of this name is one, whatever its case.</summary>
    public bool IsNamed(string name) => File.Equals(name, StringComparison.OrdinalIgnoreCase) || name.Equals(GivenAs, StringComparison.OrdinalIgnoreCase);

    /// <summary>An empty file with its header, marked as UTF-8 for spreadsheet programs.</summary>
    public byte[] Template() => Write([]);

    /// <summary>A file with these rows, a value for each column in order.</summary>
    public byte[] Write(IEnumerable<IReadOnlyList<object?>> rows) =>
        [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(SheetText.Write(Columns.Select(c => c.Name), rows))];
}
