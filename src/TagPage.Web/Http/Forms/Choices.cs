using Microsoft.AspNetCore.Mvc.Rendering;

namespace TagPage.Web.Http.Forms;

/// <summary>Choices of a form.</summary>
public static class Choices
{
    /// <summary>The values of an enumeration, with a first line for "nothing chosen" where one is given.</summary>
    public static IEnumerable<SelectListItem> Of<T>(Func<T, string> name, string? none = null) where T : struct, Enum
    {
        if (none is not null)
            yield return new SelectListItem(none, "");
        foreach (var value in Enum.GetValues<T>())
            yield return new SelectListItem(name(value), value.ToString());
    }
}
