using BenchmarkDotNet.Attributes;
using TagPage.Core.Tags;
using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Labels.Printing;
using TagPage.Labels.Render.Pdf;

namespace TagPage.Bench;

/// <summary>A roll of 500 blank tags: symbols, layout and PDF. The aim is 2 s on two cores.</summary>
public class LabelsBench
{
    private readonly List<TagCode> _codes = [];

    [GlobalSetup]
    public void Draw()
    {
        var random = new Random(20270314);
        while (_codes.Count < 500)
            _codes.Add(TagCode.Draw(random.NextBytes));
    }

    [Benchmark]
    public byte[] RollOf500ToPdf() => LabelPdf.Of(Pages.OneEach(_codes.Select(code =>
        Layouter.Lay(Purposes.Blank(new LabelTag(code, "https://tag.example", "Racket tag")), LabelStock.Usual))));
}
