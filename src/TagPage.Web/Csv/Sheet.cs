using System.Text;

namespace TagPage.Web.Csv;

/// <summary>A kind of CSV file: its name and what it can hold.</summary>
/// <param name="File">clients.csv</param>
/// <param name="Purpose">One line for people.</param>
/// <param name="Columns">In the order the template writes them.</param>
public sealed record Sheet(string File, string Purpose, IReadOnlyList<Column> Columns)
{
    /// <summary>An empty file with its header, marked as UTF-8 for spreadsheet programs.</summary>
    public byte[] Template() =>
        [.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(string.Join(',', Columns.Select(c => c.Name)) + "\r\n")];
}
