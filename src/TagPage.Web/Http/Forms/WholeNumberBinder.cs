using System.Globalization;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace TagPage.Web.Http.Forms;

/// <summary>Reads whole numbers: digits with an optional sign, nothing that could be taken for a thousands mark.</summary>
internal sealed class WholeNumberBinder : IModelBinder
{
    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite;

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
        else if (int.TryParse(typed, Plain, CultureInfo.InvariantCulture, out var number))
            context.Result = ModelBindingResult.Success(number);
        else
            context.ModelState.TryAddModelError(context.ModelName, "Enter a whole number here, like 16.");
    }
}

internal sealed class WholeNumberBinderProvider : IModelBinderProvider
{
    private static readonly WholeNumberBinder Binder = new();

    public IModelBinder? GetBinder(ModelBinderProviderContext context) =>
        context.Metadata.UnderlyingOrModelType == typeof(int) ? Binder : null;
}
