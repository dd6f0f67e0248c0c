using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Html;
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

    /// <summary>Which of several things on the page a field belongs to, by the field’s name; null where it is all of them.</summary>
    public Func<string, string?> Of { get; set; } = _ => null;

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
        output.Content.AppendHtml(new Lines(ViewContext, Of));
    }

    /// <summary>
    /// Model state knows its fields by the alphabet. The fields come after the summary, but what a page consists of is
    /// written out only when all of it is there.
    /// </summary>
    private sealed class Lines(ViewContext context, Func<string, string?> of) : IHtmlContent
    {
        public void WriteTo(TextWriter writer, HtmlEncoder encoder)
        {
            var order = FieldOrder.Of(context.HttpContext);
            var list = new TagBuilder("ul");
            foreach (var (name, entry) in context.ModelState.OrderBy(field => order.Place(field.Key)))
                foreach (var error in entry!.Errors)
                    list.InnerHtml.AppendHtml(Line(name, of(name) is { } whose ? $"{whose}: {error.ErrorMessage}" : error.ErrorMessage));
            list.WriteTo(writer, encoder);
        }
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
