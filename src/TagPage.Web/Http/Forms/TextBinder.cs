using Microsoft.AspNetCore.Mvc.ModelBinding;
using TagPage.Core.Text;
using TagPage.Web.Words;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// Reads typed text the way it is kept. A field is one line unless its property says otherwise
/// (DataType.MultilineText); what would begin another line there, or hide in it, is refused at the field. Passwords are
/// left exactly as typed.
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
        var mayHaveLines = MayHaveLines(bindingContext.ModelMetadata);
        var text = TypedText.Kept(value.FirstValue ?? "", mayHaveLines);
        // A part of the address is never null: what cannot be there names nothing that exists.
        if (bindingContext.ActionContext.RouteData.Values.ContainsKey(name))
            bindingContext.Result = ModelBindingResult.Success(TypedText.IsOneLine(text) ? text : "");
        else if (mayHaveLines || TypedText.IsOneLine(text))
            bindingContext.Result = ModelBindingResult.Success(text.Length == 0 ? null : text);
        else
            bindingContext.ModelState.TryAddModelError(name, LanguageOf(bindingContext.HttpContext).Phrases.Reminder.OneLine);
        return Task.CompletedTask;
    }

    internal static bool MayHaveLines(ModelMetadata field) => field.DataTypeName == nameof(System.ComponentModel.DataAnnotations.DataType.MultilineText);

    /// <summary>The shop's own pages are English; finders and clients read their own language.</summary>
    private static Language LanguageOf(HttpContext context) =>
        Others.Any(path => context.Request.Path.StartsWithSegments(path)) ? PageLanguage.Of(context).Language : Languages.English;

    private static readonly string[] Others = ["/t", "/n", "/my"];
}

internal sealed class TextBinderProvider : IModelBinderProvider
{
    private static readonly TextBinder Binder = new();

    public IModelBinder? GetBinder(ModelBinderProviderContext context) =>
        context.Metadata.ModelType == typeof(string) && !IsPassword(context.Metadata.Name) ? Binder : null;

    private static bool IsPassword(string? name) => name?.Contains("Password", StringComparison.OrdinalIgnoreCase) == true;
}
