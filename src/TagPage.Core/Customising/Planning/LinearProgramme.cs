namespace TagPage.Core.Customising.Planning;

/// <summary>
/// A linear programme over variables that are never below zero: equations, largest values, and things to make as small as
/// possible, the first before the second. It is solved without any rounding; see <see cref="Tableau"/>.
/// </summary>
internal sealed class LinearProgramme
{
    private readonly List<(Term[] Terms, decimal Value)> _equations = [];
    private readonly List<decimal?> _most = [];

    /// <summary>A coefficient and the variable it belongs to.</summary>
    public readonly record struct Term(int Variable, decimal Times);

    /// <summary>A new variable, at most so large; null for no limit.</summary>
    public int Variable(decimal? most = null)
    {
        _most.Add(most);
        return _most.Count - 1;
    }

    /// <summary>The terms must add up to the value.</summary>
    public void Equal(IEnumerable<Term> terms, decimal value) => _equations.Add(([.. terms], value));

    /// <summary>The variables' values; null where nothing fulfils all equations.</summary>
    public double[]? Smallest(params IReadOnlyList<Term>[] wishes)
    {
        var tableau = new Tableau(_most.Count, wishes.Length + 1);
        foreach (var (terms, value) in _equations)
            tableau.AddEquation(terms, value);
        for (var variable = 0; variable < _most.Count; variable++)
        {
            if (_most[variable] is { } most)
                tableau.AddLimit(variable, most);
        }
        return tableau.Solve(wishes);
    }
}
