using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// Reads decimals as people type them, 24.5 or 24,5, and never takes a comma for a thousands mark: 24,5 lb must not
/// become 245 lb.
/// </summary>
internal sealed class NumberBinder : IModelBinder
{
    private const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;

    public Task BindModelAsync(ModelBindingContext bindingContext)
    {
        var name = bindingContext.ModelName;
        var value = bindingContext.ValueProvider.GetValue(name);
        if (value == ValueProviderResult.None)
            return Task.CompletedTask;
        bindingContext.ModelState.SetModelValue(name, value);
        Bind(bindingContext, value.FirstValue?.Trim() ?? "");
        return Task.CompletedTask;
    }

    private static void Bind(ModelBindingContext context, string typed)
    {
        if (typed.Length == 0 && context.ModelMetadata.IsReferenceOrNullableType)
            context.Result = ModelBindingResult.Success(null);
        else if (decimal.TryParse(typed.Replace(',', '.'), Plain, CultureInfo.InvariantCulture, out var number))
            context.Result = ModelBindingResult.Success(number);
        else
            context.ModelState.TryAddModelError(context.ModelName, typed.Length == 0 ? "Fill in a number." : $"Enter a number here, like 24.5, not “{Shown(typed)}”.");
    }

    private static string Shown(string typed) => typed.Length > 20 ? typed[..20] + "…" : typed;
}

internal sealed class NumberBinderProvider : IModelBinderProvider
{
    private static readonly NumberBinder Binder = new();

    public IModelBinder? GetBinder(ModelBinderProviderContext context) =>
        context.Metadata.UnderlyingOrModelType == typeof(decimal) ? Binder : null;
}
