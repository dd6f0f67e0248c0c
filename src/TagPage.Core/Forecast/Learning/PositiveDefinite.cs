namespace TagPage.Core.Forecast.Learning;

/// <summary>Symmetric positive definite matrices, by Cholesky's factor L with LLᵀ = the matrix.</summary>
internal static class PositiveDefinite
{
    /// <exception cref="ArgumentException">The matrix is not positive definite.</exception>
    public static double[,] Inverse(double[,] matrix)
    {
        var factor = Factor(matrix);
        var size = matrix.GetLength(0);
        var inverse = new double[size, size];
        for (var column = 0; column < size; column++)
        {
            var solved = Solve(factor, column);
            for (var row = 0; row < size; row++)
                inverse[row, column] = solved[row];
        }
        return inverse;
    }

    private static double[,] Factor(double[,] matrix)
    {
        var size = matrix.GetLength(0);
        var factor = new double[size, size];
        for (var row = 0; row < size; row++)
            for (var column = 0; column <= row; column++)
            {
                var rest = matrix[row, column];
                for (var k = 0; k < column; k++)
                    rest -= factor[row, k] * factor[column, k];
                if (row != column)
                    factor[row, column] = rest / factor[column, column];
                else if (rest > 0)
                    factor[row, row] = Math.Sqrt(rest);
                else
                    throw new ArgumentException("The matrix is not positive definite.", nameof(matrix));
            }
        return factor;
    }

    // Of LLᵀx = the unit vector of one column: downwards for L, then upwards for Lᵀ.
    private static double[] Solve(double[,] factor, int column)
    {
        var size = factor.GetLength(0);
        var x = new double[size];
        x[column] = 1;
        for (var row = 0; row < size; row++)
        {
            for (var k = 0; k < row; k++)
                x[row] -= factor[row, k] * x[k];
            x[row] /= factor[row, row];
        }
        for (var row = size - 1; row >= 0; row--)
        {
            for (var k = row + 1; k < size; k++)
                x[row] -= factor[k, row] * x[k];
            x[row] /= factor[row, row];
        }
        return x;
    }
}
