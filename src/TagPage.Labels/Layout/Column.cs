using TagPage.Labels.Content;
using TagPage.Labels.Text;

namespace TagPage.Labels.Layout;

/// <summary>Type in its place within a column, in dots.</summary>
internal sealed record Word(int X, int Baseline, int Size, ShapedText Text);

/// <summary>One column: a figure or none, and rows that lines go into.</summary>
/// <param name="rows">Baselines of its rows, from above.</param>
/// <param name="hasFigure">It gives the column its width; only there a row may take one line behind another.</param>
internal sealed class Column(IEnumerable<int> rows, bool hasFigure)
{
    // Rows of one line stand one under the other, never with a row between them left free.
    private const double MostLeading = 1.7;

    private readonly List<Word> _words = [];
    private readonly int[] _rows = [.. rows];
    private readonly Dictionary<int, int> _used = [];
    private readonly HashSet<int> _goesOn = [], _ended = [], _followed = [];

    public bool HasFigure => hasFigure;

    public int Width { get; private set; }

    /// <summary>Where lines under the figure begin: beside what hangs down before it.</summary>
    public int Indent { get; set; }

    /// <summary>Whether nothing stands in its rows.</summary>
    public bool IsBare => _used.Count == 0;

    public IReadOnlyList<Word> Words => _words;

    public void Set(Word word)
    {
        _words.Add(word);
        Width = Math.Max(Width, word.X + word.Text.WidthAt(word.Size));
    }

    /// <summary>Where a line in some rows would begin, and how wide the column would be then; null where it has no room.</summary>
    public (int Row, int X, int Width)? Room(LabelLine line, IReadOnlyList<ShapedText> texts, int size)
    {
        (int Row, int X, int Width)? best = null;
        var widest = texts.Max(text => text.WidthAt(size));
        for (var row = 0; row + texts.Count <= _rows.Length; row++)
        {
            if (RoomAt(row, line, texts, size) is { } x && x + widest is var end && (best is null || Math.Max(Width, end) < best.Value.Width))
                best = (row, x, Math.Max(Width, end));
        }
        return best;
    }

    private int? RoomAt(int row, LabelLine line, IReadOnlyList<ShapedText> texts, int size)
    {
        var isUsed = false;
        for (var i = 0; i < texts.Count; i++)
        {
            if (i > 0 && _rows[row + i] - _rows[row + i - 1] > MostLeading * size)
                return null;
            isUsed |= _used.ContainsKey(_rows[row + i]);
        }
        if (!isUsed)
            return Indent;
        var isFree = !_ended.Contains(_rows[row]) && (!_goesOn.Contains(_rows[row]) || line.Follows);
        return (hasFigure || (line.MayStandBehind && _followed.Contains(_rows[row]))) && isFree && texts.Count == 1 && _used.TryGetValue(_rows[row], out var used) ? used + TailGap(_rows[row], size) : null;
    }

    private int TailGap(int baseline, int size) => _goesOn.Contains(baseline) ? Math.Max(3, size / 4) : Math.Max(3, (int)(0.8 * size));

    public void Fill(int row, int x, IReadOnlyList<ShapedText> texts, int size, LabelLine line)
    {
        foreach (var (text, i) in texts.Select((text, i) => (text, i)))
        {
            Set(new Word(x, _rows[row + i], size, text));
            _used[_rows[row + i]] = x + text.WidthAt(size);
            if (line.Ends)
                _ended.Add(_rows[row + i]);
            if (line.IsFollowed)
                _followed.Add(_rows[row + i]);
            if (line.GoesOn)
                _goesOn.Add(_rows[row + i]);
            else
                _goesOn.Remove(_rows[row + i]);
        }
    }
}
