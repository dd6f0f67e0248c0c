using System.Numerics;

namespace TagPage.Core.Customising.Planning;

/// <summary>
/// The simplex method on whole numbers: all entries share one denominator, the last pivot, and every division comes out
/// even (Edmonds's integer pivoting). Bland's rule (Mathematics of Operations Research 2, 1977) keeps it from going round in
/// circles. What has a price above zero at one wish's optimum stays out for later wishes, so that earlier wishes keep what
/// they reached.
/// </summary>
internal sealed class Tableau(int variables, int wishes)
{
    private readonly List<Dictionary<int, decimal>> _rows = [];
    private readonly List<decimal> _values = [];
    private readonly List<int> _basis = [];
    private readonly HashSet<int> _artificial = [];

    private BigInteger[][] _cells = [];
    private BigInteger[][] _prices = [];
    private BigInteger _denominator = BigInteger.One;

    private int Columns => variables + _basis.Count;

    /// <summary>Begins with an artificial variable that the first wish drives out.</summary>
    public void AddEquation(IEnumerable<LinearProgramme.Term> terms, decimal value)
    {
        var sign = value < 0 ? -1 : 1;
        var row = new Dictionary<int, decimal>();
        foreach (var (variable, times) in terms)
            row[variable] = row.GetValueOrDefault(variable) + (sign * times);
        _artificial.Add(Columns);
        Add(row, sign * value);
    }

    /// <param name="variable">Never larger than that.</param>
    /// <param name="most">Zero or more.</param>
    public void AddLimit(int variable, decimal most) => Add(new() { [variable] = 1 }, most);

    private void Add(Dictionary<int, decimal> row, decimal value)
    {
        _rows.Add(row);
        _values.Add(value);
        _basis.Add(Columns);
    }

    public double[]? Solve(IReadOnlyList<LinearProgramme.Term>[] goals)
    {
        _cells = [.. _rows.Select((row, i) => Whole(row, _values[i], _basis[i]))];
        _prices = [FeasibilityPrices(), .. goals.Select(GoalPrices)];
        var open = Enumerable.Range(0, Columns).Where(column => !_artificial.Contains(column)).ToHashSet();
        for (var wish = 0; wish < wishes; wish++)
        {
            Descend(_prices[wish], open);
            if (wish == 0 && !_prices[0][Columns].IsZero)
                return null;
            open.RemoveWhere(column => _prices[wish][column].Sign > 0);
        }
        return Values();
    }

    // A row's own variable keeps the coefficient one: it stands for what is left in the row's scaled unit.
    private BigInteger[] Whole(Dictionary<int, decimal> row, decimal value, int own)
    {
        var scale = row.Values.Append(value).Max(v => v.Scale);
        var cells = new BigInteger[Columns + 1];
        foreach (var (column, times) in row)
            cells[column] = Scaled(times, scale);
        cells[own] = BigInteger.One;
        cells[Columns] = Scaled(value, scale);
        return cells;
    }

    private static BigInteger Scaled(decimal value, int scale)
    {
        var bits = decimal.GetBits(value);
        var digits = new BigInteger((uint)bits[0]) | (new BigInteger((uint)bits[1]) << 32) | (new BigInteger((uint)bits[2]) << 64);
        return (value < 0 ? -digits : digits) * BigInteger.Pow(10, scale - value.Scale);
    }

    private BigInteger[] FeasibilityPrices()
    {
        var prices = new BigInteger[Columns + 1];
        for (var i = 0; i < _cells.Length; i++)
        {
            if (!_artificial.Contains(_basis[i]))
                continue;
            for (var column = 0; column <= Columns; column++)
                prices[column] -= _artificial.Contains(column) ? 0 : _cells[i][column];
        }
        return prices;
    }

    private BigInteger[] GoalPrices(IReadOnlyList<LinearProgramme.Term> goal)
    {
        var row = new Dictionary<int, decimal>();
        foreach (var (variable, times) in goal)
            row[variable] = row.GetValueOrDefault(variable) + times;
        var scale = row.Values.Append(0).Max(v => v.Scale);
        var prices = new BigInteger[Columns + 1];
        foreach (var (column, times) in row)
            prices[column] = Scaled(times, scale);
        return prices;
    }

    private void Descend(BigInteger[] prices, HashSet<int> open)
    {
        int[] order = [.. open.Order()];
        while (order.FirstOrDefault(column => prices[column].Sign < 0, -1) is >= 0 and var enters)
            Pivot(Leaves(enters), enters);
    }

    private int Leaves(int column)
    {
        var best = -1;
        for (var i = 0; i < _cells.Length; i++)
        {
            if (_cells[i][column].Sign > 0 && (best < 0 || IsSooner(i, best, column)))
                best = i;
        }
        return best >= 0 ? best : throw new InvalidOperationException("A price below zero was given: there is no smallest value.");
    }

    private bool IsSooner(int row, int than, int column)
    {
        var difference = (_cells[row][Columns] * _cells[than][column]) - (_cells[than][Columns] * _cells[row][column]);
        return difference.Sign < 0 || (difference.IsZero && _basis[row] < _basis[than]);
    }

    private void Pivot(int row, int column)
    {
        var pivot = _cells[row][column];
        foreach (var other in _cells.Concat(_prices).Where(cells => cells != _cells[row]))
            Eliminate(other, _cells[row], column, pivot);
        _denominator = pivot;
        _basis[row] = column;
    }

    private void Eliminate(BigInteger[] cells, BigInteger[] by, int column, BigInteger pivot)
    {
        var times = cells[column];
        for (var j = 0; j < cells.Length; j++)
        {
            var cell = cells[j] * pivot;
            if (!times.IsZero && !by[j].IsZero)
                cell -= times * by[j];
            cells[j] = cell / _denominator;
        }
    }

    private double[] Values()
    {
        var values = new double[variables];
        for (var i = 0; i < _cells.Length; i++)
        {
            if (_basis[i] < variables)
                values[_basis[i]] = Ratio(_cells[i][Columns], _denominator);
        }
        return values;
    }

    // To twelve decimals: both may be far larger than a double.
    private static double Ratio(BigInteger a, BigInteger b) => (double)(a * BigInteger.Pow(10, 12) / b) / 1e12;
}
