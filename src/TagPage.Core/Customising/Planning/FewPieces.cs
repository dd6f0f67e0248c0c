namespace TagPage.Core.Customising.Planning;

/// <summary>All plans of one or two pieces, on one frame or on two.</summary>
internal sealed class FewPieces(Comparison compared, Way[] now, Ways[] frames, Way[][] few)
{
    private readonly Way[] _trial = [.. now];
    private Way[]? _best;
    private double _least = compared.Cost;
    private bool _couldBe;

    /// <summary>The best that brings them nearer and wins what its pieces have to, if any, and whether any would bring them nearer at all.</summary>
    public (Way[]? Best, bool CouldBeNearer) Best()
    {
        Way[][] ones = [.. frames.Select(ways => ways.One().ToArray())];
        for (var frame = 0; frame < now.Length; frame++)
        {
            Try(frame, few[frame]);
            for (var other = 0; other < frame; other++)
            {
                foreach (var one in ones[other])
                {
                    _trial[other] = one;
                    Try(frame, ones[frame]);
                }
                _trial[other] = now[other];
            }
        }
        return (_best, _couldBe);
    }

    private void Try(int frame, Way[] ways)
    {
        foreach (var way in ways)
        {
            _trial[frame] = way;
            var verdict = compared.Of(_trial);
            _couldBe |= verdict.IsNearerAtAll;
            if (verdict.IsNearer && verdict.Cost < _least)
                (_least, _best) = (verdict.Cost, [.. _trial]);
        }
        _trial[frame] = now[frame];
    }
}
