using TagPage.Core.Strings;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Start.Demo;

/// <summary>The invented owner's care guides: the files of seed-demo/care, whose first line is the title.</summary>
public sealed class DemoGuides(CareGuideStore guides)
{
    private static readonly (string Name, Material? For)[] All =
    [
        ("natural-gut", Material.NaturalGut),
        ("polyester", Material.Polyester),
        ("broken-string", null),
    ];

    public void Write()
    {
        foreach (var (name, material) in All)
        {
            var text = File.ReadAllText(Path.Combine(DemoShop.Seed, "care", name + ".md")).ReplaceLineEndings("\n");
            var end = text.IndexOf('\n', StringComparison.Ordinal);
            guides.Add(Who.Shop, new CareGuideEntry
            {
                FormKey = FormKey.New(),
                Name = name,
                Title = text[..end].TrimStart('#', ' '),
                ForMaterial = material,
                Markdown = text[end..].Trim(),
            });
        }
    }
}
