namespace TagPage.Web.Csv;

/// <summary>All errors found, as many as one person can work through; the rest are counted.</summary>
public sealed class Problems
{
    /// <summary>How many are kept.</summary>
    public const int Most = 100;

    private readonly List<Problem> _kept = [];

    public IReadOnlyList<Problem> Kept => _kept;

    public int Count { get; private set; }

    /// <summary>How many were found past those kept.</summary>
    public int More => Count - _kept.Count;

    public void Add(Problem problem)
    {
        if (Count++ < Most)
            _kept.Add(problem);
    }

    /// <summary>A problem of the file as a whole, or of one of its lines.</summary>
    public void Add(string file, string sentence, int line = 0) => Add(new Problem(file, line, "", sentence));
}
