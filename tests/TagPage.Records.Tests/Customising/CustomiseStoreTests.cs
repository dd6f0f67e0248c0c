using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Records.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Customising;

/// <summary>What is written down when masses go on and come off.</summary>
public sealed class CustomiseStoreTests : IDisposable
{
    private static readonly FramePlace Tip = new("Twelve o’clock", 68), Sides = new("Three and nine o’clock", 53) { Paired = true, OffAxisCm = 12.5 };

    private readonly Street _street = new();
    private readonly CustomiseStore _store;
    private readonly SpecStore _specs;
    private readonly AddedMassStore _masses;

    public CustomiseStoreTests()
    {
        _store = new CustomiseStore(_street.Database, _street.Time);
        _specs = new SpecStore(_street.Database, _street.Time);
        _masses = new AddedMassStore(_street.Database, _street.Time);
        _specs.Add(Who.Shop, _street.Racket, new SpecEntry
        {
            FormKey = FormKey.New(),
            MeasuredOn = Street.Today,
            Weight = 300,
            Balance = 320,
            SwingWeight = 290,
            Length = 685,
            Stiffness = 64,
            StiffnessScale = "bench",
            Strung = true,
            GripOn = true,
        });
    }

    public void Dispose() => _street.Dispose();

    [Fact]
    public void Four_grams_at_the_tip_become_a_piece_and_a_worked_out_spec()
    {
        Apply(Entry() with { Added = [(Tip, 4)] });

        Assert.True(Assert.Single(_masses.Of(_street.Racket)) is { Place: "Twelve o’clock", Grams: 4, Material: AddedMaterial.Lead, RemovedOn: null });
        // Recomputed independently with NumPy: 304 g, 32.473684 cm, 303.456.
        Assert.True(_specs.Of(_street.Racket)[0] is
        {
            Kind: SpecKind.Customised, WeightG: 304, BalanceMm: 324.7m, SwingWeight: 303.5m, SwingSource: SwingSource.WorkedOut, LengthMm: 685, Stiffness: 64, Strung: true, GripOn: true,
        });
        Assert.Equal(2, _specs.Of(_street.Racket).Count);
    }

    [Fact]
    public void Form_sent_twice_adds_once()
    {
        var key = FormKey.New();
        var entry = Entry() with { Added = [(Tip, 4)] };

        Assert.Equal(_store.Apply(Who.Shop, key, [(_street.Racket, entry)]), _store.Apply(Who.Shop, key, [(_street.Racket, entry)]));

        Assert.Single(_masses.Of(_street.Racket));
    }

    [Fact]
    public void What_comes_off_wholly_leaves_the_racket_as_it_was()
    {
        Apply(Entry() with { Added = [(Tip, 4), (Sides, 2)] });

        Apply(Entry() with { Removed = [.. _masses.Of(_street.Racket).Select(mass => (mass.Id, mass.Grams))] });

        Assert.All(_masses.Of(_street.Racket), mass => Assert.Equal(Street.Today, mass.RemovedOn));
        Assert.True(_specs.Of(_street.Racket)[0] is { WeightG: 300, BalanceMm: 320, SwingWeight: >= 289.9m and <= 290.1m });
    }

    [Fact]
    public void Piece_that_is_cut_shorter_keeps_its_place_and_day()
    {
        Apply(Entry() with { Added = [(Tip, 4)] });
        _street.Time.Advance(TimeSpan.FromDays(30));

        Apply(Entry() with { On = Street.Today.AddDays(30), Removed = [(1, 1.5)] });

        Assert.Equal([(2.5, (DateOnly?)null), (4, Street.Today.AddDays(30))], _masses.Of(_street.Racket).Select(mass => (mass.Grams, mass.RemovedOn)));
        Assert.All(_masses.Of(_street.Racket), mass => Assert.Equal((Street.Today, 68), (mass.AddedOn, mass.AtCm)));
    }

    [Fact]
    public void Plan_from_an_older_spec_is_refused()
    {
        var planned = Entry() with { Added = [(Tip, 4)] };
        _specs.Add(Who.Shop, _street.Racket, new SpecEntry { FormKey = FormKey.New(), MeasuredOn = Street.Today, Weight = 305, Balance = 320, SwingWeight = 295 });

        _street.Refused<PlanOutdated>(() => _store.Apply(Who.Shop, FormKey.New(), [(_street.Racket, planned)]));
    }

    [Fact]
    public void Spec_that_lacks_a_figure_does_not_stand_in_the_way()
    {
        var planned = Entry() with { Added = [(Tip, 4)] };
        _specs.Add(Who.Shop, _street.Racket, new SpecEntry { FormKey = FormKey.New(), MeasuredOn = Street.Today, Stiffness = 60, StiffnessScale = "bench" });

        Apply(planned);

        Assert.Equal(3, _specs.Of(_street.Racket).Count);
    }

    [Fact]
    public void Piece_of_another_racket_does_not_come_off()
    {
        Apply(Entry() with { Added = [(Tip, 4)] });
        var other = _street.Records.Racket(_street.Pim, number: 2);
        _specs.Add(Who.Shop, other, new SpecEntry { FormKey = FormKey.New(), MeasuredOn = Street.Today, Weight = 300, Balance = 320, SwingWeight = 290 });
        var spec = _specs.Of(other)[0];

        _street.Refused<PlanOutdated>(() => _store.Apply(Who.Shop, FormKey.New(),
            [(other, new CustomEntry { On = Street.Today, SpecId = spec.Id, SpecVersion = spec.Version, Removed = [(1, 2)] })]));
    }

    [Fact]
    public void More_than_a_piece_weighs_does_not_come_off()
    {
        Apply(Entry() with { Added = [(Tip, 4)] });

        _street.Refused<PlanOutdated>(() => _store.Apply(Who.Shop, FormKey.New(), [(_street.Racket, Entry() with { Removed = [(1, 5)] })]));
    }

    [Fact]
    public void Set_is_written_down_wholly_or_not_at_all()
    {
        var other = _street.Records.Racket(_street.Pim, number: 2);

        _street.Refused<PlanOutdated>(() => _store.Apply(Who.Shop, FormKey.New(),
            [(_street.Racket, Entry() with { Added = [(Tip, 4)] }), (other, Entry() with { Added = [(Tip, 2)] })]));
    }

    [Fact]
    public void Plan_that_changes_nothing_is_refused() =>
        _street.Refused<NothingPlanned>(() => _store.Apply(Who.Shop, FormKey.New(), [(_street.Racket, Entry())]));

    [Fact]
    public void Frame_measured_without_strings_is_compared_with_its_string_bed_at_the_heads_centre()
    {
        _street.Records.Change("UPDATE spec SET strung = 0; UPDATE racket SET length_cm = 68.5");

        var frame = Frames.Get(_street.Racket)!;

        Assert.True(frame.IsEstimated);
        Assert.Equal(new Body(300, 32, 290).With(new AddedMass(frame.StringBedG, 53)), frame.Strung);
    }

    [Fact]
    public void Plan_made_and_written_down_measures_what_was_wanted_to_half_a_gram()
    {
        var wanted = new Wanted { MassG = 312, BalanceCm = 32.2, SwingWeight = 312 };
        var plan = CustomPlan.Of(Frames.Get(_street.Racket)!, wanted, new PlanLocks(), AddedMaterial.Tungsten, new CustomisingValues());

        Apply(plan.ToEntry(Street.Today, new Tolerances()));

        Assert.True(plan.IsReached);
        Assert.All(_masses.Of(_street.Racket), mass => Assert.Equal((0, AddedMaterial.Tungsten), (mass.Grams * 2 % 1, mass.Material)));
        var spec = _specs.Of(_street.Racket)[0];
        Assert.Equal((312m, Math.Round((decimal)plan.Rounded.After.SwingWeight, 1)), (spec.WeightG!.Value, spec.SwingWeight!.Value));
        Assert.InRange(spec.SwingWeight!.Value, 310.5m, 313.5m);
    }

    [Fact]
    public void Plan_that_cannot_be_reached_names_what_gives_way()
    {
        var plan = CustomPlan.Of(Frames.Get(_street.Racket)!, new Wanted { MassG = 305, BalanceCm = 32, SwingWeight = 330 }, new PlanLocks(), AddedMaterial.Lead, new CustomisingValues());

        Assert.False(plan.IsReached);
        Assert.Equal([Figures.Mass, Figures.SwingWeight], plan.Alternatives.Select(a => a.GivesWay));
        Assert.All(plan.Alternatives, a => Assert.Equal(a.GivesWay, Miss.Of(a.Plan.After, plan.Wanted).Figures));
    }

    [Fact]
    public void Squash_racket_that_would_get_too_heavy_is_warned_about()
    {
        _street.Records.Change("UPDATE racket SET sport = 'Squash'; UPDATE spec SET weight = 250");

        var plan = CustomPlan.Of(Frames.Get(_street.Racket)!, new Wanted { MassG = 258 }, new PlanLocks(), AddedMaterial.Lead, new CustomisingValues());

        Assert.Equal([RuleBreak.TooHeavy], plan.Broken);
    }

    [Fact]
    public void Plan_for_the_handle_only_leaves_the_head_alone()
    {
        var plan = CustomPlan.Of(Frames.Get(_street.Racket)!, new Wanted { MassG = 312, BalanceCm = 33 }, new PlanLocks { OnlyHandle = true, LeftOut = [1] }, AddedMaterial.Lead, new CustomisingValues());

        Assert.Equal([0, 18], plan.Rounded.Frame.Places.Select(place => Math.Round(place.AtCm)));
        Assert.NotEqual(Figures.None, plan.Miss.Figures);
    }

    [Fact]
    public void Frame_has_its_sports_places_until_the_shop_writes_its_own_list()
    {
        var places = new FramePlaceStore(_street.Database);
        var racket = new RacketStore(_street.Database, _street.Time).Get(_street.Racket)!;
        Assert.Equal(StartingPlaces.Of(racket.Sport, (double?)racket.LengthCm), Frames.Get(_street.Racket)!.Places);

        _street.Check(true, () => places.Save(Who.Shop, _street.Racket, [FramePlaceEntry.Of(Tip with { MostG = 6 }), FramePlaceEntry.Of(new FramePlace("On the strings", 55) { OnStrings = true })]));

        Assert.Equal([new FramePlace("On the strings", 55) { OnStrings = true }, Tip with { MostG = 6 }], Frames.Get(_street.Racket)!.Places);
        _street.Check(true, () => places.Save(Who.Shop, _street.Racket, []));
        Assert.Equal(7, Frames.Get(_street.Racket)!.Places.Count);
        Assert.Equal(0, _street.Records.Count("frame_place"));
    }

    [Fact]
    public void What_a_place_carries_already_counts_towards_its_limit()
    {
        Apply(Entry() with { Added = [(Tip with { AtCm = Frames.Get(_street.Racket)!.Places.Max(place => place.AtCm) }, 14)] });
        var frame = Frames.Get(_street.Racket)!;

        var places = frame.ToPlan(frame.Figures.Body!.Value, new PlanLocks()).Places;

        Assert.Equal(FramePlace.StartingMostG - 14, places.MaxBy(place => place.AtCm)!.MostG, 6);
        Assert.Equal(FramePlace.StartingMostG, places.MinBy(place => place.AtCm)!.MostG);
    }

    [Fact]
    public void String_bed_of_a_frame_is_that_of_its_last_strings()
    {
        _street.Records.Change("UPDATE string_kind SET material = 'Polyester', gauge_mm = 1.3");
        Assert.Equal(StringBed.Grams(11, 1.3, 1.38), Frames.Get(_street.Racket)!.StringBedG, 6);

        var never = _street.Records.Racket(_street.Pim, number: 2);
        Assert.Equal(StringBed.Grams(11, 1.3, 1.14), Frames.Get(never)!.StringBedG, 6);
    }

    private FrameOnFileStore Frames => new(_street.Database, new ShopStore(_street.Database));

    private void Apply(CustomEntry entry) => _street.Check(true, () => _store.Apply(Who.Shop, FormKey.New(), [(_street.Racket, entry)]));

    private CustomEntry Entry() => _specs.Of(_street.Racket).First(spec => spec.SwingWeight is not null) is var spec
        ? new CustomEntry { On = Street.Today, SpecId = spec.Id, SpecVersion = spec.Version }
        : throw new InvalidOperationException("Measured above.");
}
