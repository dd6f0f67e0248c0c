using System.Reflection;
using Microsoft.AspNetCore.Mvc.ApplicationModels;
using Microsoft.AspNetCore.Mvc.ModelBinding;

namespace TagPage.Web.Http.Forms;

/// <summary>
/// Looks, when the program starts, only at properties of pages that take something from the request. The framework's own describes
/// all of them, with those every page inherits, and finds afterwards that most take nothing: a good part of a start.
/// </summary>
public sealed class BoundProperties(IPageApplicationModelPartsProvider all) : IPageApplicationModelPartsProvider
{
    public static void Use(IServiceCollection services)
    {
        var framework = services.Single(service => service.ServiceType == typeof(IPageApplicationModelPartsProvider));
        services.Remove(framework);
        services.AddSingleton<IPageApplicationModelPartsProvider>(provider =>
            new BoundProperties((IPageApplicationModelPartsProvider)ActivatorUtilities.CreateInstance(provider, framework.ImplementationType!)));
    }

    public PageHandlerModel? CreateHandlerModel(MethodInfo method) => all.CreateHandlerModel(method);

    public PageParameterModel CreateParameterModel(ParameterInfo parameter) => all.CreateParameterModel(parameter);

    /// <returns>null for a property that says nothing of binding: the caller leaves it out.</returns>
    public PagePropertyModel CreatePropertyModel(PropertyInfo property) => SaysHowItIsBound(property) ? all.CreatePropertyModel(property) : null!;

    public bool IsHandler(MethodInfo methodInfo) => all.IsHandler(methodInfo);

    private static bool SaysHowItIsBound(PropertyInfo property) =>
        property.CustomAttributes.Any(attribute => attribute.AttributeType.IsAssignableTo(typeof(IBindingSourceMetadata)));
}
