using System.Reflection;
using Microsoft.AspNetCore.Mvc.ApplicationModels;
using Microsoft.AspNetCore.Mvc.RazorPages;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Forms;

public sealed class BoundPropertiesTests
{
    [Fact]
    public void Pages_take_from_a_request_what_the_framework_alone_would_have_them_take()
    {
        using var shop = new TestShop();
        var pages = shop.Get<EndpointDataSource>().Endpoints.Select(endpoint => endpoint.Metadata.GetMetadata<CompiledPageActionDescriptor>()).OfType<CompiledPageActionDescriptor>().ToList();
        using var framework = new ServiceCollection().AddLogging().AddRazorPages().Services.BuildServiceProvider();
        var parts = framework.GetRequiredService<IPageApplicationModelPartsProvider>();

        Assert.NotEmpty(pages.SelectMany(page => page.BoundProperties));
        Assert.All(pages, page => Assert.Equal(
            page.HandlerTypeInfo.GetProperties(BindingFlags.Instance | BindingFlags.Public).Select(parts.CreatePropertyModel).Where(property => property?.BindingInfo is not null).Select(property => property.PropertyName).Distinct().Order(StringComparer.Ordinal),
            page.BoundProperties.Select(property => property.Name).Order(StringComparer.Ordinal)));
    }
}
