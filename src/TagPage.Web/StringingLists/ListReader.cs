using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Shop;

namespace TagPage.Web.StringingLists;

/// <summary>Reads a list by what its columns hold. Its own evidence comes first, then what the owner said; what is left open is asked. Knows no database.</summary>
public sealed class ListReader
{
    private readonly ListTable _table;
    private readonly ListSettings _settings;
    private readonly ShopDetails _shop;
    private readonly DateOnly _today;
    private readonly TensionUnit? _unitOfHeading;
    private DayOrder? _days;
    private DayCount? _counted;
    private DecimalMark? _decimals;
    private TensionUnit? _unit;

    private ListReader(ListTable table, ListSettings settings, ShopDetails shop, DateOnly today)
    {
        (_table, _settings, _shop, _today) = (table, settings, shop, today);
        _unitOfHeading = Indices(ListColumn.Tension).Select(i => TensionText.UnitIn(table.Headings[i])).FirstOrDefault();
    }

    public static ListReading Read(ListTable table, ListSettings settings, ShopDetails shop, DateOnly today) => new ListReader(table, settings, shop, today).ReadAll();

    private ListReading ReadAll()
    {
        var days = Days();
        var counted = Counted();
        var decimals = Decimals();
        var unit = Units();
        return new ListReading
        {
            Days = days,
            Counted = counted,
            Decimals = decimals,
            Unit = unit,
            LacksSport = _settings.Sport is null && _table.Rows.Any(row => row.Wrong is null && SportWords.Read(Cell(row, ListColumn.Sport)) is null),
            Lines = [.. _table.Rows.Select(row => LineReader.Read(row, _table, _settings, new LineHabits(_days, _counted, _decimals, _unit ?? _shop.TensionUnit, _unitOfHeading), _shop, _today))],
        };
    }

    private OpenHabit<DayOrder>? Days()
    {
        var cells = Cells(ListColumn.Day).Select(text => (Text: text, Reading: DayText.Read(text, _today))).Where(cell => cell.Reading is { IsEvidence: true }).ToList();
        var left = Evidence.Left(cells.Select(cell => cell.Reading!.ByOrder.Keys), Enum.GetValues<DayOrder>());
        var open = cells.Find(cell => cell.Reading!.Clear is null);
        _days = left is [var only] ? only : _settings.Days is { } said && left.Contains(said) ? said : null;
        return open.Text is null || _days is not null ? null : new OpenHabit<DayOrder>(left, open.Text);
    }

    /// <summary>Numbers in the column of days count days only if all of them may, and one can be nothing else; the list's newest ones tell since when.</summary>
    private OpenHabit<DayCount>? Counted()
    {
        var cells = Cells(ListColumn.Day).Where(SerialDay.IsNumber).Select(text => (Text: text, Reading: SerialDay.Read(text, _today))).ToList();
        if (cells.Count == 0 || cells.Any(cell => cell.Reading.Count == 0))
            return null;
        var left = Evidence.Left(cells.Select(cell => cell.Reading.Keys), [DayCount.Since1900, DayCount.Since1904]);
        _counted = left is [var only] && cells.Any(cell => SerialDay.IsCounted(cell.Text)) ? only
            : _settings.Counted is { } said && (said == DayCount.NoDays || left.Contains(said)) ? said : null;
        return _counted is not null ? null : new OpenHabit<DayCount>([.. left, DayCount.NoDays], cells.Find(cell => cell.Reading.Count > 1).Text ?? cells[0].Text);
    }

    private OpenHabit<DecimalMark>? Decimals()
    {
        var cells = Cells(ListColumn.Price).Select(text => (Text: text, Reading: AmountText.Read(text))).Where(cell => cell.Reading.Count > 0).ToList();
        var left = Evidence.Left(cells.Where(cell => cell.Reading.Count == 1).Select(cell => cell.Reading.Keys), Enum.GetValues<DecimalMark>());
        var open = cells.Find(cell => !AmountText.IsClear(cell.Reading));
        _decimals = left is [var only] ? only : _settings.Decimals;
        return open.Text is null || _decimals is not null ? null : new OpenHabit<DecimalMark>(left, open.Text);
    }

    /// <summary>A number that is usual in one unit only speaks for it.</summary>
    private OpenHabit<TensionUnit>? Units()
    {
        if (_unitOfHeading is not null)
            return null;
        var cells = _table.Rows.Where(row => row.Wrong is null && TensionText.UnitIn(Cell(row, ListColumn.TensionUnit)) is null)
            .Select(row => (Text: Cell(row, ListColumn.Tension), Sport: SportWords.Read(Cell(row, ListColumn.Sport)) ?? _settings.Sport))
            .Where(cell => cell.Sport is not null)
            .Select(cell => (cell.Text, cell.Sport, Reading: TensionText.Read(cell.Text))).Where(cell => cell.Reading is { Unit: null }).ToList();
        var left = Evidence.Left(cells.Select(cell => Enum.GetValues<TensionUnit>().Where(unit => TensionCheck.Of(cell.Sport!.Value, new Tension(cell.Reading!.Mains, unit)) == TensionVerdict.Usual)), Enum.GetValues<TensionUnit>());
        _unit = left is [var only] ? only : _settings.Unit;
        return cells.Count == 0 || _unit is not null ? null : new OpenHabit<TensionUnit>(left, cells[0].Text);
    }

    private IEnumerable<int> Indices(ListColumn column) => Enumerable.Range(0, _settings.Columns.Count).Where(i => _settings.Columns[i] == column);

    private IEnumerable<string> Cells(ListColumn column) => _table.Rows.Where(row => row.Wrong is null).Select(row => Cell(row, column)).Where(text => text.Length > 0);

    private string Cell(ListTable.Row row, ListColumn column) => LineReader.Cell(row, _settings, column);
}
