using System.Globalization;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;
using TagPage.Web.Import;
using TagPage.Web.Words;

namespace TagPage.Web.StringingLists;

/// <summary>How a list writes; what is null stays unread where it matters.</summary>
public sealed record LineHabits(DayOrder? Days, DayCount? Counted, DecimalMark? Decimals, TensionUnit Unit, TensionUnit? UnitOfHeading);

/// <summary>Reads one line. What cannot be read goes into the note; what a stringing cannot do without refuses the line.</summary>
internal sealed class LineReader(ListTable.Row row, ListTable table, ListSettings settings, LineHabits habits, ShopDetails shop, DateOnly today)
{
    private readonly List<string> _notes = [];
    private readonly List<string> _doubts = [];
    private string? _refused = row.Wrong;

    public static ReadLine Read(ListTable.Row row, ListTable table, ListSettings settings, LineHabits habits, ShopDetails shop, DateOnly today) =>
        new LineReader(row, table, settings, habits, shop, today).Read();

    /// <summary>Empty where no column holds it.</summary>
    public static string Cell(ListTable.Row row, ListSettings settings, ListColumn column)
    {
        for (var i = 0; i < settings.Columns.Count && i < row.Cells.Count; i++)
            if (settings.Columns[i] == column)
                return row.Cells[i];
        return "";
    }

    private ReadLine Read()
    {
        if (_refused is not null)
            return new ReadLine { Line = row.Line, Refused = _refused };
        var (client, day) = (Client(), Day());
        var said = SportWords.Read(Cell(ListColumn.Sport));
        var sport = said ?? settings.Sport ?? default;
        if (Cell(ListColumn.Sport) is { Length: > 0 } named && said is null)
            Doubt(ListColumn.Sport, named, $"taken for {EnglishNames.Of(sport)}");
        var (mains, crosses) = Strings();
        var line = new ReadLine
        {
            Line = row.Line,
            Client = client,
            Phone = Kept(ListColumn.Phone, text => Phones.Read(text, shop.Country)),
            Mail = Kept(ListColumn.Mail, text => CellKinds.Mail.Read(text).Value),
            Player = Kept(ListColumn.Player, text => OneLine(text, 80)) ?? client,
            IsPlayerNamed = OneLine(Cell(ListColumn.Player), 80) is { Length: > 0 },
            Frame = Frame(),
            Marking = Kept(ListColumn.Racket, text => OneLine(text, 20)) ?? "",
            Sport = sport,
            IsSportNamed = said is not null,
            Day = day,
            Mains = mains,
            Crosses = crosses ?? mains,
            Tension = Tension(sport),
            PriceMinor = Price(),
            Ticket = Kept(ListColumn.Ticket, text => int.TryParse(text.TrimStart('#'), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number is > 0 and <= ImportLimits.MostTicket ? (int?)number : null),
            StrungBy = Kept(ListColumn.StrungBy, text => OneLine(text, 60)) ?? "",
        };
        Rest();
        if (string.Join('\n', _notes).Length > ImportLimits.Note)
            _refused ??= $"What would go into the job’s note is longer than {ImportLimits.Note} characters. Shorten it, or leave one of its columns out.";
        return line with { Refused = _refused, Notes = _notes, Doubts = _doubts };
    }

    private string Cell(ListColumn column) => Cell(row, settings, column);

    private string Client()
    {
        var text = Cell(ListColumn.Client);
        var name = OneLine(text, 80);
        if (name is null || NameKey.Of(name).Length == 0)
            _refused ??= text.Length == 0 ? "No client is named." : $"“{Kinds.Clip(text)}” is no client’s name.";
        return name ?? "";
    }

    private DateOnly Day()
    {
        var text = Cell(ListColumn.Day);
        var reading = DayText.Read(text, today);
        var day = reading is null ? Counted(text) : reading.Clear ?? (habits.Days is { } order && reading.ByOrder.TryGetValue(order, out var ordered) ? ordered : null);
        if (day > today)
            _refused ??= $"The day is in the future; today is {Formats.Day(today)}.";
        else if (day is null)
            _refused ??= text.Length == 0 ? "No day is given." : $"“{Kinds.Clip(text)}” is no day that can be told for sure.";
        else if (habits.Days is { } usual && reading is { IsEvidence: true } && !reading.ByOrder.ContainsKey(usual))
            _doubts.Add($"“{text}” can only be {Formats.Day(day)}; other days in this list are written in another order.");
        return day ?? default;
    }

    private DateOnly? Counted(string text) => habits.Counted is { } since && SerialDay.Read(text, today).TryGetValue(since, out var day) ? day : null;

    private string Frame()
    {
        var text = Cell(ListColumn.Frame);
        if (text.Length == 0 || NameKey.Of(text).Length == 0)
            return "";
        return Kept(ListColumn.Frame, cell => OneLine(cell, 80)) ?? "";
    }

    private (StringText Mains, StringText? Crosses) Strings()
    {
        var (text, other) = (Cell(ListColumn.Strings), Cell(ListColumn.Crosses));
        var (mains, crosses) = StringText.Read(text);
        var gauge = Kept(ListColumn.Gauge, GaugeText.Read);
        if (other.Length > 0)
            (mains, crosses) = (StringText.Read(text) is (var one, null) ? one : mains, StringText.Read(other).Mains);
        else if (crosses is not null)
            _doubts.Add($"Mains “{mains.Name}”, crosses “{crosses.Name}”.");
        (mains, crosses) = With(gauge, mains, crosses);
        if (new[] { mains, crosses ?? mains }.Any(s => OneLine(s.Name, 60) is null && s.IsKnown))
        {
            Doubt(ListColumn.Strings, text, "too long for a string’s name");
            return (new StringText("", null), null);
        }
        if (!mains.IsKnown)
            Doubt(ListColumn.Strings, text.Length > 0 ? text : "–", "no string is named");
        return (mains, crosses is { IsKnown: true } ? crosses : null);
    }

    private (StringText Mains, StringText? Crosses) With(GaugeText? gauge, StringText mains, StringText? crosses)
    {
        if (gauge is null || !mains.IsKnown)
        {
            if (gauge is not null)
                Doubt(ListColumn.Gauge, Cell(ListColumn.Gauge), "no string is named");
            return (mains, crosses);
        }
        var other = crosses is { IsKnown: true } ? crosses : (gauge.CrossesMm is null || gauge.CrossesMm == gauge.Mm ? null : mains);
        if (mains.With(gauge.Mm, gauge.Name) is { } first && (other is null || other.With(gauge.CrossesMm ?? gauge.Mm, gauge.Name) is not null))
        {
            if (crosses is { IsKnown: true, GaugeMm: null } && gauge.CrossesMm is null)
                _doubts.Add($"The gauge “{Cell(ListColumn.Gauge)}” was taken for mains and crosses.");
            return (first, other?.With(gauge.CrossesMm ?? gauge.Mm, gauge.Name));
        }
        Doubt(ListColumn.Gauge, Cell(ListColumn.Gauge), "the string itself says another gauge");
        return (mains, crosses);
    }

    private TensionReading? Tension(Sport sport)
    {
        var (text, other) = (Cell(ListColumn.Tension), Cell(ListColumn.CrossesTension));
        var reading = TensionText.Read(text);
        if (reading is not null && other.Length > 0)
            reading = TensionText.Read(other) is { } crosses && (crosses.Unit is null || reading.Unit is null || crosses.Unit == reading.Unit)
                ? reading with { Crosses = crosses.Mains, Unit = reading.Unit ?? crosses.Unit } : null;
        var unit = reading?.Unit ?? TensionText.UnitIn(Cell(ListColumn.TensionUnit)) ?? habits.UnitOfHeading ?? habits.Unit;
        var verdicts = reading is null ? [] : new[] { reading.Mains, reading.Crosses }.Select(value => TensionCheck.Of(sport, new Tension(value, unit))).ToList();
        var written = (text + (other.Length > 0 ? $" / {other}" : "")) is { Length: > 0 } any ? any : "–";
        if (reading is null || verdicts.Contains(TensionVerdict.Impossible))
            Doubt(ListColumn.Tension, written, reading is null ? "the tension is not known" : "no machine pulls that");
        return reading is null || verdicts.Contains(TensionVerdict.Impossible) ? null : reading with { Unit = unit };
    }

    private long? Price()
    {
        var text = Cell(ListColumn.Price);
        if (!CurrencyText.IsOther(AmountText.CurrencyOf(text), shop.Currency))
            return Kept(ListColumn.Price, Minor);
        Doubt(ListColumn.Price, text, $"not in {shop.Currency}");
        return null;
    }

    private long? Minor(string text)
    {
        var reading = AmountText.Read(text);
        if (reading.Count == 0 || !(AmountText.IsClear(reading) || habits.Decimals is not null))
            return null;
        var amount = reading.Count == 1 || AmountText.IsClear(reading) ? reading.Values.First() : reading[habits.Decimals!.Value];
        var minor = amount * (decimal)Math.Pow(10, Currencies.Places(shop.Currency));
        return amount <= ImportLimits.MostPrice && minor == Math.Floor(minor) ? (long?)minor : null;
    }

    /// <summary>What no other field takes.</summary>
    private void Rest()
    {
        for (var i = 0; i < settings.Columns.Count && i < row.Cells.Count; i++)
            if (settings.Columns[i] == ListColumn.Note && row.Cells[i].Length > 0)
                Note(table.Headings[i], row.Cells[i]);
    }

    /// <summary>The cell's value; where it cannot be read, a note and a doubt.</summary>
    private T? Kept<T>(ListColumn column, Func<string, T?> read)
    {
        var text = Cell(column);
        if (text.Length == 0)
            return default;
        var value = read(text);
        if (value is null)
            Doubt(column, text, "cannot be read");
        return value;
    }

    private void Doubt(ListColumn column, string text, string why)
    {
        var heading = Enumerable.Range(0, settings.Columns.Count).Where(i => settings.Columns[i] == column).Select(i => table.Headings[i]).FirstOrDefault() ?? column.Name();
        _doubts.Add($"{heading} “{Kinds.Clip(text)}”: {why}; it stands in the job’s note.");
        Note(heading, text);
    }

    private void Note(string heading, string text)
    {
        var note = Kinds.Note(ImportLimits.Note).Read($"{heading}: {text}");
        if (note.Wrong is null)
            _notes.Add(note.Value!);
        else
            _refused ??= $"{heading}: {note.Wrong}";
    }

    private static string? OneLine(string text, int most) => Kinds.Line(most).Read(text).Value;
}
