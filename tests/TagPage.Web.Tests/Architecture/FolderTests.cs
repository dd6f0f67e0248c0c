using System.Text.RegularExpressions;
using ArchUnitNET.Fluent.Slices;
using ArchUnitNET.Loader;
using TagPage.Core.Tags;
using TagPage.Labels;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Architecture;

/// <summary>The plan of the house, held by what the compiler made of it.</summary>
[Long]
public sealed class FolderTests
{
    private static readonly ArchUnitNET.Domain.Architecture House = new ArchLoader()
        .LoadAssemblies(typeof(TagCode).Assembly, typeof(TagQr).Assembly, typeof(Database).Assembly, typeof(Program).Assembly)
        .Build();

    [Theory]
    [InlineData("TagPage.Core.(*)")]
    [InlineData("TagPage.Core.Forecast.(*)")]
    [InlineData("TagPage.Labels.(*)")]
    [InlineData("TagPage.Labels.Render.(*)")]
    [InlineData("TagPage.Records.(*)")]
    [InlineData("TagPage.Web.(*)")]
    [InlineData("TagPage.Web.Http.(*)")]
    [InlineData("TagPage.Web.Start.(*)")]
    [InlineData("TagPage.Web.Words.(*)")]
    [InlineData("TagPage.Web.Pages.(*)")]
    [InlineData("TagPage.Web.Pages.Shop.(*)")]
    public void No_folders_stand_in_a_ring(string folders)
    {
        var rule = SliceRuleDefinition.Slices().Matching(folders).Should().BeFreeOfCycles();

        AssertNothing(rule.Evaluate(House).Where(r => !r.Passed).Select(r => r.Description));
    }

    [Fact]
    public void Records_know_neither_the_web_nor_labels() => AssertNothing(
        References(typeof(Database)).Where(n => n.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal) || n is "TagPage.Web" or "TagPage.Labels"));

    [Fact]
    public void Core_knows_nobody() => AssertNothing(References(typeof(TagCode)).Where(n => !n.StartsWith("System", StringComparison.Ordinal)));

    [Fact]
    public void Web_cannot_speak_to_the_database_past_the_records() => AssertNothing(
        References(typeof(Program)).Where(n => n is "Dapper" || n.StartsWith("Microsoft.Data", StringComparison.Ordinal) || n.StartsWith("SQLite", StringComparison.OrdinalIgnoreCase)));

    private static IEnumerable<string> References(System.Type type) => type.Assembly.GetReferencedAssemblies().Select(a => a.Name!);

    /// <summary>A page folder uses no other page folder but those named Shared.</summary>
    [Fact]
    public void Pages_of_one_folder_use_no_other_folders_pages() => AssertNothing(
        from type in House.Types
        let folder = PageFolder(type.Namespace?.FullName ?? "")
        where folder is not null
        from used in type.Dependencies.Select(d => d.Target).Distinct()
        let other = PageFolder(used.Namespace?.FullName ?? "")
        where other is not null && other != folder && !other.EndsWith("Shared", StringComparison.Ordinal)
        select $"{type.FullName} uses {used.FullName}");

    /// <summary>TagPage.Web.Pages.Shop.Jobs of the shop, TagPage.Web.Pages.Found of all others; null outside the pages.</summary>
    private static string? PageFolder(string name) =>
        Regex.Match(name, @"^TagPage\.Web\.Pages\.(Shop\.\w+|\w+)") is { Success: true } match ? match.Value : null;

    private static void AssertNothing(IEnumerable<string> broken) => Assert.True(!broken.Any(), string.Join("\n", broken.Distinct().Order(StringComparer.Ordinal)));
}
