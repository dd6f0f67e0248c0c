using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>Clients of the files who may be on file already, or twice in the files: nobody is doubled without being asked.</summary>
public sealed class MatchTests : IDisposable
{
    private readonly TestShop _shop = new();

    public MatchTests() => ImportedShop.SetUp(_shop);

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Same_files_a_second_time_add_nothing_before_it_is_said_who_is_who()
    {
        Import(new Spreadsheet(), OtherMatches.Ask);
        var before = _shop.Database.Dump();

        var report = Import(new Spreadsheet(), OtherMatches.Ask);

        Assert.Equal([2, 3], report.Undecided.Select(m => m.Client.Line));
        Assert.False(report.IsClean);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public void Same_files_a_second_time_with_the_same_people_add_nothing_and_say_so()
    {
        Import(new Spreadsheet(), OtherMatches.Ask);
        var before = ImportedRows.Count(_shop.Database);

        var report = Import(new Spreadsheet(), OtherMatches.Merge);

        Assert.Empty(report.Problems);
        Assert.Equal("nothing, because all of it is already there", report.Summary);
        Assert.Equal("2 clients, 2 players, 2 strings, 2 rackets, 1 live tag, 2 retired tags, 1 spec and 2 jobs", report.AlreadyThere);
        Assert.Equal(before, ImportedRows.Count(_shop.Database));
    }

    [Fact]
    public void Same_files_a_second_time_with_other_people_are_refused_line_by_line()
    {
        Import(new Spreadsheet(), OtherMatches.Ask);
        var before = ImportedRows.Count(_shop.Database);

        var report = Import(new Spreadsheet(), OtherMatches.KeepApart);

        Assert.Equal(["jobs.csv:2:ticket", "jobs.csv:3:ticket", "rackets.csv:2:retired_tags", "rackets.csv:2:retired_tags", "rackets.csv:2:tag"],
            report.Problems.Select(p => $"{p.File}:{p.Line}:{p.Column}").Order(StringComparer.Ordinal));
        Assert.Equal(before, ImportedRows.Count(_shop.Database));
    }

    [Theory]
    [InlineData("Ewan Lockyer", "+44 20 7946 0958", null, "the same phone number")]
    [InlineData("Ewan Lockyer", null, "ODALYS@ferran.example", "the same email address")]
    [InlineData("FERRAN, Odályś", null, null, "the same name")]
    [InlineData("odalys ferran", "020 7946 0958", "odalys@ferran.example", "the same name, phone number and email address")]
    public void Client_is_recognised_by_phone_email_or_name(string name, string? phone, string? mail, string why)
    {
        _shop.Records.Client(name, TagPage.Records.Shop.Phones.Read(phone, "GB"), mail);

        var match = Assert.Single(Import(new Spreadsheet(), OtherMatches.Ask).Matches);

        Assert.Equal((2, why), (match.Client.Line, MatchWords.Why(Assert.Single(match.Lookalikes))));
    }

    [Fact]
    public void Second_guardian_is_recognised_too()
    {
        _shop.Records.Client("Ewan Lockyer", "+447700900351");
        _shop.Records.Change("UPDATE client SET second_phone = '+442079460958'");

        Assert.Equal("the same phone number", MatchWords.Why(Assert.Single(Assert.Single(Import(new Spreadsheet(), OtherMatches.Ask).Matches).Lookalikes)));
    }

    [Fact]
    public void Strangers_are_not_asked_about()
    {
        _shop.Records.Client("Ewan Lockyer", "+447700900351", "ewan@lockyer.example");

        Assert.Empty(Import(new Spreadsheet(), OtherMatches.Ask).Matches);
        Assert.Equal(3, ImportedRows.Count(_shop.Database, "client"));
    }

    [Fact]
    public void Rackets_and_jobs_go_to_the_client_on_file_whose_own_record_stays()
    {
        var client = _shop.Records.Client("Odalys F.", "+442079460958");
        _shop.Records.Change("UPDATE client SET note = 'rings at nine', reminders = 0, language = 'es'");
        var pim = _shop.Records.Player(client, "Pim");
        _shop.Records.Racket(pim, 3);

        var report = Import(new Spreadsheet(), OtherMatches.Merge);

        Assert.Equal("1 client, 1 player, 2 strings, 2 rackets, 1 live tag, 2 retired tags, 1 spec and 2 jobs", report.Summary);
        Assert.Equal("1, 2, 3", _shop.Records.Text($"SELECT group_concat(number, ', ' ORDER BY number) FROM racket WHERE player_id = {pim}"));
        Assert.Equal("Odalys F.|+442079460958|odalys@ferran.example|rings at nine|0|es",
            _shop.Records.Text($"SELECT concat_ws('|', name, phone, mail, note, reminders, language) FROM client WHERE id = {client}"));
        Assert.Equal(2, ImportedRows.Count(_shop.Database, "client"));
    }

    [Fact]
    public void Two_lines_of_one_client_make_one_client_with_both_lines_players()
    {
        var sheet = new Spreadsheet().Cell("clients.csv", 3, "phone", "+44 20 7946 0958");

        var asked = Import(sheet, OtherMatches.Ask);
        var report = Import(sheet, OtherMatches.Merge);

        Assert.Equal("line2", Assert.Single(Assert.Single(asked.Undecided).Lookalikes).Key);
        Assert.StartsWith("1 client, 2 players", report.Summary, StringComparison.Ordinal);
        Assert.Equal("Odalys Ferran: Pim, Tamsin", _shop.Records.Text("SELECT c.name || ': ' || group_concat(p.name, ', ' ORDER BY p.name) FROM client c JOIN player p ON p.client_id = c.id"));
    }

    [Fact]
    public void Each_match_is_decided_by_itself()
    {
        var odalys = _shop.Records.Client("Odalys Ferran", "+442079460958");
        _shop.Records.Client("Tamsin Quill");

        var report = _shop.Get<Importer>().Import(new Spreadsheet().ToFiles(),
            new ImportChoices { ByLine = new Dictionary<int, string> { [2] = $"client{odalys}", [3] = ImportChoices.Apart } }, FormKey.New());

        Assert.True(report.IsClean);
        Assert.Equal("Odalys Ferran, Tamsin Quill, Tamsin Quill", _shop.Records.Text("SELECT group_concat(name, ', ' ORDER BY name) FROM client"));
    }

    [Theory]
    [InlineData("client999")]
    [InlineData("line3")]
    [InlineData("")]
    public void Answer_that_is_none_of_the_choices_decides_nothing(string answer)
    {
        _shop.Records.Client("Odalys Ferran", "+442079460958");

        var report = _shop.Get<Importer>().Import(new Spreadsheet().ToFiles(), new ImportChoices { ByLine = new Dictionary<int, string> { [2] = answer } }, FormKey.New());

        Assert.Single(report.Undecided);
        Assert.Equal(1, ImportedRows.Count(_shop.Database, "client"));
    }

    [Fact]
    public void Other_racket_of_the_same_number_is_no_match()
    {
        var client = _shop.Records.Client("Odalys Ferran", "+442079460958");
        _shop.Records.Racket(_shop.Records.Player(client, "Pim"), 1, frame: "Dunmarrow Causeway 100");
        var before = ImportedRows.Count(_shop.Database);

        var report = Import(new Spreadsheet(), OtherMatches.Merge);

        Assert.Equal("rackets.csv:2:number: Pim already has another racket 1. Give this one another number, or correct its sport and frame.", report.Problems[0].ToString());
        Assert.Equal(before, ImportedRows.Count(_shop.Database));
    }

    [Fact]
    public void Racket_on_file_keeps_its_live_tag()
    {
        var client = _shop.Records.Client("Odalys Ferran", "+442079460958");
        _shop.Records.LiveTag(_shop.Records.Racket(_shop.Records.Player(client, "Pim"), 1));

        var report = Import(new Spreadsheet(), OtherMatches.Merge);

        Assert.Equal("rackets.csv:2:tag: This racket has a live tag already. Move the code to retired_tags, or remove it here and replace the tag on the racket’s page.",
            Assert.Single(report.Problems).ToString());
        Assert.Equal(1, ImportedRows.Count(_shop.Database, "tag"));
    }

    [Theory]
    [InlineData("2026-09-02", "Strung||")]
    [InlineData("2026-09-03", "Collected|2026-09-02|2026-09-02")]
    public void Day_for_old_jobs_is_the_first_that_is_left_as_it_is(string day, string expected)
    {
        var sheet = new Spreadsheet().Cell("jobs.csv", 2, "state", "").Cell("jobs.csv", 2, "collected_on", "");

        var report = _shop.Get<Importer>().Import(sheet.ToFiles(), new ImportChoices { SettledBefore = DateOnly.Parse(day, System.Globalization.CultureInfo.InvariantCulture) }, FormKey.New());

        Assert.True(report.IsClean);
        Assert.Equal(expected, _shop.Records.Text("SELECT state || '|' || COALESCE(collected_on, '') || '|' || COALESCE(paid_on, '') FROM job WHERE ticket = 901"));
        Assert.Equal(expected[0] == 'C' ? "1 job as collected and 1 job as paid that the files leave open" : null, report.Settled);
    }

    [Fact]
    public void What_the_file_says_of_an_old_job_stays()
    {
        Import(new Spreadsheet().Cell("jobs.csv", 2, "paid_on", "2026-10-01"), OtherMatches.Ask, new DateOnly(2026, 11, 1));

        Assert.Equal("2026-09-03|2026-10-01", _shop.Records.Text("SELECT collected_on || '|' || paid_on FROM job WHERE ticket = 901"));
    }

    [Theory]
    [InlineData("Odalys Ferran", "ferran,  ODALYS", true)]
    [InlineData("Željko O’Dunnigan", "zeljko o'dunnigan", true)]
    [InlineData("Łukasz Strauß", "lukasz strauss", true)]
    [InlineData("鷺沢 澪", "鷺沢 澪", true)]
    [InlineData("Odalys Ferran", "Odalys Ferrand", false)]
    public void Names_are_compared_without_accents_case_and_order(string one, string other, bool same) =>
        Assert.Equal(same, NameKey.Of(one) == NameKey.Of(other));

    private ImportReport Import(Spreadsheet sheet, OtherMatches others, DateOnly? settledBefore = null) =>
        _shop.Get<Importer>().Import(sheet.ToFiles(), new ImportChoices { Others = others, SettledBefore = settledBefore }, FormKey.New());
}
