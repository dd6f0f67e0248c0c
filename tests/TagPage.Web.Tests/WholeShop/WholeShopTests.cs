using System.IO.Compression;
using System.Net;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Dapper;
using TagPage.Records.Storage;
using TagPage.Records.WholeShop;
using TagPage.Web.Start.Demo;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;
using TagPage.Web.WholeShop;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.WholeShop;

/// <summary>A whole shop moves out, and an empty one takes it in as it was.</summary>
public sealed class WholeShopTests : IDisposable
{
    private static readonly string[] Secrets = ["secret", "hash", "stamp", "token", "passw", "pin_", "form_key"];

    private static readonly string[] Money = ["payment", "bill_line", "charge", "charge_change"];

    private readonly TestShop _old = new();
    private readonly TestShop _new = new();

    public WholeShopTests() => ImportedShop.SetUp(_new);

    public void Dispose()
    {
        _old.Dispose();
        _new.Dispose();
    }

    [Fact]
    public void Every_table_goes_or_has_its_reason_to_stay()
    {
        var tables = _new.Database.Read(c => c.Query<string>("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%' AND name NOT LIKE 'search_%' OR name = 'search_note'").ToList());

        Assert.Equal(tables.Order(StringComparer.Ordinal), WholeShopPlan.Given.Select(t => t.Name).Concat(WholeShopPlan.NotGiven.Keys).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Nothing_that_sounds_like_a_secret_goes() => Assert.DoesNotContain(
        _new.Get<WholeShopStore>().Read(Who.Shop)!.SelectMany(sheet => sheet.Columns.Select(column => $"{sheet.Name}.{column}")),
        column => Secrets.Any(word => column.Split('.')[1].Contains(word, StringComparison.Ordinal)));

    [Fact]
    public void Demos_shop_moves_out_and_in_and_out_again_byte_for_byte()
    {
        _old.Get<DemoShop>().Prepare();
        var zip = Zip(_old);

        TakeIn(zip);

        AssertSame(zip, Zip(_new));
        Assert.Equal(Of(_old, "stock_move"), Of(_new, "stock_move"));
        Assert.NotEqual("", Of(_new, "stock_move"));
        foreach (var table in Money)
            Assert.True(_new.Records.Count(table) > 0, table);
        Assert.Equal(_old.Records.Text("SELECT group_concat(string_id || ' ' || left_cm) FROM string_stock"), _new.Records.Text("SELECT group_concat(string_id || ' ' || left_cm) FROM string_stock"));
        Assert.Equal(_old.Records.Text("SELECT group_concat(id || ' ' || seen_on) FROM client"), _new.Records.Text("SELECT group_concat(id || ' ' || seen_on) FROM client"));
    }

    [Fact]
    public void Corner_cases_move_byte_for_byte()
    {
        _old.Records.Shop();
        var family = _old.Records.Family();
        _old.Records.RetiredTag();
        _old.Records.Reading(family.Job, 62.123456789012345m);
        _old.Records.Change("""
            UPDATE client SET name = '=HYPERLINK("x")', note = '''=1' || char(13) || char(10) || 'two; "three"' || char(10) WHERE id = @Client;
            UPDATE player SET note = ' -5 ' WHERE id = @Player;
            UPDATE racket SET note = '+44', frame = '鷺沢 😀' WHERE id = @Racket;
            INSERT INTO label_logo (id, png, threshold) VALUES (1, x'00ff2c0d0a22', 7);
            INSERT INTO condition (job_id, frame, frame_words, grip) VALUES (@Job, 'Damaged', '=crack', 'Worn');
            INSERT INTO photo (job_id, made_at, width, height, small, picture) VALUES (@Job, '2026-11-20T10:00:00.000Z', 4, 3, x'ffd8ff01', x'ffd8ff00ff0d0a22'), (@Job, '2026-11-20T10:00:00.000Z', 4, 3, x'ffd8ff02', x'ffd8ff03');
            INSERT INTO charge (job_id, kind, words, amount_minor) VALUES (@Job, 'Adjustment', '-', -250);
            INSERT INTO charge_change (job_id, ticket, kind, was_minor, made_at, made_by) VALUES (@Job, 1, 'Labour', 5, '2026-11-20T10:00:00.000Z', 'Shop'), (NULL, 9, 'Labour', 5, '2026-11-20T10:00:00.000Z', 'Shop');
            INSERT INTO payment (id, client_id, paid_on, method, amount_minor, undoes_id, note, made_at, made_by) VALUES
              (1, @Client, '2026-11-20', 'Cash', 500, NULL, '@x', '2026-11-20T10:00:00.000Z', 'Shop'), (2, @Client, '2026-11-21', 'Cash', -500, 1, '', '2026-11-21T10:00:00.000Z', 'Shop');
            INSERT INTO payment_share (payment_id, job_id, amount_minor, made_at, made_by) VALUES (1, @Job, 300, '2026-11-20T10:00:00.000Z', 'Shop'), (2, @Job, -300, '2026-11-21T10:00:00.000Z', 'Shop');
            INSERT INTO bill (id, year, number, client_id, to_name, from_on, to_on, issued_on, shop, currency, paid_minor, cancels_id, made_at, made_by) VALUES
              (1, 2026, 1, @Client, 'Odalys', '2026-11-01', '2026-11-30', '2026-11-20', '{"a":"b;c"}', 'GBP', 0, NULL, '2026-11-20T10:00:00.000Z', 'Shop'), (2, 2026, 2, @Client, '', '2026-11-01', '2026-11-30', '2026-11-20', '{}', 'GBP', 0, 1, '2026-11-20T10:00:00.000Z', 'Shop');
            INSERT INTO bill_line (bill_id, position, job_id, ticket, strung_on, kind, amount_minor, tax_bp) VALUES (1, 1, @Job, 1, '2026-11-01', 'Labour', 1500, 2000);
            INSERT INTO string_stock (string_id, unit, racket_cm, since) VALUES (1, 'Metre', 1150, '2026-01-01');
            INSERT INTO stock_move (string_id, kind, centimetres, cost_minor, note, made_at, made_by) VALUES (1, 'Bought', 20000, 9900, 'reel', '2026-11-20T10:00:00.000Z', 'Shop'), (1, 'Counted', -37, NULL, '', '2026-11-21T10:00:00.000Z', 'Shop');
            INSERT INTO past_job (ticket, sport, mains_id, crosses_id, received_on) VALUES (70, 'Tennis', 1, 1, '2020-01-01');
            INSERT INTO deleted_ticket (ticket) VALUES (71);
            INSERT INTO event (id, name, from_on, to_on) VALUES (3, 'Harbour Open', '2026-11-25', '2026-11-26');
            INSERT INTO event_technician (id, event_id, name) VALUES (5, 3, 'Runa');
            INSERT INTO event_entry (job_id, event_id, number, came_at, technician_id) VALUES (@Job, 3, 12, '2026-11-25 09:00', 5);
            """, new { family.Client, family.Player, family.Racket, family.Job });
        var zip = Zip(_old);

        TakeIn(zip);

        AssertSame(zip, Zip(_new));
        Assert.Equal(_old.Records.Text("SELECT note FROM client"), _new.Records.Text("SELECT note FROM client"));
        Assert.Equal((" -5 ", "19963"), (_new.Records.Text("SELECT note FROM player"), _new.Records.Text("SELECT left_cm FROM string_stock")));
        Assert.NotEqual(_old.Records.Text("SELECT secret FROM client"), _new.Records.Text("SELECT secret FROM client"));
        Assert.Contains("'=HYPERLINK", Text(zip, "client.csv"), StringComparison.Ordinal);
    }

    [Fact]
    public void Photos_move_as_files_and_one_that_is_missing_is_refused_with_its_line()
    {
        _old.Records.Shop();
        var family = _old.Records.Family();
        _old.Records.Change("INSERT INTO photo (job_id, made_at, width, height, small, picture) VALUES (@Job, '2026-11-20T10:00:00.000Z', 4, 3, x'ffd8ff01', x'ffd8ff00ff0d0a22')", new { family.Job });
        var zip = Zip(_old);

        var why = Refused(With(zip, "photo/1-picture.jpg", null, ""));
        Assert.Equal("photo.csv, line 2, picture: the file that this names is missing or damaged. Nothing was taken in.", ShopRefusals.Of(why));

        TakeIn(zip);
        Assert.Equal("FFD8FF00FF0D0A22 FFD8FF01", _new.Records.Text("SELECT hex(picture) || ' ' || hex(small) FROM photo"));
    }

    [Fact]
    public void Shop_with_records_of_its_own_takes_nothing_in()
    {
        _old.Records.Shop();
        _new.Records.Client("Tamsin Quill");
        var before = _new.Database.Dump();

        Assert.IsType<ShopInUse>(Refused(Zip(_old)));

        Assert.Equal(before, _new.Database.Dump());
    }

    [Theory]
    [InlineData("client.csv", "Odalys Ferran", "", "client.csv, line 2: the line holds something that cannot be, or that another line has already. Nothing was taken in.")]
    [InlineData("racket.csv", "Tennis", "Golf", "racket.csv, line 2: the line holds something that cannot be, or that another line has already. Nothing was taken in.")]
    [InlineData("job.csv", ",1,1,Shop", ",1,x,Shop", "job.csv, line 2, crosses_id: this is no number. Nothing was taken in.")]
    [InlineData("player.csv", "1,1,Pim", "1,77,Pim", "player.csv, line 2, client_id: the record refers to one that is in none of the files. Nothing was taken in.")]
    [InlineData("player.csv", "junior", "senior", "player.csv, line 1, senior: this column is unknown. The file may come from another version of the program. Nothing was taken in.")]
    [InlineData("player.csv", ",junior", "", "player.csv, line 1, junior: this column is missing. The file may come from another version of the program. Nothing was taken in.")]
    public void File_that_does_not_fit_is_refused_with_its_line_and_nothing_is_taken_in(string file, string text, string instead, string says)
    {
        _old.Records.Shop();
        _old.Records.Family();
        var before = _new.Database.Dump();

        var why = Refused(With(Zip(_old), file, text, instead));

        Assert.Equal(says, ShopRefusals.Of(why));
        Assert.Equal(before, _new.Database.Dump());
    }

    [Fact]
    public void Record_that_refers_to_nothing_is_told_by_its_line_not_by_its_number()
    {
        _old.Records.Shop();
        var family = _old.Records.Family();
        var racket = _old.Records.Racket(family.Player, 7);

        Assert.Equal("racket.csv, line 3, player_id: the record refers to one that is in none of the files. Nothing was taken in.", ShopRefusals.Of(Refused(With(Zip(_old), "racket.csv", $"\n{racket},{family.Player}", $"\n{racket},9999"))));
    }

    [Fact]
    public void Zip_without_one_of_its_files_is_refused() =>
        Assert.Equal("shop.csv: the file is missing. Nothing was taken in.", ShopRefusals.Of(Refused(With(Zip(_new), "shop.csv", null, ""))));

    [Theory]
    [InlineData("PK")]
    [InlineData("")]
    [InlineData("client,name")]
    public void What_is_no_such_zip_is_refused(string text) => Assert.NotNull(WholeShopZip.Read(new MemoryStream(Encoding.UTF8.GetBytes(text))).Wrong);

    [Fact]
    public void Zip_with_a_file_of_another_name_is_refused()
    {
        using var zip = new MemoryStream();
        using (var archive = new ZipArchive(zip, ZipArchiveMode.Create, leaveOpen: true))
            archive.CreateEntry("../keys/client.csv");

        Assert.NotNull(WholeShopZip.Read(new MemoryStream(zip.ToArray())).Wrong);
    }

    [Fact]
    public async Task Owner_downloads_everything_and_takes_it_in_elsewhere_once()
    {
        _old.Records.Shop();
        _old.Records.Family();
        var owner = _old.Owner();
        var page = await owner.Open("/shop/whole");
        var download = page.Document.QuerySelector<IHtmlFormElement>("main form[action*=ownload]")!;
        using var given = (await owner.Post(page, download)).Response;
        var zip = await given.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);

        var done = await Send(_new.Owner(), zip);

        Assert.Equal((HttpStatusCode.Redirect, "/shop"), (done.Status, done.Location));
        Assert.Equal((1, "Ferrygate Racket Bench"), (_new.Records.Count("racket"), _new.Records.Text("SELECT name FROM shop")));
        Assert.DoesNotContain("Take it in", (await _new.Owner().Open("/shop/whole")).Main, StringComparison.Ordinal);
        Assert.Equal(1, _old.Records.Count("audit", "event = 1203"));
    }

    [Fact]
    public async Task What_is_no_zip_is_refused_beside_its_field() =>
        Assert.Equal("This is not the zip file that “Download everything” makes.", Assert.Single((await Send(_new.Owner(), [1, 2, 3])).Errors));

    private static async Task<WebPage> Send(Visitor visitor, byte[] zip)
    {
        var page = await visitor.Open("/shop/whole");
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in FormValues.Of(page.Document.QuerySelector<IHtmlFormElement>("main form[enctype]")!).Pairs.Where(p => p.Key != "Input.Sent"))
            content.Add(new StringContent(value), name);
        content.Add(new ByteArrayContent(zip), "Input.Sent", "shop.zip");
        return await visitor.Follow(await WebPage.Of(await visitor.Client.PostAsync(new Uri("/shop/whole", UriKind.Relative), content, TestContext.Current.CancellationToken), page.Path));
    }

    private static byte[] Zip(TestShop shop)
    {
        using var zip = new MemoryStream();
        Assert.True(WholeShopZip.Write(zip, give => shop.Get<WholeShopStore>().Read(Who.Shop, give)));
        return zip.ToArray();
    }

    private Outcome Take(byte[] zip)
    {
        var (parts, wrong) = WholeShopZip.Read(new MemoryStream(zip));
        Assert.Null(wrong);
        return _new.Get<WholeShopStore>().TakeIn(Who.Shop, FormKey.New(), parts);
    }

    private void TakeIn(byte[] zip)
    {
        var outcome = Take(zip);
        Assert.True(outcome is Outcome.Done, outcome is Outcome.Refused { Why: var why } ? why.ToString() : "");
    }

    private Refusal Refused(byte[] zip) => Assert.IsType<Outcome.Refused>(Take(zip)).Why;

    private static void AssertSame(byte[] one, byte[] other)
    {
        foreach (var table in WholeShopPlan.Given)
            Assert.Equal(Text(one, table.Name + ".csv"), Text(other, table.Name + ".csv"));
        Assert.Equal(one, other);
    }

    private static string Of(TestShop shop, string table) => Text(Zip(shop), table + ".csv");

    private static string Text(byte[] zip, string file)
    {
        using var archive = new ZipArchive(new MemoryStream(zip));
        using var reader = new StreamReader(archive.GetEntry(file)!.Open(), Encoding.UTF8);
        return reader.ReadToEnd();
    }

    /// <summary>The same with the first such text of a file replaced; without the file where no text is named.</summary>
    private static byte[] With(byte[] zip, string file, string? text, string instead)
    {
        using var archive = new ZipArchive(new MemoryStream(zip));
        using var changed = new MemoryStream();
        using (var target = new ZipArchive(changed, ZipArchiveMode.Create, leaveOpen: true))
            foreach (var name in archive.Entries.Select(entry => entry.FullName).Where(name => text is not null || name != file))
            {
                using var writer = new StreamWriter(target.CreateEntry(name).Open());
                var was = Text(zip, name);
                var at = name == file ? was.IndexOf(text!, StringComparison.Ordinal) : -1;
                Assert.True(name != file || at >= 0, text);
                writer.Write(at < 0 ? was : was[..at] + instead + was[(at + text!.Length)..]);
            }
        return changed.ToArray();
    }
}
