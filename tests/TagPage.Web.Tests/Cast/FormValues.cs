using AngleSharp.Dom;
using AngleSharp.Html.Dom;

namespace TagPage.Web.Tests.Cast;

/// <summary>What a browser would send for a form as it is.</summary>
public sealed class FormValues
{
    private readonly List<KeyValuePair<string, string>> _pairs = [];

    public IEnumerable<KeyValuePair<string, string>> Pairs => _pairs;

    public static FormValues Of(IHtmlFormElement form)
    {
        var values = new FormValues();
        foreach (var control in form.Elements.Where(e => e.HasAttribute("name") && !e.HasAttribute("disabled")))
            values.Add(control);
        return values;
    }

    /// <summary>Replaces the value; false unticks a box.</summary>
    public void Set(string name, string value)
    {
        _pairs.RemoveAll(p => p.Key == name);
        _pairs.Add(new(name, value));
    }

    private void Add(IElement control)
    {
        var name = control.GetAttribute("name")!;
        var value = control switch
        {
            IHtmlInputElement { Type: "checkbox" or "radio" } box => box.IsChecked ? box.GetAttribute("value") ?? "on" : null,
            IHtmlInputElement { Type: "submit" } => null,
            IHtmlInputElement input => input.Value,
            IHtmlSelectElement select => select.Value,
            IHtmlTextAreaElement area => area.Value,
            _ => null,
        };
        if (value is not null)
            _pairs.Add(new(name, value));
    }
}
