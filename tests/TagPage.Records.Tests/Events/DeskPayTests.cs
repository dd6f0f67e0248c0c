using TagPage.Core.Money;
using TagPage.Records.Events;

namespace TagPage.Records.Tests.Events;

/// <summary>How rackets are paid for when they are handed out, and afterwards.</summary>
public sealed class DeskPayTests : IDisposable
{
    private readonly Fair _fair = new();

    public void Dispose() => _fair.Dispose();

    private DeskMoveStore Moves => _fair.Moves;

    [Fact]
    public void Racket_paid_at_the_desk_has_a_payment_in_cash()
    {
        var number = _fair.TakeIn();
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));

        var entry = _fair.Of(number);
        Assert.False(entry.IsUnpaid);
        Assert.Equal($"{entry.PriceMinor}|Cash|Event", _fair.Street.Records.Text($"SELECT amount_minor || '|' || method || '|' || made_by FROM payment WHERE id = (SELECT payment_id FROM payment_share WHERE job_id = {entry.JobId})"));
    }

    [Theory]
    [InlineData(PaymentMethod.Card)]
    [InlineData(PaymentMethod.Transfer)]
    public void Racket_is_paid_as_it_was_paid_at_hand_out_and_afterwards(PaymentMethod method)
    {
        foreach (var number in new[] { _fair.TakeIn(), _fair.TakeIn("Ilse Marrow") })
        {
            Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
            Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        }
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, 1, method));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, 2, null));
        Fair.Done(Moves.Pay(_fair.Helper, _fair.Id, 2, method));

        Assert.Equal(2, _fair.Street.Records.Count("payment", $"amount_minor = 1200 AND method = '{method}' AND made_by = 'Event'"));
    }

    [Fact]
    public void Racket_on_a_players_account_is_paid_later_once_and_not_before_it_is_handed_out()
    {
        var number = _fair.TakeIn();
        _fair.Street.Refused<EntryMovedOn>(() => Moves.Pay(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));
        Fair.Done(Moves.Take(_fair.Helper, _fair.Id, number, _fair.Runa));
        Fair.Done(Moves.Strung(_fair.Helper, _fair.Id, number));
        Fair.Done(Moves.HandOut(_fair.Helper, _fair.Id, number, null));
        Assert.Equal([number], _fair.Board.Owed.Select(entry => entry.Number));

        Fair.Done(Moves.Pay(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));
        Fair.Done(Moves.Pay(_fair.Helper, _fair.Id, number, PaymentMethod.Cash));

        Assert.Empty(_fair.Board.Owed);
        Assert.Equal(1, _fair.Street.Records.Count("payment", "amount_minor = 1200 AND method = 'Cash'"));
    }
}
