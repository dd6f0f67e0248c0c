using System.ComponentModel.DataAnnotations;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Records.FirstVisits;
using TagPage.Records.Players;
using TagPage.Records.Rackets;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

/// <summary>What the first-visit form posts: a client, a player and a racket in one.</summary>
public sealed record FirstVisitInput
{
    public string FormKey { get; init; } = "";

    public string? Confirmed { get; init; }

    [Required(ErrorMessage = "Enter the client’s name.")]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? Name { get; init; }

    [PhoneNumber]
    public string? Phone { get; init; }

    [MailAddress]
    public string? Mail { get; init; }

    public bool ClientPlays { get; init; }

    [CustomValidation(typeof(FirstVisitInput), nameof(NeedPlayer))]
    [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
    public string? PlayerName { get; init; }

    public bool Junior { get; init; }

    [Range(0.0, Play.MaxTimesAWeek, ErrorMessage = "Enter 0 to 21 times a week.")]
    public decimal? TimesAWeek { get; init; }

    [Range(0.0, Play.MaxHoursATime, ErrorMessage = "Enter 0 to 8 hours.")]
    public decimal? HoursATime { get; init; }

    [Required(ErrorMessage = "Choose the sport.")]
    public Sport? Sport { get; init; }

    [StringLength(80, ErrorMessage = "Keep the frame within 80 characters.")]
    public string? Frame { get; init; }

    [Range(8, 40, ErrorMessage = "Enter 8 to 40 mains.")]
    public int? PatternMains { get; init; }

    [Range(8, 40, ErrorMessage = "Enter 8 to 40 crosses.")]
    public int? PatternCrosses { get; init; }

    [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? TapeColour { get; init; }

    [StringLength(40, ErrorMessage = "Keep the grip within 40 characters.")]
    public string? Grip { get; init; }

    [Required(ErrorMessage = "Choose what tag the racket gets.")]
    public FirstTag? Tag { get; init; } = FirstTag.New;

    [CustomValidation(typeof(FirstVisitInput), nameof(NeedCode))]
    [StringLength(200, ErrorMessage = "A code has eleven letters and digits, for example 7K2M-9Q4T-XAV.")]
    public string? BlankCode { get; init; }

    public FirstVisitEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Client = new ClientInput { Name = Name, Phone = Phone, Mail = Mail }.ToEntry(),
        Player = new PlayerEntry
        {
            Name = (ClientPlays ? Name : PlayerName)!,
            Junior = Junior,
            TimesAWeek = TimesAWeek,
            HoursATime = HoursATime,
            Hitting = Hitting.Average,
        },
        Racket = new RacketEntry
        {
            Number = 1,
            State = RacketState.InTurn,
            Sport = Sport!.Value,
            Frame = Frame,
            PatternMains = PatternMains,
            PatternCrosses = PatternCrosses,
            TapeColour = TapeColour,
            Grip = Grip,
        },
        Tag = Tag!.Value,
        BlankCode = BlankCode,
    };

    public static ValidationResult? NeedPlayer(string? name, ValidationContext context) =>
        name is null && context.ObjectInstance is FirstVisitInput { ClientPlays: false }
            ? new ValidationResult("Enter the player’s name, or tick that the client plays.")
            : ValidationResult.Success;

    public static ValidationResult? NeedCode(string? code, ValidationContext context) =>
        code is null && context.ObjectInstance is FirstVisitInput { Tag: FirstTag.Blank }
            ? new ValidationResult("Scan or type the code of the blank tag.")
            : ValidationResult.Success;
}
