using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;

namespace TagPage.Web.Csv;

/// <summary>Reads a file of comma- or semicolon-separated values (RFC 4180) line by line against its sheet.</summary>
public sealed class SheetReader
{
    public const int MostRows = 200_000;

    /// <summary>In a line. Far more than any sheet has columns: spreadsheet programs write empty ones too.</summary>
    private const int MostCells = 1_000;

    private readonly Sheet _sheet;
    private readonly Problems _problems;
    private bool _strayQuote;

    private SheetReader(Sheet sheet, Problems problems) => (_sheet, _problems) = (sheet, problems);

    /// <summary>The file's rows; none, with the reasons among the problems, where it cannot be read at all.</summary>
    public static IEnumerable<SheetRow> Read(Sheet sheet, byte[] bytes, Problems problems) =>
        SheetText.Decode(sheet.File, bytes, problems) is { } text ? new SheetReader(sheet, problems).Rows(text) : [];

    private IEnumerable<SheetRow> Rows(string text)
    {
        using var budget = new RowBudget(text);
        using var parser = new CsvParser(budget, Configuration(text));
        var found = _problems.Count;
        var hasHeader = Next(parser, budget);
        if (_problems.Count > found)
            yield break;
        if (!hasHeader || Array.TrueForAll(parser.Record!, c => c.Trim().Length == 0))
        {
            _problems.Add(_sheet.File, "The file is empty. Its first line must name the columns.");
            yield break;
        }
        if (SheetHeader.Read(_sheet, parser.Record!, _problems) is not { } header)
            yield break;
        var rows = 0;
        for (var line = parser.RawRow + 1; Next(parser, budget); line = parser.RawRow + 1)
        {
            if (Cells(parser, header, line) is not { } cells)
                continue;
            if (++rows > MostRows)
            {
                _problems.Add(_sheet.File, $"The file has more than {MostRows} lines. Split it and send the parts one after the other.", line);
                yield break;
            }
            yield return new SheetRow(header, line, cells, _problems);
        }
    }

    /// <summary>
    /// Goes to the next line; false at the end, and with a problem where a line is too long or too wide to be taken apart:
    /// cells cost far more memory than they cost in the file.
    /// </summary>
    private bool Next(CsvParser parser, RowBudget budget)
    {
        var line = parser.RawRow + 1;
        budget.Renew();
        try
        {
            if (!parser.Read())
                return false;
        }
        catch (RowTooLongException)
        {
            _problems.Add(_sheet.File, "From here the line has more than 100,000 characters. It has too many columns, or a quotation mark that is never closed.", line);
            return false;
        }
        if (parser.Count > MostCells)
            _problems.Add(_sheet.File, "The line has more than 1,000 cells. Use the known columns only.", line);
        return parser.Count <= MostCells;
    }

    /// <summary>Null for an empty line, and for one that does not fit the header.</summary>
    private string[]? Cells(CsvParser parser, SheetHeader header, int line)
    {
        _strayQuote = false;
        var cells = parser.Record!;
        var width = Array.FindLastIndex(cells, c => c.Trim().Length > 0) + 1;
        if (_strayQuote)
            _problems.Add(_sheet.File, "There is a stray quotation mark here. Put the whole cell in quotation marks and double each one inside it.", line);
        else if (width > header.Width || (width > 0 && cells.Length < header.Width))
            _problems.Add(_sheet.File, $"This line has {Math.Max(width, cells.Length)} cells, but the header has {header.Width}. A cell with a comma, semicolon or line break in it needs quotation marks around it.", line);
        else if (width > 0)
            return cells;
        return null;
    }

    private CsvConfiguration Configuration(string text) => new(CultureInfo.InvariantCulture)
    {
        Delimiter = Delimiter(text),
        IgnoreBlankLines = false,
        BadDataFound = _ => _strayQuote = true,
    };

    /// <summary>Whichever of the two the header uses more often.</summary>
    private static string Delimiter(string text)
    {
        var header = text.AsSpan()[..(text.AsSpan().IndexOfAny('\r', '\n') is var end and >= 0 ? end : text.Length)];
        return header.Count(';') > header.Count(',') ? ";" : ",";
    }
}
