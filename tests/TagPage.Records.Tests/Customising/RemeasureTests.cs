using TagPage.Core.Customising;
using TagPage.Records.Customising;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Customising;

/// <summary>When a frame has to be measured again, because something went on or came off that no spec counts.</summary>
public sealed class RemeasureTests : IDisposable
{
    private static readonly DateOnly Day = Street.Today;
    private static readonly FramePlace Tip = new("Twelve o’clock", 68);

    private readonly Street _street = new();
    private readonly SpecStore _specs;
    private readonly AddedMassStore _pieces;

    public RemeasureTests()
    {
        (_specs, _pieces) = (new SpecStore(_street.Database, _street.Time), new AddedMassStore(_street.Database, _street.Time));
        Measure(Day);
    }

    public void Dispose() => _street.Dispose();

    private bool Asks => new FrameOnFileStore(_street.Database, new ShopStore(_street.Database)).Get(_street.Racket)!.HasChanged;

    [Fact]
    public void Piece_noted_by_hand_on_the_day_of_the_measurement_asks_for_another()
    {
        Note(Day);

        Assert.True(Asks);
        Measure(Day);
        Assert.False(Asks);
    }

    [Fact]
    public void Piece_that_was_on_the_frame_when_it_was_measured_asks_for_nothing()
    {
        Note(Day.AddDays(-1));
        Assert.False(Asks);

        Measure(Day.AddDays(-1));
        Assert.False(Asks);
    }

    [Fact]
    public void Piece_taken_off_by_hand_on_the_day_of_the_measurement_asks_for_another()
    {
        var piece = Note(Day.AddDays(-1));

        _street.Check(true, () => _pieces.TakeOff(Who.Shop, _street.Racket, piece, Day));

        Assert.True(Asks);
        Measure(Day);
        Assert.False(Asks);
    }

    [Fact]
    public void Plan_that_is_carried_out_counts_its_own_pieces()
    {
        Plan(Day, Added: [(Tip, 4)]);
        Assert.False(Asks);

        Plan(Day.AddDays(1), Removed: [(_pieces.Of(_street.Racket)[0].Id, 1.5)]);
        Assert.False(Asks);
    }

    [Fact]
    public void Plan_does_not_count_what_was_noted_by_hand_before_it()
    {
        Note(Day);

        Plan(Day.AddDays(1), Added: [(Tip, 4)]);

        Assert.True(Asks);
        Measure(Day.AddDays(1));
        Assert.False(Asks);
    }

    [Fact]
    public void Piece_that_never_was_on_asks_for_nothing_once_it_is_forgotten()
    {
        var piece = Note(Day);

        _street.Check(true, () => _pieces.Forget(Who.Shop, _street.Racket, piece));

        Assert.False(Asks);
    }

    private void Measure(DateOnly on) => _specs.Add(Who.Shop, _street.Racket, new SpecEntry
    {
        FormKey = FormKey.New(),
        MeasuredOn = on,
        Weight = 300,
        Balance = 320,
        SwingWeight = 290,
        Length = 685,
    });

    private long Note(DateOnly on) => Assert.IsType<Outcome.Done>(_pieces.Note(Who.Shop, _street.Racket,
        new PieceEntry { FormKey = FormKey.New(), Place = "Handle", At = 8, Weight = 5, AddedOn = on })).Id;

    private void Plan(DateOnly on, IReadOnlyList<(FramePlace, double)>? Added = null, IReadOnlyList<(long, double)>? Removed = null)
    {
        var spec = _specs.Of(_street.Racket)[0];
        _street.Check(true, () => new CustomiseStore(_street.Database, _street.Time).Apply(Who.Shop, FormKey.New(),
            [(_street.Racket, new CustomEntry { On = on, SpecId = spec.Id, SpecVersion = spec.Version, Added = Added ?? [], Removed = Removed ?? [] })]));
    }
}
