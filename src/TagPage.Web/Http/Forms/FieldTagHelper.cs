using System.ComponentModel.DataAnnotations;
using System.Globalization;
using Microsoft.AspNetCore.Mvc.Rendering;
using Microsoft.AspNetCore.Mvc.ViewFeatures;
using Microsoft.AspNetCore.Razor.TagHelpers;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// One field of a form: label, hint, what is wrong with it, and the control, tied together for screen readers.
/// <c>&lt;field for="Input.Name" label="Name" hint="As it stands on the ticket" /&gt;</c>
/// </summary>
[HtmlTargetElement("field", TagStructure = TagStructure.WithoutEndTag)]
public sealed class FieldTagHelper : TagHelper
{
    public ModelExpression For { get; set; } = default!;

    public string Label { get; set; } = "";

    public string? Hint { get; set; }

    public FieldKind Kind { get; set; }

    /// <summary>Choices of a select or of radio buttons.</summary>
    public IEnumerable<SelectListItem>? Items { get; set; }

    /// <summary>Values to suggest while typing.</summary>
    public IEnumerable<string>? Suggest { get; set; }

    /// <summary>Shown after the control: mm, lb, h.</summary>
    public string? Unit { get; set; }

    /// <summary>The autocomplete token of the HTML standard; off where nothing is set.</summary>
    public string Autocomplete { get; set; } = "off";

    public bool Autofocus { get; set; }

    [HtmlAttributeNotBound, ViewContext]
    public ViewContext ViewContext { get; set; } = default!;

    /// <summary>In a partial the field keeps the name it has on the page around it.</summary>
    private string Name => ViewContext.ViewData.TemplateInfo.GetFullHtmlFieldName(For.Name);

    private string Id => TagBuilder.CreateSanitizedId(Name, "_");

    private string? Error => ViewContext.ModelState.TryGetValue(Name, out var entry) ? entry.Errors.FirstOrDefault()?.ErrorMessage : null;

    private string Value => ViewContext.ModelState.TryGetValue(Name, out var entry) && entry.AttemptedValue is { } typed
        ? typed
        : Text(For.Model);

    public override void Process(TagHelperContext context, TagHelperOutput output)
    {
        if (For.Metadata.ModelType == typeof(string) && (Kind == FieldKind.Area) != TextBinder.MayHaveLines(For.Metadata))
            throw new InvalidOperationException($"{Name}: a field of several lines is an Area with DataType.MultilineText, every other one neither.");
        FieldOrder.Of(ViewContext.HttpContext).Add(Name);
        output.TagName = Kind == FieldKind.Radio ? "fieldset" : "div";
        output.TagMode = TagMode.StartTagAndEndTag;
        output.Attributes.SetAttribute("class", "field" + (Kind == FieldKind.Check ? " check" : "") + (Error is null ? "" : " wrong"));
        if (Kind == FieldKind.Check)
            output.Content.AppendHtml(Control()).AppendHtml(Unticked());
        output.Content.AppendHtml(Caption());
        AppendLine(output.Content, "hint", Hint);
        AppendLine(output.Content, "error", Error);
        if (Kind == FieldKind.Radio)
            AppendRadios(output.Content);
        else if (Kind != FieldKind.Check)
            AppendControl(output.Content);
    }

    private TagBuilder Caption()
    {
        var caption = new TagBuilder(Kind == FieldKind.Radio ? "legend" : "label");
        if (Kind != FieldKind.Radio)
            caption.Attributes["for"] = Id;
        caption.InnerHtml.Append(Label);
        return caption;
    }

    private void AppendLine(TagHelperContent content, string role, string? text)
    {
        if (string.IsNullOrEmpty(text))
            return;
        var line = new TagBuilder("p") { Attributes = { ["class"] = role, ["id"] = $"{Id}-{role}" } };
        line.InnerHtml.Append(text);
        content.AppendHtml(line);
    }

    private void AppendControl(TagHelperContent content)
    {
        var row = new TagBuilder("div") { Attributes = { ["class"] = "control" } };
        row.InnerHtml.AppendHtml(Control());
        if (Unit is not null)
        {
            var unit = new TagBuilder("span") { Attributes = { ["class"] = "unit" } };
            unit.InnerHtml.Append(Unit);
            row.InnerHtml.AppendHtml(unit);
        }
        if (Suggest is not null)
            row.InnerHtml.AppendHtml(Suggestions());
        content.AppendHtml(row);
    }

    private TagBuilder Control()
    {
        var control = Kind switch
        {
            FieldKind.Area => Area(),
            FieldKind.Select => Select(),
            FieldKind.Check => Check(),
            _ => Input(),
        };
        control.Attributes["id"] = Id;
        control.Attributes["name"] = Name;
        Describe(control);
        if (Autofocus)
            control.Attributes["autofocus"] = "";
        return control;
    }

    private void Describe(TagBuilder control)
    {
        var ids = string.Join(' ', new[] { Hint is null ? null : $"{Id}-hint", Error is null ? null : $"{Id}-error" }.Where(i => i is not null));
        if (ids.Length > 0)
            control.Attributes["aria-describedby"] = ids;
        if (Error is not null)
            control.Attributes["aria-invalid"] = "true";
    }

    private TagBuilder Area()
    {
        var area = new TagBuilder("textarea") { Attributes = { ["rows"] = "4" } };
        LimitLength(area);
        // A browser drops the first line break of a textarea.
        area.InnerHtml.AppendHtml("\n").Append(Value);
        return area;
    }

    private TagBuilder Select()
    {
        var select = new TagBuilder("select");
        foreach (var item in Items ?? [])
        {
            var option = new TagBuilder("option") { Attributes = { ["value"] = item.Value } };
            if (item.Value == Value)
                option.Attributes["selected"] = "";
            option.InnerHtml.Append(item.Text);
            select.InnerHtml.AppendHtml(option);
        }
        return select;
    }

    private TagBuilder Check()
    {
        var check = Self("checkbox");
        check.Attributes["value"] = "true";
        if (string.Equals(Value.Split(',')[0], "true", StringComparison.OrdinalIgnoreCase))
            check.Attributes["checked"] = "";
        return check;
    }

    /// <summary>A browser says nothing about an empty box; this says that it was there and is empty.</summary>
    private TagBuilder Unticked()
    {
        var unticked = Self("hidden");
        unticked.Attributes["name"] = Name;
        unticked.Attributes["value"] = "false";
        return unticked;
    }

    private TagBuilder Input()
    {
        var input = Self(Kind switch
        {
            FieldKind.Date => "date",
            FieldKind.Time => "time",
            FieldKind.Tel => "tel",
            FieldKind.Mail => "email",
            FieldKind.Password or FieldKind.Pin => "password",
            FieldKind.Files or FieldKind.Photos or FieldKind.Camera => "file",
            _ => "text",
        });
        if (Kind is FieldKind.Number or FieldKind.Pin)
            input.Attributes["inputmode"] = Kind == FieldKind.Pin ? "numeric" : "decimal";
        if (Kind is FieldKind.Photos or FieldKind.Camera)
            input.Attributes["accept"] = "image/*";
        if (Kind == FieldKind.Camera)
            input.Attributes["capture"] = "environment";
        if (Kind is FieldKind.Files or FieldKind.Photos && For.Metadata.ModelType != typeof(IFormFile))
            input.Attributes["multiple"] = "";
        if (Kind is not (FieldKind.Password or FieldKind.Pin or FieldKind.Files or FieldKind.Photos or FieldKind.Camera))
            input.Attributes["value"] = Value;
        input.Attributes["autocomplete"] = Autocomplete;
        if (Suggest is not null)
            input.Attributes["list"] = Id + "-list";
        LimitLength(input);
        return input;
    }

    private void LimitLength(TagBuilder control)
    {
        if (For.Metadata.ValidatorMetadata.OfType<StringLengthAttribute>().FirstOrDefault() is { } limit)
            control.Attributes["maxlength"] = limit.MaximumLength.ToString(CultureInfo.InvariantCulture);
    }

    private TagBuilder Suggestions()
    {
        var list = new TagBuilder("datalist") { Attributes = { ["id"] = Id + "-list" } };
        foreach (var value in Suggest!)
            list.InnerHtml.AppendHtml(new TagBuilder("option") { TagRenderMode = TagRenderMode.SelfClosing, Attributes = { ["value"] = value } });
        return list;
    }

    private void AppendRadios(TagHelperContent content)
    {
        var n = 0;
        foreach (var item in Items ?? [])
        {
            var radio = Self("radio");
            var id = n == 0 ? Id : $"{Id}-{n}";
            radio.Attributes["id"] = id;
            radio.Attributes["name"] = Name;
            radio.Attributes["value"] = item.Value;
            if (item.Value == Value)
                radio.Attributes["checked"] = "";
            if (n == 0)
                Describe(radio);
            var label = new TagBuilder("label") { Attributes = { ["for"] = id } };
            label.InnerHtml.Append(item.Text);
            var choice = new TagBuilder("div") { Attributes = { ["class"] = "choice" } };
            choice.InnerHtml.AppendHtml(radio).AppendHtml(label);
            content.AppendHtml(choice);
            n++;
        }
    }

    private static TagBuilder Self(string type) =>
        new("input") { TagRenderMode = TagRenderMode.SelfClosing, Attributes = { ["type"] = type } };

    private static string Text(object? value) => value switch
    {
        null => "",
        DateOnly day => DayField.Of(day),
        decimal number => number.ToString("0.######", CultureInfo.InvariantCulture),
        IFormattable formattable => formattable.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };
}
