namespace TagPage.Web.Csv;

/// <summary>Where each of a sheet's columns is in the file.</summary>
public sealed class SheetHeader
{
    private readonly Dictionary<Column, int> _places = [];

    private SheetHeader(string file) => File = file;

    public string File { get; }

    public int Width { get; private init; }

    public bool Has(Column column) => _places.ContainsKey(column);

    public int? IndexOf(Column column) => _places.TryGetValue(column, out var index) ? index : null;

    /// <summary>Null, with the reasons among the problems, where the file cannot be read by this header.</summary>
    public static SheetHeader? Read(Sheet sheet, string[] cells, Problems problems)
    {
        var found = problems.Count;
        var width = Array.FindLastIndex(cells, c => c.Trim().Length > 0) + 1;
        var header = new SheetHeader(sheet.File) { Width = width };
        for (var i = 0; i < width; i++)
            header.Place(sheet, cells[i], i, problems);
        foreach (var column in sheet.Columns.Where(c => c.Needed && !header.Has(c)))
            problems.Add(new Problem(sheet.File, 1, column.Name, $"This column is missing. Add it: {column.Meaning}"));
        return problems.Count == found ? header : null;
    }

    private void Place(Sheet sheet, string name, int index, Problems problems)
    {
        var plain = Names.Plain(name);
        var column = sheet.Columns.FirstOrDefault(c => c.IsNamed(plain));
        var shown = Kinds.Clip(name.Trim());
        if (plain.Length == 0)
            problems.Add(File, $"Column {index + 1} has no name. Give it a name, or remove it.", 1);
        else if (column is null && plain == "id" && sheet.GivenAs is not null)
            return; // Counts the rows of the shop that gave the file away.
        else if (column is null)
            problems.Add(new Problem(File, 1, shown, $"This column is unknown. Known columns: {string.Join(", ", sheet.Columns.Select(c => c.Name))}."));
        else if (!_places.TryAdd(column, index))
            problems.Add(new Problem(File, 1, shown, "This column is here twice. Remove one of them."));
    }
}
