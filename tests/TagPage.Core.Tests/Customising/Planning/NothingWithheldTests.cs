using CsCheck;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Core.Sports;

namespace TagPage.Core.Tests.Customising.Planning;

/// <summary>
/// Whoever is told to leave frames as they are may believe it: every plan of one or two pieces is worked out here, with a
/// measure written down a second time.
/// </summary>
public class NothingWithheldTests
{
    [Fact]
    public void No_single_frame_is_left_that_one_or_two_pieces_would_bring_nearer() =>
        Gen.Select(Bodies, Bodies, Gen.Int[1, 7], Places).Sample((now, other, given, places) => Holds([now], places, Given(other, given)), iter: 60);

    [Fact]
    public void No_set_is_left_that_one_or_two_pieces_would_bring_nearer() =>
        Gen.Select(Bodies.Array[2, 4], Bodies, Gen.Int[0, 7], Places).Sample((all, other, given, places) => Holds(all, places, Given(other, given)), iter: 30);

    [Fact]
    public void No_set_that_is_nearly_the_same_is_left_where_one_or_two_pieces_would_do() =>
        Gen.Select(Bodies, Gen.Int[-15, 15].Array[3].Array[2, 4], Gen.Int[0, 7], Places).Sample((one, by, given, places) => Holds(
            [.. by.Select(d => new Body(one.MassG + (d[0] / 10.0), one.BalanceCm + (d[1] / 100.0), one.SwingWeight + (d[2] / 5.0)))], places, Given(one with { MassG = one.MassG + 2 }, given)), iter: 30);

    private static bool Holds(Body[] now, FramePlace[] places, Wanted wanted)
    {
        AddedMass[] earlier = [new(2.5, 53, 12.5), new(1.2, 0)];
        PlanFrame[] frames = [.. now.Select((body, i) => new PlanFrame(body, places) { Removable = i == 0 ? earlier : [] })];
        var plans = HalfGramTests.Steps(frames, wanted);
        Body[] after = [.. plans.Select(plan => plan.After)];
        var cost = Cost(after, plans.Sum(plan => plan.TotalG), plans.Sum(plan => plan.Masses.Count), wanted);
        if (plans.Any(plan => plan.Masses.Count > 0))
            return IsNearer(now, after, wanted) && cost < Cost(now, 0, 0, wanted);
        return !Few(frames).Any(few => IsNearer(now, few.After, wanted) && Cost(few.After, few.Grams, few.Pieces, wanted) < cost - 1e-6);
    }

    // What is missed and how far they are apart; a difference that measuring cannot tell counts as its square, and each gram and each piece has to win something.
    private static double Cost(Body[] set, double grams, int pieces, Wanted wanted)
    {
        var missed = set.Sum(body => Tell(body.MassG - (wanted.MassG ?? body.MassG), 0.1) + Tell(10 * (body.BalanceCm - (wanted.BalanceCm ?? body.BalanceCm)), 1)
            + Tell(body.SwingWeight - (wanted.SwingWeight ?? body.SwingWeight), 1));
        var (mass, balance, swing) = Apart(set);
        var two = Math.Sqrt(2);
        return missed + Tell(mass, 0.1 * two) + Tell(balance, two) + Tell(swing, two) + (0.2 * grams) + (0.1 * pieces);
    }

    private static double Tell(double by, double tolerance) => Math.Abs(by) < tolerance ? by * by / (2 * tolerance) : Math.Abs(by) - (tolerance / 2);

    private static bool IsNearer(Body[] before, Body[] after, Wanted wanted)
    {
        double[] was = [.. before.SelectMany(body => Off(body, wanted))], ends = [.. after.SelectMany(body => Off(body, wanted))];
        var (m, b, s) = Apart(before);
        double[] apart = [m, b, s];
        (m, b, s) = Apart(after);
        double[] left = [m, b, s];
        var given = ends.Sum() < was.Sum() - 1e-6 && Root(ends) < Root(was) - 1e-6;
        return given
            ? left.Sum() <= apart.Sum() + 0.1 && Root(left) <= Root(apart) + 0.1
            : ends.Sum() <= was.Sum() + 1e-6 && Root(ends) <= Root(was) + 1e-6 && left.Sum() < apart.Sum() - 0.1 && Root(left) < Root(apart) - 0.1;
    }

    private static double[] Off(Body body, Wanted wanted) =>
        [Math.Abs(body.MassG - (wanted.MassG ?? body.MassG)), 10 * Math.Abs(body.BalanceCm - (wanted.BalanceCm ?? body.BalanceCm)), Math.Abs(body.SwingWeight - (wanted.SwingWeight ?? body.SwingWeight))];

    private static double Root(double[] by) => Math.Sqrt(by.Sum(b => b * b));

    private static (double Mass, double Balance, double Swing) Apart(Body[] set) => (
        set.Max(body => body.MassG) - set.Min(body => body.MassG),
        10 * (set.Max(body => body.BalanceCm) - set.Min(body => body.BalanceCm)),
        set.Max(body => body.SwingWeight) - set.Min(body => body.SwingWeight));

    private static IEnumerable<(Body[] After, double Grams, int Pieces)> Few(PlanFrame[] frames)
    {
        Body[] now = [.. frames.Select(frame => frame.Now)];
        (int Frame, int Piece, AddedMass Mass)[] ones = [.. frames.SelectMany((frame, f) => Ones(frame).Select(one => (f, one.Piece, one.Mass)))];
        for (var i = 0; i < ones.Length; i++)
        {
            yield return ([.. now.Select((body, f) => f == ones[i].Frame ? body.With(ones[i].Mass) : body)], Math.Max(0, ones[i].Mass.Grams), 1);
            for (var j = 0; j < i; j++)
            {
                if ((ones[i].Frame, ones[i].Piece) != (ones[j].Frame, ones[j].Piece))
                    yield return ([.. now.Select((body, f) => body.With(new[] { ones[i], ones[j] }.Where(one => one.Frame == f).Select(one => one.Mass)))],
                        Math.Max(0, ones[i].Mass.Grams) + Math.Max(0, ones[j].Mass.Grams), 2);
            }
        }
    }

    private static IEnumerable<(int Piece, AddedMass Mass)> Ones(PlanFrame frame)
    {
        for (var place = 0; place < frame.Places.Count; place++)
        {
            var step = frame.Places[place].Paired ? 1 : 0.5;
            for (var grams = step; grams <= frame.Places[place].MostG + 1e-9; grams += step)
                yield return (place, frame.Places[place].Carrying(grams));
        }
        for (var earlier = 0; earlier < frame.Removable.Count; earlier++)
        {
            for (var grams = 0.5; grams < frame.Removable[earlier].Grams; grams += 0.5)
                yield return (-1 - earlier, frame.Removable[earlier] with { Grams = -grams });
            yield return (-1 - earlier, frame.Removable[earlier] with { Grams = -frame.Removable[earlier].Grams });
        }
    }

    private static Wanted Given(Body body, int figures) => new()
    {
        MassG = (figures & 1) > 0 ? body.MassG : null,
        BalanceCm = (figures & 2) > 0 ? body.BalanceCm : null,
        SwingWeight = (figures & 4) > 0 ? body.SwingWeight : null,
    };

    private static readonly Gen<Body> Bodies =
        Gen.Select(Gen.Int[3150, 3300], Gen.Int[314, 326], Gen.Int[310, 330]).Select((m, b, s) => new Body(m / 10.0, b / 10.0, s));

    // All, only the handle, or with limits.
    private static readonly Gen<FramePlace[]> Places = Gen.Select(Gen.Int[0, 2], Gen.Int[0, 6].Array[7]).Select((which, most) => StartingPlaces.Of(Sport.Tennis)
        .Where(place => which != 1 || place.InHandle).Select((place, i) => place with { MostG = which == 2 ? most[i] : 5 }).ToArray());
}
