using System.ComponentModel.DataAnnotations;
using TagPage.Core.Players;
using TagPage.Records.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>What the form of a racket's label posts.</summary>
public sealed record LabelInput
{
    public LabelPurpose Purpose { get; init; }

    [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? TapeColour { get; init; }

    [Range(6.0, 50.0, ErrorMessage = "Enter a length in mm from {1} to {2}.")]
    public decimal? TapeMm { get; init; }

    /// <summary>The racket is told from others by this tape's colour.</summary>
    public bool MarksRacket { get; init; }

    [StringLength(20, ErrorMessage = "Keep the ink within 20 characters.")]
    public string? InkColour { get; init; }

    [StringLength(40, ErrorMessage = "Keep the line within 40 characters.")]
    public string? OwnLine { get; init; }

    [StringLength(WhoseOnLabel.LongestAgreedName, ErrorMessage = "Keep the name within 20 characters.")]
    public string? AgreedName { get; init; }

    public bool Whose { get; init; } = true;

    /// <summary>With the shop's mark, where it has one and there is room.</summary>
    public bool Logo { get; init; } = true;

    public bool Fold { get; init; }

    [Required(ErrorMessage = "Enter how many copies."), Range(1, 50, ErrorMessage = "Enter a number from 1 to 50.")]
    public int? Copies { get; init; } = 1;

    public LabelPages Pages { get; init; }

    [Required(ErrorMessage = "Enter the first free place, counted from 1."), Range(1, 800, ErrorMessage = "Enter a number from 1 to 800.")]
    public int? FirstFree { get; init; } = 1;

    public string TapeOr(string usual) => string.IsNullOrEmpty(TapeColour) ? usual : TapeColour;

    /// <param name="usualTape">The colour of the shop's usual tape.</param>
    public LabelEntry ToEntry(string usualTape) => new()
    {
        Purpose = Purpose,
        TapeColour = TapeColour,
        TapeMm = TapeMm,
        RacketColour = MarksRacket ? TapeOr(usualTape) : null,
        InkColour = InkColour,
        OwnLine = OwnLine,
        AgreedName = AgreedName,
        Whose = Whose,
        Logo = Logo,
        Fold = Fold,
        Copies = Copies ?? 1,
        Pages = Pages,
        FirstFree = FirstFree ?? 1,
    };
}
