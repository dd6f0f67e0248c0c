namespace TagPage.Web.Csv;

/// <summary>One line of a sheet, read cell by cell; what does not read goes among the problems.</summary>
public sealed class SheetRow(SheetHeader header, int line, string[] cells, Problems problems)
{
    private readonly HashSet<Column> _refused = [];

    /// <summary>Where the record begins, counted from 1 with the header.</summary>
    public int Line => line;

    /// <summary>The cell's value; null when it is empty or was refused.</summary>
    public T? Get<T>(Column<T> column)
    {
        var text = Text(column);
        if (text.Length == 0)
        {
            if (column.Needed && header.Has(column))
                Refuse(column, $"Fill this in: {column.Takes}.");
            return default;
        }
        var cell = column.Kind.Read(text);
        if (cell.Wrong is not null)
            Refuse(column, cell.Wrong);
        return cell.Value;
    }

    public bool IsEmpty(Column column) => Text(column).Length == 0;

    public bool IsRefused(Column column) => _refused.Contains(column);

    /// <summary>Notes what is wrong with a cell; the first reason stands.</summary>
    public void Refuse(Column column, string sentence)
    {
        if (_refused.Add(column))
            problems.Add(new Problem(header.File, line, column.Name, sentence));
    }

    private string Text(Column column) =>
        header.IndexOf(column) is { } index && index < cells.Length ? FormulaGuard.Strip(cells[index].Trim(' ')).Trim() : "";
}
