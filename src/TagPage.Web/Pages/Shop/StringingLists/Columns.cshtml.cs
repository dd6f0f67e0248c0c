using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Shop;
using TagPage.Web.Csv;
using TagPage.Web.Http.Forms;
using TagPage.Web.StringingLists;

namespace TagPage.Web.Pages.Shop.StringingLists;

/// <summary>What the columns of a list hold and how it writes. Goes on once nothing about that is open.</summary>
public sealed class ColumnsModel(ListDesk desk, ShopStore shops, ShopClock clock) : KeyPage<SentList>("key")
{
    private const int Sampled = 3;

    public sealed record Fields
    {
        public List<string> Columns { get; init; } = [];
        public DayOrder? Days { get; init; }
        public DayCount? Counted { get; init; }
        public DecimalMark? Decimals { get; init; }
        public TensionUnit? Unit { get; init; }
        public Sport? Sport { get; init; }
        public bool Juniors { get; init; }
        public decimal? TensionUnknown { get; init; }
        public string? SettledBefore { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public ListReading Reading { get; private set; } = new();

    public TensionUnit Unit => Saved.Settings.Unit ?? shops.Get().TensionUnit;

    /// <summary>Choices where the list leaves it open; null where it does not.</summary>
    public IEnumerable<SelectListItem>? AsksDays => Asks(Reading.Days, ListWords.Name, Saved.Settings.Days is not null);

    public IEnumerable<SelectListItem>? AsksCounted => Asks(Reading.Counted, ListWords.Name, Saved.Settings.Counted is not null);

    public DateOnly Today => clock.Today;

    public IEnumerable<SelectListItem>? AsksDecimals => Asks(Reading.Decimals, ListWords.Name, Saved.Settings.Decimals is not null);

    public IEnumerable<SelectListItem>? AsksUnit => Asks(Reading.Unit, ListWords.Name, Saved.Settings.Unit is not null);

    protected override SentList? Find(string key) => desk.Get(key);

    public void OnGet()
    {
        Reading = desk.Read(Saved);
        var said = Saved.Settings;
        Input = new Fields
        {
            Columns = [.. said.Columns.Select(column => column.ToString())],
            Days = said.Days,
            Counted = said.Counted,
            Decimals = said.Decimals,
            Unit = said.Unit,
            Sport = said.Sport,
            Juniors = said.Juniors,
            TensionUnknown = said.TensionUnknown,
            SettledBefore = said.SettledBefore is { } day ? DayField.Of(day) : null,
        };
    }

    public IActionResult OnPost()
    {
        var columns = Chosen();
        if (Input.SettledBefore is { Length: > 0 } && (DayField.Read(Input.SettledBefore) is not { } day || day > clock.Today))
            ModelState.AddModelError("Input.SettledBefore", "Enter a day up to today, or leave it empty.");
        if (columns is not null)
        {
            Saved = Saved with { Settings = Said(columns) };
            Reading = desk.Read(Saved);
            NoteOpen();
        }
        else
            Reading = desk.Read(Saved);
        if (!ModelState.IsValid)
            return Page();
        desk.Say(Saved, Saved.Settings);
        return Redirect($"/shop/import/list/check/{Saved.Key}");
    }

    /// <summary>Cells of the first lines, for whoever says what they are.</summary>
    public string Samples(int column) => string.Join(" · ", Saved.Table.Rows.Select(row => column < row.Cells.Count ? row.Cells[column] : "").Where(cell => cell.Length > 0).Distinct().Take(Sampled).Select(Kinds.Clip));

    private List<ListColumn>? Chosen()
    {
        var columns = Input.Columns.Select(name => Enum.TryParse<ListColumn>(name, out var column) && Enum.IsDefined(column) ? column : ListColumn.Note).ToList();
        if (columns.Count != Saved.Table.Headings.Count)
            ModelState.AddModelError("", "Reload this page, then send it again.");
        foreach (var missing in ListColumns.Needed.Where(needed => !columns.Contains(needed)))
            ModelState.AddModelError("Input.Columns[0]", $"Say which column holds the {missing.Name()}.");
        foreach (var twice in columns.Where(column => !column.Repeats()).GroupBy(column => column).Where(same => same.Count() > 1))
            ModelState.AddModelError($"Input.Columns[{columns.LastIndexOf(twice.Key)}]", $"Two columns hold the {twice.Key.Name()}. Let one of them go into the note, or leave it out.");
        return ModelState.IsValid ? columns : null;
    }

    private ListSettings Said(List<ListColumn> columns) => Saved.Settings with
    {
        Columns = columns,
        Days = Input.Days,
        Counted = Input.Counted,
        Decimals = Input.Decimals,
        Unit = Input.Unit,
        Sport = Input.Sport,
        Juniors = Input.Juniors,
        TensionUnknown = Input.TensionUnknown,
        SettledBefore = DayField.Read(Input.SettledBefore),
    };

    private void NoteOpen()
    {
        if (Reading.Days is { } days)
            ModelState.AddModelError("Input.Days", $"Say in which order the list writes days: {days.Example} may be {ListWords.MayMean(days)}.");
        if (Reading.Counted is { } counted)
            ModelState.AddModelError("Input.Counted", $"Say what numbers like {counted.Example} are: it may be {ListWords.MayMean(counted, clock.Today)}.");
        if (Reading.Decimals is { } decimals)
            ModelState.AddModelError("Input.Decimals", $"Say how the list writes decimals: {decimals.Example} may be {ListWords.MayMean(decimals)}.");
        if (Reading.Unit is { } unit)
            ModelState.AddModelError("Input.Unit", $"Say in which unit the list writes tensions like {unit.Example}.");
        if (Reading.LacksSport)
            ModelState.AddModelError("Input.Sport", "Choose the sport of rackets of which the list does not say it.");
        if (Input.TensionUnknown is { } value && TensionCheck.Of(Input.Sport ?? default, new Tension(value, Unit)) == TensionVerdict.Impossible)
            ModelState.AddModelError("Input.TensionUnknown", "No machine pulls that. Enter a tension, or leave it empty.");
    }

    /// <summary>What was said before can still be changed.</summary>
    private static IEnumerable<SelectListItem>? Asks<T>(OpenHabit<T>? open, Func<T, string> name, bool isSaid) where T : struct, Enum =>
        open is null && !isSaid ? null : (open?.Left ?? Enum.GetValues<T>()).Select(value => new SelectListItem(name(value), value.ToString())).Prepend(new SelectListItem("Choose", ""));
}
