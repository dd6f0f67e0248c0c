namespace TagPage.Web.Http.Forms;

/// <summary>The fields of the page in the order they stand on it, known once the page is written.</summary>
internal sealed class FieldOrder
{
    private readonly List<string> _names = [];

    public static FieldOrder Of(HttpContext context)
    {
        if (context.Items[typeof(FieldOrder)] is FieldOrder kept)
            return kept;
        var order = new FieldOrder();
        context.Items[typeof(FieldOrder)] = order;
        return order;
    }

    public void Add(string name) => _names.Add(name);

    /// <summary>What concerns the whole form comes first, a field that another tag wrote last.</summary>
    public int Place(string name) => name.Length == 0 ? -1 : _names.IndexOf(name) is >= 0 and var place ? place : _names.Count;
}
