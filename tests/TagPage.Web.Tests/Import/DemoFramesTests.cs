using TagPage.Core.Customising;
using TagPage.Records.Customising;
using TagPage.Records.Import;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

/// <summary>The demo's customised frames: what is said of them follows from what was measured and put on.</summary>
public sealed class DemoFramesTests
{
    private static readonly string Seed = Path.Combine(AppContext.BaseDirectory, "seed-demo");

    private readonly ImportBatch _batch = ImportReader.Read(ImportFiles.From(Seed), shop: null, new DateOnly(2026, 11, 25)).Batch;

    [Fact]
    public void Three_frames_of_one_player_were_matched_with_pieces_on_two_and_a_list_of_places()
    {
        var matched = _batch.Specs.GroupBy(spec => spec.Racket!.Player).Single(player => player.Select(spec => spec.Racket).Distinct().Count() == 3);
        var before = matched.GroupBy(spec => spec.Racket).Select(frame => frame.OrderBy(spec => spec.Spec.MeasuredOn).First()).ToList();
        var after = matched.GroupBy(spec => spec.Racket).Select(frame => frame.OrderBy(spec => spec.Spec.MeasuredOn).Last()).ToList();

        Assert.True(before.Max(spec => spec.Spec.Weight) - before.Min(spec => spec.Spec.Weight) >= 6);
        Assert.True(after.Max(spec => spec.Spec.Weight) - after.Min(spec => spec.Spec.Weight) == 0);
        Assert.True(after.Max(spec => spec.Spec.Balance) - after.Min(spec => spec.Spec.Balance) <= 0.5m);
        Assert.True(after.Max(spec => spec.Spec.SwingWeight) - after.Min(spec => spec.Spec.SwingWeight) <= 1);
        Assert.Equal(2, _batch.Pieces.Where(piece => piece.Racket!.Player == matched.Key).Select(piece => piece.Racket).Distinct().Count());
        Assert.Equal(6, _batch.Places.Count(place => place.Racket!.Player == matched.Key));
    }

    [Fact]
    public void Every_customised_spec_is_the_one_before_with_its_pieces()
    {
        var customised = _batch.Specs.Where(spec => spec.Spec.Kind == SpecKind.Customised).ToList();

        Assert.Equal(3, customised.Count);
        Assert.All(customised, spec =>
        {
            var before = _batch.Specs.Where(other => other.Racket == spec.Racket && other.Spec.MeasuredOn < spec.Spec.MeasuredOn).MaxBy(other => other.Spec.MeasuredOn)!;
            var pieces = _batch.Pieces.Where(piece => piece.Racket == spec.Racket && piece.Piece.AddedOn == spec.Spec.MeasuredOn).Select(piece => new AddedMass((double)piece.Piece.Weight, (double)piece.Piece.At)).ToList();
            var worked = SpecFigures.Of(new SpecEntry { Weight = before.Spec.Weight, Balance = before.Spec.Balance, SwingWeight = before.Spec.SwingWeight }, new()).Measured!.Value.After(pieces, new());
            Assert.Equal((worked.MassG.Value, worked.BalanceCm.Value * 10, worked.SwingWeight.Value), ((double)spec.Spec.Weight!, (double)spec.Spec.Balance!, (double)spec.Spec.SwingWeight!), new Tenths());
            Assert.Equal((worked.MassG.Off, worked.BalanceCm.Off * 10, worked.SwingWeight.Off), ((double)spec.Spec.WeightOffG!, (double)spec.Spec.BalanceOffMm!, (double)spec.Spec.SwingWeightOff!), new Tenths(0.0001));
            Assert.Equal((worked.Correlation.MassBalance, worked.Correlation.MassSwing, worked.Correlation.BalanceSwing), ((double)spec.Spec.WeightBalanceR!, (double)spec.Spec.WeightSwingR!, (double)spec.Spec.BalanceSwingR!), new Tenths(0.0001));
            Assert.Equal(SwingSource.WorkedOut, spec.Spec.SwingSource);
        });
    }

    [Fact]
    public void No_frame_of_the_demo_has_to_be_measured_again()
    {
        using var shop = new TestShop();
        Assert.Empty(shop.Get<Importer>().Import(ImportFiles.From(Seed), new ImportChoices { Others = OtherMatches.KeepApart }, FormKey.New()).Problems);

        Assert.All(_batch.Rackets.Rows.Select((_, i) => shop.Get<FrameOnFileStore>().Get(i + 1)), frame => Assert.False(frame!.HasChanged));
    }

    private sealed class Tenths(double within = 0.05) : IEqualityComparer<(double A, double B, double C)>
    {
        public bool Equals((double A, double B, double C) x, (double A, double B, double C) y) =>
            Math.Abs(x.A - y.A) <= within && Math.Abs(x.B - y.B) <= within && Math.Abs(x.C - y.C) <= within;

        public int GetHashCode((double A, double B, double C) obj) => 0;
    }
}
