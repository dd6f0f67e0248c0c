using System.IO.Compression;
using TagPage.Core.Money;
using TagPage.Records.Events;
using TagPage.Records.Import;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A laptop went to the event with a copy of the shop's records, and the shop at home went on without it.</summary>
public sealed class EventHomeTests : IDisposable
{
    private const int FirstFree = 1003;

    private readonly TestShop _laptop = new(), _home = new();
    private readonly Fairground _fair;
    private readonly long _pims;

    public EventHomeTests()
    {
        foreach (var shop in new[] { _laptop, _home })
            shop.Records.Shop();
        (_fair, _pims) = (new Fairground(_laptop), _laptop.Records.Family().Racket);
        _home.Records.Job(_home.Records.Racket(_home.Records.Player(_home.Records.Family().Client, "Mae Ferran")));
    }

    public void Dispose()
    {
        _laptop.Dispose();
        _home.Dispose();
    }

    [Fact]
    public async Task Event_comes_home_once_and_the_owner_says_who_is_who()
    {
        var files = await Files(FirstFree);
        var before = _home.Database.Dump();
        Assert.Equal("Odalys Ferran", Assert.Single(Bring(files, OtherMatches.Ask).Undecided).Client.Name);
        Assert.Equal(before, _home.Database.Dump());

        Assert.Empty(Bring(files, OtherMatches.Merge).Problems);

        // Pim's racket is the one on file; Tove is new.
        Assert.Equal((1, 1), (_home.Records.Count("client", "name = 'Odalys Ferran'"), _home.Records.Count("client", "name = 'Tove Alling' AND reminders = 0")));
        Assert.Equal(2, _home.Records.Count("job", $"racket_id = {_home.Records.Text("SELECT r.id FROM racket r JOIN player p ON p.id = r.player_id WHERE p.name = 'Pim Ferran'")}"));
        Assert.Equal(1, _home.Records.Count("job", "ticket = 1003 AND state = 'Collected' AND strung_by = 'Bram' AND strung_on = '2026-11-25' AND received_where = 'Harbour Open' AND note = 'no. 1, stencil Lighthouse, red' AND price_minor = 1200 AND paid_on IS NULL AND mains_tension = 51"));
        Assert.Equal(1, _home.Records.Count("job", "ticket = 1005 AND note = 'no. 3, Norden' AND paid_on = '2026-11-25'"));
        Assert.Equal(1, _home.Records.Count("payment", "method = 'Card' AND amount_minor = 1200"));

        var counts = (_home.Records.Count("client"), _home.Records.Count("racket"), _home.Records.Count("job"), _home.Records.Count("payment"));
        Assert.Equal("nothing, because all of it is already there", Bring(await Files(FirstFree), OtherMatches.Merge).Summary);
        Assert.Equal(counts, (_home.Records.Count("client"), _home.Records.Count("racket"), _home.Records.Count("job"), _home.Records.Count("payment")));
    }

    [Fact]
    public async Task Ticket_that_was_given_out_at_home_meanwhile_is_refused_by_its_line_and_nothing_is_saved()
    {
        var files = await Files(FirstFree - 1);
        var before = _home.Database.Dump();

        var problem = Assert.Single(Bring(files, OtherMatches.Merge).Problems);

        Assert.Equal(("jobs.csv", 2, "ticket"), (problem.File, problem.Line, problem.Column));
        Assert.Equal(before, _home.Database.Dump());
    }

    [Fact]
    public async Task Open_event_is_not_taken_home()
    {
        var answer = await _laptop.Owner().Get($"/shop/events/{_fair.Id}?handler=home&ticket=1");

        Assert.Equal(System.Net.HttpStatusCode.NotFound, answer.StatusCode);
    }

    /// <summary>Pim's racket, one that was withdrawn, and Tove's, who paid by card; then the event is closed.</summary>
    private async Task<ImportFiles> Files(int firstTicket)
    {
        if (_fair.Board.Entries.Count == 0)
            Day();
        var runa = _laptop.Owner();
        var zip = await runa.Get($"/shop/events/{_fair.Id}?handler=home&ticket={firstTicket}");
        using var archive = new ZipArchive(await zip.Content.ReadAsStreamAsync(TestContext.Current.CancellationToken));
        var files = new ImportFiles();
        foreach (var entry in archive.Entries)
        {
            using var bytes = new MemoryStream();
            await using var content = await entry.OpenAsync(TestContext.Current.CancellationToken);
            await content.CopyToAsync(bytes, TestContext.Current.CancellationToken);
            Assert.True(files.TryAdd(entry.Name, bytes.ToArray()));
        }
        return files;
    }

    private void Day()
    {
        Fairground.Done(_laptop.Get<IntakeStore>().Add(Who.Shop, _fair.Id, new IntakeEntry { FormKey = FormKey.New(), RacketId = _pims, Stencil = "Lighthouse", StencilColour = "red", Order = new JobEntry { MainsId = _laptop.Records.Kind(), MainsTension = 51, MainsSuppliedBy = Core.Jobs.Supplier.Client } }));
        _fair.TakeIn("Ilse Marrow");
        _fair.TakeIn("Tove Alling");
        var moves = _laptop.Get<DeskMoveStore>();
        Fairground.Done(moves.Withdraw(Who.Shop, _fair.Id, 2));
        foreach (var (number, paid) in new (int, PaymentMethod?)[] { (1, null), (3, PaymentMethod.Card) })
        {
            Fairground.Done(moves.Take(Who.Shop, _fair.Id, number, _fair.Bram));
            Fairground.Done(moves.Strung(Who.Shop, _fair.Id, number));
            Fairground.Done(moves.HandOut(Who.Shop, _fair.Id, number, paid));
        }
        Fairground.Done(_laptop.Get<EventStore>().Close(Who.Shop, _fair.Id));
    }

    private ImportReport Bring(ImportFiles files, OtherMatches others) =>
        _home.Get<Importer>().Import(files, new ImportChoices { Others = others }, FormKey.New());
}
