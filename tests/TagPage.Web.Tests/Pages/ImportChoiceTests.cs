using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.Pages;

/// <summary>What the owner decides about files before they come in: which old jobs are settled, and who is on file already.</summary>
public sealed class ImportChoiceTests : IDisposable
{
    private readonly TestShop _shop = new();

    public ImportChoiceTests() => ImportedShop.SetUp(_shop);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Client_on_file_is_asked_about_before_anything_is_written()
    {
        _shop.Records.Client("Ewan Ferran", "+442079460958");
        var owner = _shop.Owner();
        var check = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        var undecided = await owner.Send(check);

        Assert.Contains("Ewan Ferran", check.Main, StringComparison.Ordinal);
        Assert.Contains("the same phone number", check.Main, StringComparison.Ordinal);
        Assert.Null(undecided.Location);
        Assert.Equal(1, ImportedRows.Count(_shop.Database, "client"));
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "job"));
    }

    [Fact]
    public async Task Old_jobs_count_as_collected_and_paid_from_the_day_the_owner_chooses()
    {
        var sheet = new Spreadsheet().Cell("jobs.csv", 2, "state", "").Cell("jobs.csv", 2, "collected_on", "");
        var owner = _shop.Owner();
        var sent = await SentFiles.Send(owner, sheet, ("SettledBefore", "2026-09-03"));

        await owner.Send(await owner.Open(sent.Location!));

        Assert.Equal("Collected|2026-09-02|2026-09-02", _shop.Records.Text("SELECT state || '|' || collected_on || '|' || COALESCE(paid_on, '') FROM job WHERE ticket = 901"));
        Assert.Equal("Waiting|", _shop.Records.Text("SELECT state || '|' || COALESCE(paid_on, '') FROM job WHERE ticket = 902"));
    }

    [Fact]
    public async Task Same_name_and_number_is_proposed_as_the_same_person_and_nothing_is_doubled()
    {
        var odalys = _shop.Records.Client("Odalys Ferran", "+442079460958");
        var owner = _shop.Owner();
        var check = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        await owner.Send(check);

        Assert.Contains("This would add 1 client, 2 players", check.Main, StringComparison.Ordinal);
        Assert.Contains("Already there, and left unchanged: 1 client.", check.Main, StringComparison.Ordinal);
        Assert.Equal(2, ImportedRows.Count(_shop.Database, "client"));
        Assert.Equal(1, _shop.Records.Count("player", $"client_id = {odalys}"));
    }

    [Fact]
    public async Task Choices_are_counted_again_without_being_saved_and_then_brought_in()
    {
        var namesake = _shop.Records.Client("Odalys Ferran", "+447700900351");
        var owner = _shop.Owner();
        var asked = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);
        Assert.Contains("Who is who?", asked.Main, StringComparison.Ordinal);

        var counted = await owner.Send(asked with { Path = asked.Path.Split('?')[0] + "?handler=count" }, ("match-2", $"client{namesake}"));
        Assert.Contains("This would add 1 client", counted.Main, StringComparison.Ordinal);
        Assert.Equal(1, ImportedRows.Count(_shop.Database, "client"));
        var done = await owner.Send(counted with { Path = asked.Path });

        Assert.Equal("/shop", done.Location);
        Assert.Equal(2, ImportedRows.Count(_shop.Database, "client"));
        Assert.Equal("+447700900351", _shop.Records.Text($"SELECT phone FROM client WHERE id = {namesake}"));
    }

    [Fact]
    public async Task Somebody_else_is_kept_apart()
    {
        _shop.Records.Client("Odalys Ferran");
        var owner = _shop.Owner();
        var check = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        await owner.Send(check, ("match-2", "apart"));

        Assert.Equal(2, _shop.Records.Count("client", "name = 'Odalys Ferran'"));
    }

    [Fact]
    public async Task Undecided_client_is_named_beside_the_choices()
    {
        _shop.Records.Client("Odalys Ferran");
        var owner = _shop.Owner();

        var refused = await owner.Send(await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!));

        Assert.Contains("Say who Odalys Ferran is.", refused.Errors);
        Assert.Equal(1, ImportedRows.Count(_shop.Database, "client"));
    }

    [Theory]
    [InlineData("soon", "Enter a date as 2027-03-14 (year-month-day), or leave it empty.")]
    [InlineData("2026-11-26", "This day is in the future; today is 25 Nov 2026. Enter an earlier day, or leave it empty.")]
    public async Task Day_that_does_not_fit_is_told_on_both_pages_and_nothing_is_saved(string day, string told)
    {
        var owner = _shop.Owner();
        var sent = await SentFiles.Send(owner, new Spreadsheet(), ("SettledBefore", day));
        var check = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        var refused = await owner.Send(check, ("SettledBefore", day));

        Assert.Equal(told, Assert.Single(sent.Errors));
        Assert.Equal(told, Assert.Single(refused.Errors));
        Assert.Equal(0, ImportedRows.Count(_shop.Database, "client"));
    }

    [Fact]
    public async Task Month_ago_is_proposed_and_empty_leaves_all_as_the_files_say()
    {
        var owner = _shop.Owner();
        var page = await owner.Open("/shop/import");

        var sent = await SentFiles.Send(owner, new Spreadsheet(), ("SettledBefore", ""));

        Assert.Equal("2026-10-26", page.Document.QuerySelector("[name=SettledBefore]")!.GetAttribute("value"));
        Assert.DoesNotContain('?', sent.Location!);
    }

    [Fact]
    public async Task More_matches_than_a_page_can_ask_about_are_not_brought_in()
    {
        var clients = "client,name\n" + string.Concat(Enumerable.Range(1, 302).Select(n => $"C{n},Odalys Ferran\n"));
        var owner = _shop.Owner();
        var sent = await SentFiles.Upload(owner, [("clients.csv", System.Text.Encoding.UTF8.GetBytes(clients))]);

        var check = await owner.Open(sent.Location!);

        Assert.Contains("301 clients may already be on file", check.Main, StringComparison.Ordinal);
        Assert.Null(check.Form());
    }

    [Fact]
    public async Task All_that_the_files_hold_is_counted_while_somebody_is_undecided()
    {
        _shop.Records.Client("Odalys Ferran", "+442079460958");
        _shop.Records.Client("Tamsin Quill");
        var owner = _shop.Owner();

        var check = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        Assert.Contains("The files hold 2 clients, 2 players, 2 strings, 2 rackets", check.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Old_jobs_that_are_there_already_are_not_counted_as_collected_again()
    {
        var sheet = new Spreadsheet().Cell("jobs.csv", 2, "state", "").Cell("jobs.csv", 2, "collected_on", "");
        var owner = _shop.Owner();
        var first = await owner.Open((await SentFiles.Send(owner, sheet, ("SettledBefore", "2026-09-03"))).Location!);
        await owner.Send(first);

        var again = await owner.Open((await SentFiles.Send(owner, sheet, ("SettledBefore", "2026-09-03"))).Location!);
        var counted = await owner.Send(again with { Path = again.Path.Split('?')[0] + "?handler=count" }, ("match-3", "client2"));

        Assert.Contains("It would count 1 job as collected and 1 job as paid", first.Main, StringComparison.Ordinal);
        Assert.Contains("nothing, because all of it is already there", counted.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("It would count", counted.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Same_person_is_compared_detail_by_detail_before_anything_is_merged()
    {
        var ewan = _shop.Records.Client("Ewan Ferran", "+442079460958");
        _shop.Records.Change($"UPDATE client SET note = 'rings at nine', language = 'es' WHERE id = {ewan}");
        var owner = _shop.Owner();

        var check = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        Assert.Equal(
            [
                "Name|Ewan Ferran|Odalys Ferran left out",
                "Email|nothing yet|odalys@ferran.example comes in",
                "Language|Español|English left out",
                "Note|rings at nine|empty left out",
            ],
            check.Document.QuerySelectorAll(".differences tbody tr").Select(row => string.Join('|', row.Children.Select(cell => cell.TextContent.Trim()))));
    }

    [Fact]
    public async Task Answers_are_kept_when_corrected_files_are_sent_in_which_the_lines_have_moved()
    {
        var namesake = _shop.Records.Client("Odalys Ferran", "+447700900351");
        _shop.Records.Client("Tamsin Quill");
        var owner = _shop.Owner();
        var asked = await owner.Open((await SentFiles.Send(owner, new Spreadsheet())).Location!);

        var back = await owner.Send(asked with { Path = asked.Path.Split('?')[0] + "?handler=again" }, ("match-2", $"client{namesake}"), ("match-3", "apart"));
        var index = await owner.Open(back.Location!);
        var moved = new Spreadsheet().With("clients.csv", "C1,Odalys", "C0,Wenna Strand,,\nC1,Odalys");
        var check = await owner.Open((await SentFiles.SendFrom(back.Location!, owner, moved)).Location!);

        Assert.Contains("Your answers about who is who are kept", index.Main, StringComparison.Ordinal);
        Assert.Equal(["match-3:client" + namesake, "match-4:apart"], check.Document.QuerySelectorAll("input[type=radio][checked]").Select(r => $"{r.GetAttribute("name")}:{r.GetAttribute("value")}"));
        Assert.Contains("This would add 2 clients", check.Main, StringComparison.Ordinal);
        Assert.Equal(2, ImportedRows.Count(_shop.Database, "client"));
    }
}
