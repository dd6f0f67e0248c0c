using MathNet.Numerics.LinearAlgebra;

namespace TagPage.Core.Tests.Customising.Planning;

/// <summary>An independent answer to a linear programme: every vertex is worked out and the best is kept.</summary>
internal static class Vertices
{
    /// <summary>The smallest cost of x with A·x = b and 0 ≤ x ≤ most; null where there is none.</summary>
    public static double? Smallest(double[][] columns, double[] b, double[] cost, double[] most)
    {
        var m = b.Length;
        double? best = null;
        foreach (var basis in Subsets(columns.Length, m))
        {
            var a = Matrix<double>.Build.DenseOfColumnArrays([.. basis.Select(j => columns[j])]);
            if (Math.Abs(a.Determinant()) < 1e-9)
                continue;
            var inverse = a.Inverse();
            int[] full = [.. Enumerable.Range(0, columns.Length).Where(j => !basis.Contains(j) && double.IsFinite(most[j]))];
            for (var mask = 0; mask < 1 << full.Length; mask++)
            {
                int[] atMost = [.. full.Where((_, i) => (mask >> i & 1) == 1)];
                var right = Vector<double>.Build.DenseOfArray([.. Enumerable.Range(0, m).Select(i => b[i] - atMost.Sum(j => columns[j][i] * most[j]))]);
                var x = inverse * right;
                if (Enumerable.Range(0, m).All(i => x[i] >= -1e-7 && x[i] <= most[basis[i]] + 1e-7))
                    best = Math.Min(best ?? double.MaxValue, Enumerable.Range(0, m).Sum(i => cost[basis[i]] * x[i]) + atMost.Sum(j => cost[j] * most[j]));
            }
        }
        return best;
    }

    private static IEnumerable<int[]> Subsets(int n, int size)
    {
        int[] chosen = [.. Enumerable.Range(0, size)];
        while (true)
        {
            yield return [.. chosen];
            var i = size - 1;
            while (i >= 0 && chosen[i] == n - size + i)
                i--;
            if (i < 0)
                yield break;
            chosen[i]++;
            for (var j = i + 1; j < size; j++)
                chosen[j] = chosen[j - 1] + 1;
        }
    }
}
