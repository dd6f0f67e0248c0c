using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.StringingLists;
using TagPage.Records.Strings;
using TagPage.Web.Csv;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Import;
using TagPage.Web.StringingLists;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.StringingLists;

/// <summary>What a list would do, line by line. Nothing is saved before every question is answered.</summary>
public sealed class CheckModel(ListDesk desk, StringingListStore store, StringStore strings, KeptAnswers answers) : KeyPage<SentList>("key")
{
    public const int MostAsked = 300;

    /// <summary>Lines shown at once.</summary>
    public const int ARound = 100;

    public ListPlan Plan { get; private set; } = new() { Reading = new ListReading() };

    public ImportChoices Choices { get; private set; } = new();

    public IReadOnlyList<StringStore.Row> Catalogue => field ??= strings.List();

    [BindProperty(SupportsGet = true)]
    public LineState? Show { get; set; }

    [BindProperty(SupportsGet = true)]
    public int From { get; set; }

    private IEnumerable<PlannedLine> Chosen => Plan.Lines.Where(line => Show is null || line.State == Show);

    public IEnumerable<PlannedLine> Shown => Chosen.Skip(From).Take(ARound);

    public bool HasMore => Chosen.Skip(From).Skip(ARound).Any();

    protected override SentList? Find(string key) => desk.Get(key);

    // A list that is in already was sent twice.
    protected override IActionResult Missing() =>
        store.Made((string)RouteData.Values["key"]!) is { } made && HttpMethods.IsPost(Request.Method) ? Redirect($"/shop/import/list/{made}") : NotFound();

    public IActionResult OnGet()
    {
        Choices = new ImportChoices { Others = Saved.Settings.Others };
        Plan = desk.Plan(Saved, Choices);
        if (answers.ByLine(Saved.Key, Plan.Matches) is { Count: > 0 } known)
            Plan = desk.Plan(Saved, Choices = Choices with { ByLine = known });
        return Plan.Reading.IsOpen ? Redirect($"/shop/import/list/columns/{Saved.Key}") : Page();
    }

    /// <summary>Shows what the answers would do.</summary>
    public IActionResult OnPostCount()
    {
        Take();
        return Page();
    }

    /// <summary>Goes back to send a corrected list, without losing who is who.</summary>
    public IActionResult OnPostAgain()
    {
        Take();
        return Redirect($"/shop/import/list?answers={Saved.Key}");
    }

    public IActionResult OnPost()
    {
        Take();
        if (!Plan.IsComplete)
        {
            NoteOpen();
            return Page();
        }
        var (outcome, fault) = desk.Begin(User.AtShop(), Saved, Plan);
        if (fault is not { } reason)
            return this.After(outcome!, id => Redirect($"/shop/import/list/{id}"));
        ModelState.AddModelError("", BackupWords.NotFirst(reason));
        return Page();
    }

    public StringAnswer StringOf(StringQuestion question) =>
        Saved.Settings.Strings.GetValueOrDefault(question.Key) ?? new StringAnswer(null, ListStrings.Guess(question.Text.Name), question.Text.GaugeMm);

    /// <summary>“Odalys Ferran · Pellmore Meadow 98 · 2 Sep 2026 · Heron Spin · 52 / 50 lb”.</summary>
    public string Words(PlannedLine line) => line.Read.Day == default
        ? string.Join(" · ", Saved.Table.Rows.First(row => row.Line == line.Read.Line).Cells.Where(cell => cell.Length > 0).Take(6).Select(Kinds.Clip))
        : string.Join(" · ", new[] { line.Read.Client, line.Read.Player == line.Read.Client ? "" : line.Read.Player, line.Read.Frame, Formats.Day(line.Read.Day), line.Read.Mains.Name, line.Read.Tension is { } t ? Tensions(t) : "" }.Where(part => part.Length > 0));

    private static string Tensions(TensionReading t) => t.Mains == t.Crosses ? new Tension(t.Mains, t.Unit!.Value).ToString() : $"{t.Mains:0.##} / {new Tension(t.Crosses, t.Unit!.Value)}";

    private void Take()
    {
        Saved = Saved with
        {
            Settings = Saved.Settings with
            {
                Strings = Saved.Settings.Strings.Concat(Answered("string", StringFrom)).GroupBy(pair => pair.Key).ToDictionary(same => same.Key, same => same.Last().Value),
                Rackets = Saved.Settings.Rackets.Concat(Answered("racket", i => Form($"racket-{i}"))).GroupBy(pair => pair.Key).ToDictionary(same => same.Key, same => same.Last().Value),
                Others = Enum.TryParse<OtherMatches>(Form("Others"), out var others) && Enum.IsDefined(others) ? others : Saved.Settings.Others,
                OtherRackets = Request.Form.ContainsKey("other-rackets") ? Form("other-rackets") : Saved.Settings.OtherRackets,
            },
        };
        desk.Say(Saved, Saved.Settings);
        Choices = new ImportChoices { Others = Saved.Settings.Others, ByLine = MatchAnswers.Of(Request.Form) };
        Plan = desk.Plan(Saved, Choices);
        answers.Keep(Saved.Key, Plan.Matches, Choices with { Others = OtherMatches.Ask });
    }

    private IEnumerable<KeyValuePair<string, T>> Answered<T>(string kind, Func<int, T?> answer)
    {
        for (var i = 0; i < MostAsked && Form($"{kind}-{i}-key") is { } key; i++)
            if (answer(i) is { } given)
                yield return KeyValuePair.Create(key, given);
    }

    private StringAnswer StringFrom(int i) => new(
        long.TryParse(Form($"string-{i}-kind"), NumberStyles.None, CultureInfo.InvariantCulture, out var kind) ? kind : null,
        Enum.TryParse<Material>(Form($"string-{i}-material"), out var material) && Enum.IsDefined(material) ? material : null,
        Form($"string-{i}-gauge") is { } gauge ? Kinds.Number(ImportLimits.LeastGaugeMm, ImportLimits.MostGaugeMm, 3).Read(gauge).Value : null);

    private string? Form(string field) => Request.Form[field].ToString() is { Length: > 0 } text ? text.Trim() : null;

    private void NoteOpen()
    {
        foreach (var match in Plan.Undecided.Take(MostAsked))
            ModelState.AddModelError(MatchAnswers.FieldOf(match), $"Say who {match.Client.Name} is.");
        foreach (var (i, question) in Plan.Strings.Index().Where(q => Plan.OpenStrings.Contains(q.Item.Key)).Take(MostAsked))
            ModelState.AddModelError($"string-{i}", $"Say what {(question.Text.IsKnown ? $"“{question.Text.Name}”" : "the string of lines that name none")} is: a string of the catalogue, or material and gauge (0.5 to 1.6 mm).");
        foreach (var (i, question) in Plan.Rackets.Index().Where(q => Plan.OpenRackets.Contains(q.Item.Key)).Take(MostAsked))
            ModelState.AddModelError($"racket-{i}", question.Among.Count > 0 ? $"Say whose racket these lines of {question.Who} are about." : $"Say how many rackets these lines of {question.Who} are.");
    }
}
