namespace TagPage.Web.Csv;

/// <summary>
/// Spreadsheet programs run a cell that begins with = + - @ as a formula, so exports put an apostrophe before it
/// (OWASP, "CSV injection"). Reading takes that apostrophe away again.
/// </summary>
public static class FormulaGuard
{
    public static string Strip(string cell) =>
        cell.Length > 1 && cell[0] == '\'' && cell[1] is '=' or '+' or '-' or '@' or '\t' or '\r' or '\'' ? cell[1..] : cell;
}
