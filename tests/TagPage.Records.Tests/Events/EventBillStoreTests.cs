using TagPage.Core.Money;
using TagPage.Records.Events;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Events;

/// <summary>Tove plays for Norden with numbers 1 and 2, Ilse for herself with 3; 4 is Norden's and not strung.</summary>
public sealed class EventBillStoreTests : IDisposable
{
    private readonly Fair _fair = new();

    public EventBillStoreTests()
    {
        var tove = _fair.Of(Strung("Tove Alling", "Norden")).PlayerId;
        Strung("", "Norden", tove);
        Strung("Ilse Marrow", null);
        _fair.TakeIn("Edda Brink");
    }

    public void Dispose() => _fair.Dispose();

    [Fact]
    public void Teams_bill_has_all_its_strung_rackets_and_its_players_none_of_their_own()
    {
        var bill = Bill(Norden("Norden Racket Union", "Quay 3\n\n 7100 Fjell "));

        Assert.Equal(("2026-0001", "Norden Racket Union", "Quay 3\n7100 Fjell", 2400L), (bill.Name, bill.ToName, bill.ToAddress, bill.TotalMinor));
        Assert.Equal((null, null), (bill.ClientId, bill.PayerId));
        Assert.Equal([(1, "Tove Alling", 1), (2, "Tove Alling", 2)], bill.Lines.Select(line => (line.Desk!.Value, line.Whose, line.Racket!.Value)));
        Assert.Equal([1, 2], _fair.Bills.Of(Who.Shop, _fair.Id).Select(billed => billed.Number).Order());
        _fair.Street.Refused<NothingToBill>(() => _fair.Bills.Make(Who.Shop, _fair.Id, Hers(1) with { TeamToo = true }));
    }

    [Fact]
    public void Player_is_billed_through_the_team_unless_they_pay_for_themselves()
    {
        _fair.Street.Refused<NothingToBill>(() => _fair.Bills.Make(Who.Shop, _fair.Id, Hers(1)));

        var bill = Bill(Hers(1) with { TeamToo = true });

        Assert.Equal((2400L, _fair.Street.Records.Text("SELECT id FROM client WHERE name = 'Tove Alling'")), (bill.TotalMinor, $"{bill.ClientId}"));
        _fair.Street.Refused<NothingToBill>(() => _fair.Bills.Make(Who.Shop, _fair.Id, Norden("Norden", null)));
    }

    [Fact]
    public void Team_is_billed_in_the_shops_language_and_a_player_in_their_own()
    {
        _fair.Street.Records.Change("UPDATE shop SET language = 'it'; UPDATE client SET language = 'ja'");

        Assert.Equal(("it", "ja"), (Bill(Norden("Norden", null)).Language, Bill(Hers(3)).Language));
    }

    [Fact]
    public void Numbers_are_the_shops_own_and_without_gaps_and_a_month_bills_nothing_again()
    {
        var ilse = Bill(Hers(3));
        Assert.Equal((1, 1200L), (ilse.Number, ilse.TotalMinor));
        Assert.Equal(2, Bill(Norden("Norden", null)).Number);

        _fair.Street.Refused<NothingToBill>(() => Shop.Make(Who.Shop, Party.Client(ilse.ClientId!.Value), Cast.Street.Today));
    }

    [Fact]
    public void Form_sent_twice_writes_one_bill()
    {
        var form = Norden("Norden", null);

        Assert.Equal(Fair.Done(_fair.Bills.Make(Who.Shop, _fair.Id, form)), Fair.Done(_fair.Bills.Make(Who.Shop, _fair.Id, form)));
        Assert.Equal(1, _fair.Street.Records.Count("bill"));
    }

    [Fact]
    public void Cancelled_bill_keeps_its_address_and_its_rackets_can_be_billed_again()
    {
        var first = Bill(Norden("Norden", "Quay 3"));
        var counter = Shop.Get(Who.Shop, Fair.Done(Shop.Cancel(Who.Shop, first.Id)))!;

        Assert.Equal((2, "Quay 3", -2400L), (counter.Number, counter.ToAddress, counter.TotalMinor));
        Assert.Empty(_fair.Bills.Of(Who.Shop, _fair.Id));
        Assert.Equal(3, Bill(Norden("Norden", "Quay 3")).Number);
    }

    [Fact]
    public void Team_pays_all_at_once_and_each_racket_is_paid_on_its_players_account()
    {
        Assert.Equal(2, Fair.Done(_fair.Bills.Pay(Who.Shop, _fair.Id, EventParty.Of("Norden"), PaymentMethod.Transfer)));
        _fair.Street.Refused<NothingToPay>(() => _fair.Bills.Pay(Who.Shop, _fair.Id, EventParty.Of("Norden"), PaymentMethod.Transfer));

        Assert.Equal([3, 4], _fair.Board.Entries.Where(entry => entry.IsUnpaid).Select(entry => entry.Number));
        Assert.Equal(2, _fair.Street.Records.Count("payment", "method = 'Transfer' AND amount_minor = 1200 AND note = 'Norden' AND client_id = (SELECT id FROM client WHERE name = 'Tove Alling')"));
        Assert.Equal((2400L, 0L), (Bill(Norden("Norden", null)).PaidMinor, Shop.Get(Who.Shop, 1)!.ToPayMinor));
    }

    [Fact]
    public void Junior_stands_on_a_teams_bill_without_a_name()
    {
        _fair.Street.Records.Change("UPDATE player SET junior = 1 WHERE name = 'Tove Alling'");

        var line = Bill(Norden("Norden", null)).Lines[0];

        Assert.Equal((1, "", 1), (line.Desk, line.Whose, line.Racket));
    }

    private BillStore Shop => new(_fair.Street.Database, new ShopStore(_fair.Street.Database), _fair.Street.Clock);

    private BillRow Bill(EventBillEntry form) => Shop.Get(Who.Shop, Fair.Done(_fair.Bills.Make(Who.Shop, _fair.Id, form)))!;

    private static EventBillEntry Norden(string name, string? address) => new() { FormKey = FormKey.New(), Whose = EventParty.Of("Norden"), ToName = name, ToAddress = address };

    private EventBillEntry Hers(int number) => new() { FormKey = FormKey.New(), Whose = EventParty.Player(_fair.Of(number).PlayerId), ToName = _fair.Of(number).Player };

    private int Strung(string name, string? team, long? player = null)
    {
        var number = (int)Fair.Done(_fair.Intakes.Add(Who.Shop, _fair.Id, _fair.Entry(name, entry => entry with { Team = team, PlayerId = player })));
        Fair.Done(_fair.Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(_fair.Moves.Strung(_fair.Helper, _fair.Id, number));
        return number;
    }
}
