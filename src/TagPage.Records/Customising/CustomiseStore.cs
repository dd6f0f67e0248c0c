using Microsoft.Data.Sqlite;
using TagPage.Core.Customising;
using TagPage.Core.Units;
using TagPage.Records.Specs;
using TagPage.Records.Storage;

namespace TagPage.Records.Customising;

/// <summary>Writes down what was done at the bench: pieces on, pieces off, and the spec that follows from the one before.</summary>
public sealed class CustomiseStore(Database database, TimeProvider clock)
{
    /// <summary>One racket or a whole set, all or none.</summary>
    public Outcome Apply(Who who, string formKey, IReadOnlyList<(long Racket, CustomEntry Entry)> done) =>
        database.WriteOnceAsShop(who, formKey, clock.GetUtcNow(), c =>
        {
            if (done.All(d => d.Entry.Added.Count == 0 && d.Entry.Removed.Count == 0))
                return new Outcome.Refused(new NothingPlanned());
            if (done.Any(d => Newest(c, d.Racket, d.Entry) is null || !Has(c, d.Racket, d.Entry)))
                return new Outcome.Refused(new PlanOutdated());
            foreach (var (racket, entry) in done)
                Write(c, racket, entry);
            return new Outcome.Done(done[0].Racket);
        });

    private static SpecStore.Row? Newest(SqliteConnection connection, long racket, CustomEntry entry) =>
        SpecStore.Of(connection, racket).FirstOrDefault(spec => Body(spec) is not null) is { } spec && (spec.Id, spec.Version) == (entry.SpecId, entry.SpecVersion)
            ? spec
            : null;

    private static bool Has(SqliteConnection connection, long racket, CustomEntry entry)
    {
        var present = AddedMassStore.Present(connection, racket).ToDictionary(mass => mass.Id);
        return entry.Removed.All(removed => present.TryGetValue(removed.Id, out var mass) && removed.Grams <= mass.Grams);
    }

    private static void Write(SqliteConnection connection, long racket, CustomEntry entry)
    {
        if (entry.Added.Count == 0 && entry.Removed.Count == 0)
            return;
        List<AddedMass> masses = [.. entry.Added.Select(added => added.Place.Carrying(added.Grams))];
        masses.AddRange(Remove(connection, racket, entry));
        foreach (var (place, grams) in entry.Added)
            AddedMassStore.Add(connection, racket, Piece(place, grams, entry), byPlan: true);
        var spec = Newest(connection, racket, entry)!;
        SpecStore.Insert(connection, racket, After(spec, Body(spec)!.Value.With(masses), entry));
    }

    // What is left of a piece stays on as a piece of its own, with the day it was put on.
    private static List<AddedMass> Remove(SqliteConnection connection, long racket, CustomEntry entry)
    {
        List<AddedMass> masses = [];
        foreach (var mass in AddedMassStore.Present(connection, racket))
        {
            if (entry.Removed.FirstOrDefault(removed => removed.Id == mass.Id) is not { Grams: > 0 and var grams })
                continue;
            AddedMassStore.Remove(connection, racket, mass.Id, entry.On, byPlan: true);
            if (mass.Grams - grams > 0.001)
                AddedMassStore.Add(connection, racket, mass with { Weight = (decimal)(mass.Grams - grams), WeightUnit = WeightUnit.G }, byPlan: true);
            masses.Add(mass.Mass with { Grams = -grams });
        }
        return masses;
    }

    private static PieceEntry Piece(FramePlace place, double grams, CustomEntry entry) => new()
    {
        Place = place.Name,
        At = (decimal)place.AtCm,
        OffAxis = (decimal)place.OffAxisCm,
        OnStrings = place.OnStrings,
        Weight = (decimal)grams,
        Material = entry.Material,
        AddedOn = entry.On,
    };

    private static Body? Body(SpecEntry spec) => spec is { WeightG: { } mass, BalanceMm: { } balance, SwingWeight: { } swing }
        ? new Body((double)mass, (double)balance / 10, (double)swing)
        : null;

    private static SpecEntry After(SpecEntry before, Body body, CustomEntry entry) => before with
    {
        MeasuredOn = entry.On,
        Kind = SpecKind.Customised,
        Weight = Math.Round((decimal)body.MassG, 1),
        WeightUnit = WeightUnit.G,
        Balance = Math.Round((decimal)body.BalanceCm * 10, 1),
        BalanceUnit = BalanceUnit.Mm,
        TipWeight = null,
        WeightOffG = (decimal?)entry.After?.MassG.Off,
        BalanceOffMm = (decimal?)(entry.After?.BalanceCm.Off * 10),
        SwingWeightOff = (decimal?)entry.After?.SwingWeight.Off,
        WeightBalanceR = (decimal?)entry.After?.Correlation.MassBalance,
        WeightSwingR = (decimal?)entry.After?.Correlation.MassSwing,
        BalanceSwingR = (decimal?)entry.After?.Correlation.BalanceSwing,
        SwingWeight = Math.Round((decimal)body.SwingWeight, 1),
        SwingSource = SwingSource.WorkedOut,
        PendulumAxis = null,
        PendulumPeriodS = null,
        PendulumOffS = null,
        Note = "",
    };
}
