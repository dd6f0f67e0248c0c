using System.Globalization;
using System.Text;
using TagPage.Core.Tags;
using TagPage.Records.Privacy;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Odalys asks to be forgotten.</summary>
public sealed class ForgetTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _racket;
    private TagCode _tag;
    private Visitor _phone = null!;

    public async ValueTask InitializeAsync()
    {
        _shop.Records.Shop();
        (_odalys, _, _racket, _tag, _) = _shop.Records.Family();
        _shop.Records.Change("UPDATE job SET paid_on = strung_on");
        _phone = await _shop.OnOwnPage(_odalys);
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    private ForgetWorker Worker => _shop.Get<ForgetWorker>();

    [Fact]
    public async Task Page_says_first_what_the_shop_keeps()
    {
        await _phone.ProvesToBe(_shop);

        var page = await _phone.Open("/my/forget");

        Assert.Equal(["What the shop keeps", "What is deleted"], page.Document.QuerySelectorAll("main h2").Select(h => h.TextContent));
    }

    [Fact]
    public async Task Seven_days_pass_before_anything_happens_and_she_is_told_by_mail()
    {
        await Ask();
        Assert.Contains("Your data will be deleted on 2 Dec 2026", (await _phone.Open("/my")).Main, StringComparison.Ordinal);
        Assert.Contains(await _shop.MailsSent(), m => m.Contains("This will happen on 2 Dec 2026", StringComparison.Ordinal));
        Assert.Contains("asked for their data to be deleted", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromDays(7) - TimeSpan.FromMinutes(1));
        Worker.ForgetAll();
        Assert.Equal(1, _shop.Records.Count("client"));
        _shop.Clock.Advance(TimeSpan.FromMinutes(1));
        Worker.ForgetAll();

        Assert.Equal(0, _shop.Records.Count("client"));
        Assert.False(await _phone.IsOnOwnPage());
    }

    [Fact]
    public async Task Within_seven_days_it_is_undone_with_one_press()
    {
        await Ask();
        var page = await _phone.Open("/my/details");

        await _phone.Send(page, page.Form("/my/details?handler=Keep"));
        _shop.Clock.Advance(TimeSpan.FromDays(8));
        Worker.ForgetAll();

        Assert.Equal(1, _shop.Records.Count("client"));
        Assert.DoesNotContain("forgotten", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("UPDATE job SET paid_on = NULL")]
    [InlineData("UPDATE job SET state = 'Strung', collected_on = NULL")]
    public async Task What_is_still_open_is_settled_first(string open)
    {
        _shop.Records.Change(open);
        await _phone.ProvesToBe(_shop);

        var answer = await _phone.Send(await _phone.Open("/my/forget"));

        Assert.Contains("Settle that with the shop first", answer.Main, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Records.Count("client", "forget_at IS NULL"));
    }

    [Fact]
    public async Task What_is_open_is_listed_and_a_request_can_be_cancelled_there()
    {
        await _phone.Send(await _phone.Open($"/my/order/{_racket}"));
        var owing = _shop.Records.Racket(_shop.Records.Player(_odalys, "Mae Ferran"), 4);
        _shop.Records.Job(owing, strungOn: new(2026, 11, 1));
        await _phone.ProvesToBe(_shop);

        var page = await _phone.Open("/my/forget");
        Assert.Equal(["Mae, racket 4: not paid yet", "Pim, racket 1: Requested. Bring the racket to the shop."],
            page.Document.QuerySelectorAll("#open li p").Select(p => p.TextContent.Trim()).Order(StringComparer.Ordinal));
        var answer = await _phone.Send(page, page.Form("/my/forget?handler=Cancel"));

        Assert.Equal("/my/forget", answer.Location);
        Assert.Equal("Cancelled", _shop.Records.Text("SELECT state FROM job WHERE id = 2"));
        page = await _phone.Open("/my/forget");
        Assert.False(page.HasForm("/my/forget?handler=Cancel"));
        _shop.Records.Change("UPDATE job SET paid_on = strung_on");
        Assert.Null((await _phone.Open("/my/forget")).Document.QuerySelector("#open"));
    }

    [Fact]
    public async Task Racket_brought_in_the_days_of_grace_is_waited_for()
    {
        await Ask();
        var job = _shop.Records.Job(_racket);
        _shop.Clock.Advance(TimeSpan.FromDays(8));
        Worker.ForgetAll();
        Assert.Equal(1, _shop.Records.Count("client"));

        _shop.Records.Change("UPDATE job SET state = 'Cancelled' WHERE id = @job", new { job });
        Worker.ForgetAll();

        Assert.Equal(0, _shop.Records.Count("client"));
    }

    [Fact]
    public async Task Owner_can_forget_a_client_who_asked_at_the_counter_and_keep_them_after_all()
    {
        var runa = _shop.Owner();
        var page = await runa.Open($"/shop/corner/{_odalys}");
        await runa.Send(page, page.Form($"/shop/corner/{_odalys}?handler=Forget"));
        Assert.Contains("Data will be deleted on 2 Dec 2026", (await runa.Open($"/shop/clients/{_odalys}")).Main, StringComparison.Ordinal);

        page = await runa.Open($"/shop/corner/{_odalys}");
        await runa.Send(page, page.Form($"/shop/corner/{_odalys}?handler=Keep"));

        Assert.Equal(1, _shop.Records.Count("client", "forget_at IS NULL"));
    }

    [Fact]
    public async Task Job_counts_and_money_stay_without_the_person_and_no_ticket_number_is_given_out_again()
    {
        var ticket = _shop.Records.Text("SELECT ticket FROM job");
        await Forgotten();

        Assert.Equal($"{ticket}|Tennis|2026-11-01|2450|2026-11-01", _shop.Records.Text("SELECT ticket || '|' || sport || '|' || strung_on || '|' || price_minor || '|' || paid_on FROM past_job"));
        var teo = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Teo Brandt"), "Lena"));
        var runa = _shop.Owner();
        await runa.Send(await runa.Open($"/shop/jobs/new?racket={teo}"), ("Input.MainsId", "1"), ("Input.CrossesId", "1"), ("Input.MainsTension", "50"), ("Input.CrossesTension", "50"));
        Assert.Equal(long.Parse(ticket, CultureInfo.InvariantCulture) + 1, long.Parse(_shop.Records.Text("SELECT MAX(ticket) FROM job"), CultureInfo.InvariantCulture));
    }

    [Fact]
    public async Task Tag_stays_retired_and_others_are_left_as_they_were()
    {
        var teo = _shop.Records.Client("Teo Brandt", "+442079460111", "teo@brandt.example");
        var tag = _shop.Records.LiveTag(_shop.Records.Racket(_shop.Records.Player(teo, "Lena Brandt")));
        await Forgotten();

        Assert.Equal(System.Net.HttpStatusCode.Gone, (await _shop.Stranger().Open($"/t/{_tag}")).Status);
        Assert.Equal(System.Net.HttpStatusCode.OK, (await _shop.Stranger().Open($"/t/{tag}")).Status);
        Assert.Equal(1, _shop.Records.Count("client"));
        Assert.Equal("ok", _shop.Records.Text("PRAGMA integrity_check"));
        Assert.Equal("", _shop.Records.Text("SELECT \"table\" FROM pragma_foreign_key_check"));
    }

    /// <summary>Canaries in every text column that can hold one, then a search of every byte of every file.</summary>
    [Fact]
    public async Task Not_one_byte_of_her_is_left_in_any_file_but_dated_copies()
    {
        const string Canary = "zanzibarquill";
        _shop.Records.Change($"INSERT INTO payer (name, phone, mail, note) VALUES ('{Canary} payer', '+442079460333', 'payer@{Canary}.example', '{Canary}')");
        _shop.Records.Change($"UPDATE client SET name = 'Odalys {Canary}', phone = '+442079460444', mail = 'o@{Canary}.example', note = '{Canary}', payer_id = 1, second_name = '{Canary}', second_mail = 's@{Canary}.example', found_choice = 'Message'");
        _shop.Records.Change($"UPDATE player SET name = 'Pim {Canary}', note = '{Canary}'");
        _shop.Records.Change($"UPDATE racket SET frame = '{Canary} 98', note = '{Canary}', own_date_note = '{Canary}', grip = '{Canary}', tape_colour = '{Canary}'");
        _shop.Records.Change($"UPDATE job SET note = '{Canary}', received_where = '{Canary}'");
        _shop.Records.Change($"INSERT INTO job_request (job_id, asked_in, asked_words, drop_off_where) SELECT id, 'OwnPage', '{Canary}', '{Canary}' FROM job");
        _shop.Records.Change($"INSERT INTO condition (job_id, frame_words, grommets_words, bumper_words, grip_words) SELECT id, '{Canary}', '{Canary}', '{Canary}', '{Canary}' FROM job");
        // Larger than a page of the database, with the canary in each of them.
        var photo = new byte[] { 0xFF, 0xD8, 0xFF }.Concat(Encoding.UTF8.GetBytes(string.Concat(Enumerable.Repeat($"photo {Canary} ", 4000)))).ToArray();
        _shop.Records.Change("INSERT INTO photo (job_id, made_at, width, height, small, picture) SELECT id, '2026-11-25T09:00:00.000Z', 4, 3, @photo, @photo FROM job", new { photo });
        _shop.Records.Change($"INSERT INTO spec (racket_id, measured_on, weight, strung, grip_on, dampener_on, note) VALUES ({_racket}, '2026-10-01', 287.3, 1, 1, 0, '{Canary}')");
        var link = _shop.Records.Reminder(_odalys, _racket);
        _shop.Records.Change($"UPDATE reminder_racket SET wish_note = '{Canary}' WHERE reminder_id = {link}");
        await _shop.Stranger().Writes(_tag, $"I have {Canary}", $"finder@{Canary}.example");
        await _phone.Send(await _phone.Open("/my/feel/1"), ("Input.Bed", "Right"), ("Input.Note", Canary));
        var details = await _phone.Open("/my/details");
        await _phone.Send(details, details.Form("/my/details?handler=Payer"), ("Input.Words", Canary));
        await _shop.MailsSent();
        Assert.True(FilesWith(Canary).Count >= 2, "The search finds nothing even before.");
        Directory.CreateDirectory(Path.Combine(_shop.Folder, "uploads", "0123456789abcdef0123456789abcdef"));
        await File.WriteAllTextAsync(Path.Combine(_shop.Folder, "uploads", "0123456789abcdef0123456789abcdef", "clients.csv"), Canary, TestContext.Current.CancellationToken);
        _shop.Database.CopyTo(Path.Combine(_shop.Get<DataFolder>().Backups, "20261125-100000-before.db"));

        await Forgotten();

        Assert.Equal(["20261125-100000-before.db"], FilesWith(Canary));
        Assert.DoesNotContain(FilesWith("+442079460444"), f => !f.EndsWith("before.db", StringComparison.Ordinal));
    }

    /// <summary>A table that hangs on the client and is not cleaned would stop the erasure: this fills all that there are.</summary>
    [Fact]
    public async Task Every_table_that_hangs_on_a_client_is_empty_afterwards()
    {
        await Forgotten();

        foreach (var table in ExportPlan.Given.Select(t => t.Name).Except(["tag", "string_kind", "instrument", "payer"]))
            Assert.Equal(0, _shop.Records.Count(table));
    }

    private async Task Ask()
    {
        await _phone.ProvesToBe(_shop);
        Assert.Equal("/my/details", (await _phone.Send(await _phone.Open("/my/forget"))).Location);
    }

    private async Task Forgotten()
    {
        await Ask();
        await _shop.Get<MailSender>().SendAll(TestContext.Current.CancellationToken);
        _shop.Clock.Advance(TimeSpan.FromDays(7));
        Worker.ForgetAll();
        Assert.Equal(0, _shop.Records.Count("client", $"id = {_odalys}"));
    }

    private List<string> FilesWith(string text)
    {
        var wanted = Encoding.UTF8.GetBytes(text);
        return [.. Directory.EnumerateFiles(_shop.Folder, "*", SearchOption.AllDirectories).Where(f => new FileInfo(f).Length > 0 && Bytes(f).IndexOf(wanted) >= 0).Select(f => Path.GetFileName(f)!).Order()];
    }

    private static Span<byte> Bytes(string file)
    {
        using var stream = new FileStream(file, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
