using TagPage.Core.Customising;
using TagPage.Core.Sports;
using TagPage.Records.Customising;

namespace TagPage.Web.Words;

/// <summary>What the picture of a frame shows, from butt to tip.</summary>
public sealed record FrameDrawing(Sport Sport, double LengthCm, double BalanceCm, double BalanceAfterCm, IReadOnlyList<FrameDrawing.Row> Rows, SpecWords Words)
{
    /// <summary>A place, or an earlier piece that lies on none.</summary>
    public sealed record Row(string Name, double AtCm, double OffAxisCm)
    {
        public double EarlierG { get; init; }
        public double ExactG { get; init; }
        public double RoundedG { get; init; }
    }

    public static FrameDrawing Of(CustomPlan plan, SpecWords words) => new(
        plan.Frame.Racket.Sport, plan.Frame.LengthCm, plan.Rounded.Frame.Now.BalanceCm, plan.Rounded.After.BalanceCm,
        [.. PlacesOf(plan).Concat(PiecesOf(plan)).OrderBy(row => row.AtCm)], words);

    private static IEnumerable<Row> PlacesOf(CustomPlan plan) => plan.Rounded.Frame.Places.Select((place, i) => new Row(place.Name, place.AtCm, place.OffAxisCm)
    {
        EarlierG = plan.Frame.Present.Where(mass => IsAt(place, mass)).Sum(mass => mass.Grams),
        ExactG = plan.Exact.AddedG[i] - Taken(plan, plan.Exact.RemovedG, mass => IsAt(place, mass)),
        RoundedG = plan.Rounded.AddedG[i] - Taken(plan, plan.Rounded.RemovedG, mass => IsAt(place, mass)),
    });

    private static IEnumerable<Row> PiecesOf(CustomPlan plan) =>
        plan.Frame.Present.Where(mass => !plan.Rounded.Frame.Places.Any(place => IsAt(place, mass))).Select(mass => new Row(mass.Place, mass.AtCm, mass.Mass.OffAxisCm)
        {
            EarlierG = mass.Grams,
            ExactG = -Taken(plan, plan.Exact.RemovedG, other => other == mass),
            RoundedG = -Taken(plan, plan.Rounded.RemovedG, other => other == mass),
        });

    private static bool IsAt(FramePlace place, AddedMassStore.Row mass) => place.Name == mass.Place && Math.Abs(place.AtCm - mass.AtCm) < 0.05;

    private static double Taken(CustomPlan plan, IReadOnlyList<double> removedG, Func<AddedMassStore.Row, bool> which) =>
        plan.Frame.Present.Zip(removedG).Where(pair => which(pair.First)).Sum(pair => pair.Second);
}
