using TagPage.Core.Customising;

namespace TagPage.Records.OwnPages;

/// <summary>What was added to a frame, as its own household sees it.</summary>
public sealed record OwnPageMass
{
    public decimal Grams { get; init; }
    public decimal AtCm { get; init; }
    public AddedMaterial Material { get; init; }
    public DateOnly AddedOn { get; init; }
    public DateOnly? RemovedOn { get; init; }
}
