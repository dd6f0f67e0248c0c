using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// The tick box that a page with questions shows; nothing if there are none.
/// It answers for exactly the questions shown: new ones are asked about again.
/// </summary>
[HtmlTargetElement("confirm", TagStructure = TagStructure.WithoutEndTag)]
public sealed class ConfirmTagHelper : TagHelper
{
    public string Label { get; set; } = "This is correct as typed";

    [HtmlAttributeNotBound, ViewContext]
    public ViewContext ViewContext { get; set; } = default!;

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (ViewContext.ViewData[PageModelExtensions.Questions] is not string asked)
        {
            output.SuppressOutput();
            return;
        }
        output.TagName = "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "field check wrong");
        output.Content.AppendHtml(Tick(asked)).AppendHtml(Caption());
    }

    private static TagBuilder Tick(string asked) => new("input")
    {
        TagRenderMode = TagRenderMode.SelfClosing,
        Attributes = { ["type"] = "checkbox", ["id"] = "Input_Confirmed", ["name"] = "Input.Confirmed", ["value"] = asked },
    };

    private TagBuilder Caption()
    {
        var caption = new TagBuilder("label") { Attributes = { ["for"] = "Input_Confirmed" } };
        caption.InnerHtml.Append(Label);
        return caption;
    }
}
