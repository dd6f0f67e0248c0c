using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

/// <summary>A day at the desk, minute by minute: whoever is free takes what the plan gives them now.</summary>
internal sealed class EventDaySimulation(IReadOnlyList<Technician> technicians, IReadOnlyList<(int Arrives, DeskEntry Racket)> day)
{
    private readonly Dictionary<int, DeskEntry> _open = [];
    private readonly Dictionary<int, DateTime> _ready = [];

    /// <summary>When each racket was ready; as the desk hands out work knowing what <paramref name="known"/> leaves of an entry.</summary>
    public IReadOnlyDictionary<int, DateTime> Run(Func<DeskEntry, DeskEntry> known)
    {
        for (var minute = 0; _ready.Count < day.Count; minute++)
        {
            var now = Court.At(minute);
            foreach (var done in _open.Values.Where(entry => entry.On is { } on && on.Since.AddMinutes(entry.Minutes!.Value) <= now).ToList())
            {
                _ready[done.Number] = now;
                _open.Remove(done.Number);
            }
            foreach (var (_, racket) in day.Where(racket => racket.Arrives == minute))
                _open[racket.Number] = known(racket);
            foreach (var placed in new DeskPlan(now, technicians, _open.Values).Placements.Where(placed => placed.Start == now))
                _open[placed.Number] = _open[placed.Number] with { On = new OnMachine(placed.Technician, now) };
        }
        return _ready;
    }
}
