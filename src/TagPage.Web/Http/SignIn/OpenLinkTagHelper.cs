using Microsoft.AspNetCore.Html;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace TagPage.Web.Http.SignIn;

/// <summary>Leaves out links and forms that lead where whoever looks may not go; where a link says keep-words, its words stay.</summary>
/// <param name="doors">Who may go where.</param>
[HtmlTargetElement("a", Attributes = "href")]
[HtmlTargetElement("form", Attributes = "action")]
public sealed class OpenLinkTagHelper(ShopDoors doors) : TagHelper
{
    [ViewContext]
    [HtmlAttributeNotBound]
    public ViewContext ViewContext { get; set; } = default!;

    public bool KeepWords { get; set; }

    /// <summary>Before the framework's own helpers change the address.</summary>
    public override int Order => -2000;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        var address = (context.AllAttributes["href"] ?? context.AllAttributes["action"])?.Value switch
        {
            HtmlString made => made.Value,
            var other => other?.ToString(),
        };
        if (doors.IsOpen(ViewContext.HttpContext.User, address ?? ""))
            return;
        if (KeepWords)
            output.TagName = null;
        else
            output.SuppressOutput();
    }
}
