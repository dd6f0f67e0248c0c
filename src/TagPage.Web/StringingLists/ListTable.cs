using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using TagPage.Web.Csv;

namespace TagPage.Web.StringingLists;

/// <summary>A list taken apart into cells, and the lines that could not be.</summary>
public sealed class ListTable
{
    public const int MostRows = 200_000;
    public const int MostColumns = 60;

    /// <param name="Line">Where it begins, counted from 1.</param>
    /// <param name="Cells">As many as there are headings.</param>
    /// <param name="Wrong">Why it cannot be taken apart; null where it was.</param>
    public sealed record Row(int Line, IReadOnlyList<string> Cells, string? Wrong = null);

    private bool _strayQuote;

    private ListTable()
    {
    }

    public IReadOnlyList<string> Headings { get; private set; } = [];

    /// <summary>False where the first line is a stringing already; the columns are then numbered.</summary>
    public bool HasHeadings { get; private set; } = true;

    public List<Row> Rows { get; } = [];

    /// <summary>Why there is no table; null where there is one.</summary>
    public string? Wrong { get; private set; }

    public static ListTable Of(string text)
    {
        var table = new ListTable();
        table.Read(text);
        return table;
    }

    private void Read(string text)
    {
        using var budget = new RowBudget(text);
        using var parser = new CsvParser(budget, new CsvConfiguration(CultureInfo.InvariantCulture)
        {
            Delimiter = Delimiter(text),
            IgnoreBlankLines = false,
            BadDataFound = _ => _strayQuote = true,
        });
        try
        {
            while (Wrong is null && Next(parser, budget) is { } row)
                Take(row);
        }
        catch (RowTooLongException)
        {
            Wrong = $"From line {parser.RawRow + 1} on there are more than 100,000 characters in one line: a quotation mark is never closed.";
        }
        Wrong ??= Headings.Count == 0 ? "The file is empty." : Rows.Count == 0 ? "The file has headings and no stringing." : null;
    }

    private Row? Next(CsvParser parser, RowBudget budget)
    {
        budget.Renew();
        _strayQuote = false;
        var line = parser.RawRow + 1;
        return parser.Read() ? new Row(line, [.. parser.Record!.Select(cell => FormulaGuard.Strip(cell.Trim()).Trim())], _strayQuote ? "There is a stray quotation mark here. Put the whole cell in quotation marks and double each one inside it." : null) : null;
    }

    private void Take(Row row)
    {
        var width = 1 + (row.Cells as List<string> ?? [.. row.Cells]).FindLastIndex(cell => cell.Length > 0);
        if (width == 0)
            return;
        if (Headings.Count == 0)
            Begin(row, width);
        else if (Rows.Count >= MostRows)
            Wrong = $"The file has more than {MostRows} lines. Split it and send the parts one after the other.";
        else
            Rows.Add(Fitted(row, width));
    }

    private void Begin(Row row, int width)
    {
        if (width > MostColumns)
        {
            Wrong = $"The first line has {width} cells; at most {MostColumns} are read.";
            return;
        }
        HasHeadings = !row.Cells.Any(cell => DayText.Read(cell) is not null || SerialDay.IsCounted(cell));
        Headings = [.. Enumerable.Range(0, width).Select(i => HasHeadings && row.Cells[i].Length > 0 ? row.Cells[i] : $"Column {i + 1}")];
        if (!HasHeadings)
            Rows.Add(Fitted(row, width));
    }

    private Row Fitted(Row row, int width) => row with
    {
        Cells = [.. Enumerable.Range(0, Math.Max(Headings.Count, width)).Select(i => i < row.Cells.Count ? row.Cells[i] : "")],
        Wrong = row.Wrong ?? (width > Headings.Count ? $"This line has {width} cells, but the first one has {Headings.Count}. A cell with a separator or a line break in it needs quotation marks around it." : null),
    };

    /// <summary>Whichever of the three the first line uses most, outside quotation marks.</summary>
    private static string Delimiter(string text)
    {
        var (counts, quoted) = (new Dictionary<char, int> { [','] = 0, [';'] = 0, ['\t'] = 0 }, false);
        foreach (var c in text.AsSpan().TrimStart("\r\n"))
        {
            if (c == '"')
                quoted = !quoted;
            else if (!quoted && c is '\r' or '\n')
                break;
            else if (!quoted && counts.TryGetValue(c, out var count))
                counts[c] = count + 1;
        }
        return counts.MaxBy(pair => pair.Value).Key.ToString();
    }
}
