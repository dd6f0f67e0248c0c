using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Records.Customising;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Customising;

/// <summary>
/// What is open about a plan's figures, against a simulation: everything that was read off an instrument moves at random by
/// its own uncertainty, and all figures are worked out from that (GUM, JCGM 100:2008, 5.2, and its Supplement 1, JCGM 101:2008).
/// </summary>
public sealed class PlanUncertaintyTests : IDisposable
{
    private const int Draws = 40_000;

    private static readonly CustomisingValues Values = new();
    private static readonly Tolerances Instruments = Values.Tolerances;

    private readonly Street _street = new();
    private readonly SpecStore _specs;
    private readonly Random _random = new(17);

    public PlanUncertaintyTests()
    {
        _specs = new SpecStore(_street.Database, _street.Time);
        _street.Records.Change("UPDATE racket SET length_cm = 68.5");
    }

    public void Dispose() => _street.Dispose();

    private FrameOnFile Frame => new FrameOnFileStore(_street.Database, new ShopStore(_street.Database)).Get(_street.Racket)!;

    [Fact]
    public void Recoil_weight_of_a_frame_measured_unstrung_agrees_with_a_simulation_before_and_after_a_plan()
    {
        Measure(new SpecEntry { Weight = 300, Balance = 320, SwingWeight = 290, Length = 685 });
        var plan = SetPlan.Of([Frame], PlanWanted, new PlanLocks(), AddedMaterial.Lead, Values).Plans[0];
        Assert.True(plan.IsOfEstimate);

        Agrees(() => Strung(plan, Draw(Instruments.Mass(300)), Draw(Instruments.Length(32)), Draw(Instruments.Swing(290))), plan.Before);
        Agrees(() => Piece(plan, Strung(plan, Draw(Instruments.Mass(300)), Draw(Instruments.Length(32)), Draw(Instruments.Swing(290)))), plan.After(Instruments));
    }

    [Fact]
    public void Scale_and_rule_that_went_into_balance_and_pendulum_are_counted_once()
    {
        Measure(new SpecEntry
        {
            Weight = 320,
            TipWeight = 150,
            Balance = 321.1m,
            Length = 685,
            Strung = true,
            SwingWeight = 298.6m,
            SwingSource = SwingSource.Pendulum,
            PendulumAxis = 0,
            PendulumPeriodS = 1.36m,
            PendulumOffS = 0.002m,
        });
        var plan = CustomPlan.Of(Frame, new Wanted { MassG = 330, SwingWeight = 312 }, new PlanLocks(), AddedMaterial.Lead, Values);

        Assert.Equal(Frame.Figures.Points, plan.Points(plan.Before, Instruments));
        Agrees(Swung, plan.Before);
        Agrees(() => Piece(plan, Swung()), plan.After(Instruments));

        Body Swung()
        {
            var (mass, axis) = (Draw(Instruments.Mass(320)), Draw(Instruments.Length(0)));
            var balance = BalancePoint.FromTip(Draw(Instruments.Mass(150)), mass, Draw(Instruments.Length(68.5)));
            return new Body(mass, balance, new Pendulum(mass, balance, axis, Draw(new(1.36, 0.002))).SwingWeight());
        }
    }

    [Fact]
    public void Spec_that_was_worked_out_leaves_as_much_open_as_the_plan_did_and_so_does_the_next_plan()
    {
        Measure(new SpecEntry { Weight = 300, Balance = 320, SwingWeight = 290, Length = 685, Strung = true });
        var first = CustomPlan.Of(Frame, PlanWanted, new PlanLocks(), AddedMaterial.Lead, Values);
        _street.Check(true, () => new CustomiseStore(_street.Database, _street.Time).Apply(Who.Shop, FormKey.New(), [(_street.Racket, first.ToEntry(Street.Today, Instruments))]));

        var planned = first.After(Instruments).RecoilWeight.Off;
        Assert.Equal(planned, Frame.Figures.RecoilWeight!.Value.Off, 2);

        var next = CustomPlan.Of(Frame, new Wanted { MassG = 316 }, new PlanLocks(), AddedMaterial.Lead, Values);
        Agrees(() => Piece(next, Piece(first, new Body(Draw(Instruments.Mass(300)), Draw(Instruments.Length(32)), Draw(Instruments.Swing(290))))), next.After(Instruments));
    }

    private static Wanted PlanWanted => new() { MassG = 325, BalanceCm = 33, SwingWeight = 335 };

    private void Measure(SpecEntry spec) => _specs.Add(Who.Shop, _street.Racket, spec with { FormKey = FormKey.New(), MeasuredOn = Street.Today });

    private Body Strung(CustomPlan plan, double mass, double balance, double swing)
    {
        var (grams, at) = StringBed.Estimate(plan.Frame.StringBedG, plan.Frame.Racket.Sport, plan.Frame.LengthCm);
        return new Body(mass, balance, swing).With(new AddedMass(Draw(grams), Draw(at)));
    }

    private Body Piece(CustomPlan plan, Body body) =>
        body.With(plan.Rounded.Masses.Select(piece => new AddedMass(Draw(Instruments.Mass(piece.Grams)), Draw(Instruments.Length(piece.AtCm)))));

    private static void Agrees(Func<Body> draw, MeasuredBody worked)
    {
        Body[] drawn = [.. Enumerable.Range(0, Draws).Select(_ => draw())];
        Agree(body => body.MassG, worked.MassG);
        Agree(body => body.BalanceCm, worked.BalanceCm);
        Agree(body => body.SwingWeight, worked.SwingWeight);
        Agree(body => body.RecoilWeight, worked.RecoilWeight);

        void Agree(Func<Body, double> figure, Uncertain says)
        {
            var mean = drawn.Average(figure);
            Assert.Equal(mean, says.Value, 0.1);
            Assert.InRange(says.Off / Math.Sqrt(drawn.Average(body => Math.Pow(figure(body) - mean, 2))), 0.97, 1.03);
        }
    }

    private double Draw(Uncertain figure) =>
        figure.Value + (figure.Off * Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble()));
}
