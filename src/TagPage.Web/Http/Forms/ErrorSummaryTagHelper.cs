using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace TagPage.Web.Http.Forms;

/// <summary>Everything that is wrong with the form, at the top of the page, each line a link to its field.</summary>
[HtmlTargetElement("error-summary", TagStructure = TagStructure.WithoutEndTag)]
public sealed class ErrorSummaryTagHelper : TagHelper
{
    /// <summary>In the reader's language, where that is not English.</summary>
    public string Heading { get; set; } = "Not saved yet";

    [HtmlAttributeNotBound, ViewContext]
    public ViewContext ViewContext { get; set; } = default!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (ViewContext.ModelState.IsValid)
        {
            output.SuppressOutput();
            return;
        }
        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "errors");
        output.Attributes.SetAttribute("role", "alert");
        output.Attributes.SetAttribute("tabindex", "-1");
        output.Attributes.SetAttribute("autofocus", "");
        output.Content.AppendHtml("<h2>").Append(Heading).AppendHtml("</h2>");
        output.Content.AppendHtml(List());
    }

    private TagBuilder List()
    {
        var list = new TagBuilder("ul");
        foreach (var (name, entry) in ViewContext.ModelState)
            foreach (var error in entry!.Errors)
                list.InnerHtml.AppendHtml(Line(name, error.ErrorMessage));
        return list;
    }

    private static TagBuilder Line(string name, string message)
    {
        var line = new TagBuilder("li");
        if (name.Length == 0)
            line.InnerHtml.Append(message);
        else
            line.InnerHtml.AppendHtml(Link(name, message));
        return line;
    }

    private static TagBuilder Link(string name, string message)
    {
        var link = new TagBuilder("a") { Attributes = { ["href"] = "#" + TagBuilder.CreateSanitizedId(name, "_") } };
        link.InnerHtml.Append(message);
        return link;
    }
}
