using System.Text.Json;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Style;

public sealed class LicenceTests
{
    private static readonly List<string[]> Rows = [.. File.ReadAllLines(Path.Combine(Repository.Folder, "docs", "licences.md"))
        .Where(line => line.StartsWith("| ", StringComparison.Ordinal)).Select(line => line.Split('|', StringSplitOptions.TrimEntries)).Skip(2)];

    [Fact]
    public void Every_library_that_is_shipped_stands_under_Help_with_its_licence_and_none_that_is_not()
    {
        using var shipped = JsonDocument.Parse(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "TagPage.Web.deps.json")));
        var libraries = shipped.RootElement.GetProperty("libraries").EnumerateObject()
            .Where(library => library.Value.GetProperty("type").GetString() == "package").Select(library => library.Name.Split('/')[0]);

        Assert.All(Rows, row => Assert.NotEqual("", row[3]));
        Assert.Equal(libraries.Order(StringComparer.OrdinalIgnoreCase), Rows.Select(row => row[1]).Where(name => !name.Contains(' ', StringComparison.Ordinal)));
    }

    [Fact]
    public void Text_of_every_licence_lies_beside_the_program_the_library_s_own_where_it_brings_one()
    {
        var folder = Path.Combine(AppContext.BaseDirectory, "licences");

        Assert.All(Rows.Where(row => row[3] != "public domain" && !row[1].Contains(' ', StringComparison.Ordinal)), row => Assert.True(
            row[3].Split(" OR ").Any(licence => File.Exists(Path.Combine(folder, licence + ".txt"))) || Directory.Exists(Path.Combine(folder, row[1])), row[1]));
        Assert.Contains("Copyright (c) 2013-2025 Raffael Herrmann", File.ReadAllText(Path.Combine(folder, "QRCoder", "LICENSE.txt")), StringComparison.Ordinal);
        Assert.Contains("Copyright 2011 The Roboto Project Authors", File.ReadAllText(Path.Combine(folder, "Fonts", "OFL.txt")), StringComparison.Ordinal);
        Assert.True(new FileInfo(Path.Combine(folder, "SkiaSharp.NativeAssets.Linux.NoDependencies", "THIRD-PARTY-NOTICES.txt")).Length > 10_000);
    }

    [Fact]
    public async Task Owner_reads_every_text_under_Help_and_nothing_else_of_the_machine()
    {
        await using var shop = new TestShop();
        var owner = shop.Owner();

        var texts = (await owner.Open("/shop/help/licences")).Document.QuerySelectorAll("a[href^='/shop/help/licence-texts/']").Select(a => a.GetAttribute("href")!).ToList();
        Assert.True(texts.Count >= 8, $"{texts.Count} texts");
        foreach (var text in texts)
            Assert.True((await owner.Open(text)).Document.QuerySelector("pre")!.TextContent.Length > 500, text);

        foreach (var elsewhere in (string[])["..%2FTagPage.Web.deps.json", "%2Fetc%2Fhostname", "nothing"])
            Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Get("/shop/help/licence-texts/" + elsewhere)).StatusCode);
    }
}
