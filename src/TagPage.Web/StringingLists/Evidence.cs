namespace TagPage.Web.StringingLists;

/// <summary>Which habits of writing a list shows by what it writes.</summary>
public static class Evidence
{
    /// <summary>What is left open after all cells have spoken.</summary>
    /// <param name="cells">For each cell that tells something, the habits it fits.</param>
    /// <param name="all">Every habit there is.</param>
    /// <returns>One where the list decides, several where it does not; all that occur where it contradicts itself.</returns>
    public static IReadOnlyList<T> Left<T>(IEnumerable<IEnumerable<T>> cells, IEnumerable<T> all)
    {
        var (left, seen) = (all.ToHashSet(), new HashSet<T>());
        foreach (var fits in cells.Select(cell => cell.ToList()).Where(fits => fits.Count > 0))
        {
            left.IntersectWith(fits);
            seen.UnionWith(fits);
        }
        return [.. (left.Count > 0 ? left : seen).Order()];
    }
}
