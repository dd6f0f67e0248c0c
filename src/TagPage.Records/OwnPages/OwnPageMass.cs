using TagPage.Core.Customising;

namespace TagPage.Records.OwnPages;

/// <summary>What was added to a frame, as its own household sees it.</summary>
public sealed record OwnPageMass
{
    /// <summary>As the shop calls it.</summary>
    public string Place { get; init; } = "";
    public decimal Grams { get; init; }
    public decimal AtCm { get; init; }
    public AddedMaterial Material { get; init; }
    public DateOnly AddedOn { get; init; }
    public DateOnly? RemovedOn { get; init; }
}
