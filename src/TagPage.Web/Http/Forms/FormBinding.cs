using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace TagPage.Web.Http.Forms;

/// <summary>How typed text becomes values, and what is said if it cannot.</summary>
internal static class FormBinding
{
    public static void Configure(MvcOptions options)
    {
        options.ModelBinderProviders.Insert(0, new NumberBinderProvider());
        options.ModelBinderProviders.Insert(0, new TextBinderProvider());
        options.ModelBinderProviders.Insert(0, new WholeNumberBinderProvider());
        // Names like a[b], which no page uses, and which these two cannot read when a bracket is missing.
        options.ValueProviderFactories.RemoveType<JQueryFormValueProviderFactory>();
        options.ValueProviderFactories.RemoveType<JQueryQueryStringValueProviderFactory>();
        options.SuppressImplicitRequiredAttributeForNonNullableReferenceTypes = true;
        var messages = options.ModelBindingMessageProvider;
        messages.SetAttemptedValueIsInvalidAccessor((value, _) => $"“{Shown(value)}” does not fit this field. Enter a date as 2027-03-14.");
        messages.SetNonPropertyAttemptedValueIsInvalidAccessor(value => $"“{Shown(value)}” does not fit this field.");
        messages.SetValueMustNotBeNullAccessor(_ => "Fill in this field.");
        messages.SetValueIsInvalidAccessor(value => $"“{Shown(value)}” does not fit this field.");
        messages.SetMissingBindRequiredValueAccessor(_ => "Fill in this field.");
        messages.SetMissingKeyOrValueAccessor(() => "Fill in this field.");
    }

    private static string Shown(string value) => value.Length > 40 ? value[..40] + "…" : value;
}
