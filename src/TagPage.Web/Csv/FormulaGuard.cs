using System.Globalization;

namespace TagPage.Web.Csv;

/// <summary>
/// Spreadsheet programs run a cell that begins with = + - @ as a formula, so exports put an apostrophe before it
/// (OWASP, "CSV injection"). Reading takes that apostrophe away again.
/// </summary>
public static class FormulaGuard
{
    /// <summary>A plain number, a telephone number among them, is no formula.</summary>
    public static string Guard(string cell) =>
        cell.Length > 0 && (IsFormula(cell[0]) || Strip(cell) != cell) && !decimal.TryParse(cell, NumberStyles.Float, CultureInfo.InvariantCulture, out _) ? "'" + cell : cell;

    private static bool IsFormula(char first) => first is '=' or '+' or '-' or '@' or '\t' or '\r';

    public static string Strip(string cell) =>
        cell.Length > 1 && cell[0] == '\'' && cell[1] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\'' ? cell[1..] : cell;
}
