using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace TagPage.Web.Forms;

/// <summary>
/// Reads typed text the way it is kept: composed (NFC), without spaces around it and without characters that no
/// keyboard types. Nothing but what nobody sees counts as empty. Passwords are left exactly as typed.
/// </summary>
internal sealed class TextBinder : IModelBinder
{
    public Task BindModelAsync(ModelBindingContext bindingContext)
    {
        var name = bindingContext.ModelName;
        var value = bindingContext.ValueProvider.GetValue(name);
        if (value == ValueProviderResult.None)
            return Task.CompletedTask;
        bindingContext.ModelState.SetModelValue(name, value);
        var text = Clean(value.FirstValue);
        bindingContext.Result = ModelBindingResult.Success(text.Length == 0 ? null : text);
        return Task.CompletedTask;
    }

    private static string Clean(string? typed)
    {
        var kept = new StringBuilder((typed ?? "").Replace("\r\n", "\n", StringComparison.Ordinal));
        for (var i = kept.Length - 1; i >= 0; i--)
            if (IsUntypable(kept[i]))
                kept.Remove(i, 1);
        var text = kept.ToString().Trim().Normalize(NormalizationForm.FormC);
        return text.All(IsUnseen) ? "" : text;
    }

    // U+FFFE and U+FFFF are no characters; composing would throw. The others turn the text after them about, or hide in a name.
    private static bool IsUntypable(char c) =>
        (char.IsControl(c) && c is not ('\n' or '\t'))
        || c is '\uFFFE' or '\uFFFF' or '\uFEFF' or '\u200B' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>Joiners belong into names of many scripts, but make none by themselves.</summary>
    private static bool IsUnseen(char c) => char.IsWhiteSpace(c) || char.GetUnicodeCategory(c) == UnicodeCategory.Format;
}

internal sealed class TextBinderProvider : IModelBinderProvider
{
    private static readonly TextBinder Binder = new();

    public IModelBinder? GetBinder(ModelBinderProviderContext context) =>
        context.Metadata.ModelType == typeof(string) && !IsPassword(context.Metadata.Name) ? Binder : null;

    private static bool IsPassword(string? name) => name?.Contains("Password", StringComparison.OrdinalIgnoreCase) == true;
}
