using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Architecture;

public sealed class WhoActsTests
{
    /// <summary>Who.Shop may everything and stands for nobody: a page acts for whoever is signed in.</summary>
    [Fact]
    public void Shop_pages_act_for_whoever_is_signed_in() => Assert.Empty(
        from path in Repository.Files("src/TagPage.Web/Pages/Shop", "*.cs").Concat(Repository.Files("src/TagPage.Web/Pages/Shop", "*.cshtml"))
        where File.ReadAllText(Path.Combine(Repository.Folder, path)).Contains("Who.Shop", StringComparison.Ordinal)
        select path + ": User.AtShop() says who acts");
}
