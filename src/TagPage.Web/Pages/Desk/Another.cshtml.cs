using System.ComponentModel.DataAnnotations;
using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>A racket that is not on file, of a player who is: as their last one at this event.</summary>
public sealed class AnotherModel(DeskStore desks, LiveDesks live, IntakeStore intakes, StringPickStore strings, ShopStore shops)
    : IntakePage(desks, live, intakes, strings, shops)
{
    public sealed record AnotherInput : IntakeInput
    {
        public Sport Sport { get; init; }

        [StringLength(80, ErrorMessage = "Keep the frame within 80 characters.")]
        public string? Frame { get; init; }

        [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
        public string? TapeColour { get; init; }

        public VisitorEntry ToVisitor() => new() { Sport = Sport, Frame = Frame, TapeColour = TapeColour };
    }

    [BindProperty]
    public AnotherInput Input { get; set; } = new();

    [BindProperty]
    public string? Answer { get; set; }

    protected override IntakeInput Form => Input;

    public IntakeStore.PlayerRow Player { get; private set; } = new();

    public string Whose => DeskWords.Player(User.IsHelper(), Player.Junior, Player.Name, Player.LabelName, Player.LastNumber);

    /// <summary>Where rackets of theirs that are on file are found; the name is not put into a helper's address.</summary>
    public string OnFile => Whose == Player.Name ? $"{Home}/in{QueryString.Create("q", Player.Name)}" : $"{Home}/in";

    protected override Sport Sport => Input.Sport;

    protected override DeskBoard? Find(long id)
    {
        var board = base.Find(id);
        if (board is null || Intakes.Player(Me, id, long.Parse((string)RouteData.Values["player"]!, CultureInfo.InvariantCulture)) is not { } player)
            return null;
        Player = player;
        return board;
    }

    public void OnGet() => Input = (AnotherInput)IntakeInput.Fill(new AnotherInput { Sport = Player.LastSport ?? Sport.Tennis },
        Saved.Entries.LastOrDefault(entry => entry.PlayerId == Player.Id && entry.State != Core.Jobs.JobState.Cancelled), null, Today, Shop.TensionUnit);

    public IActionResult OnPost() => Save(Input, Input.ToEntry(Today) with { PlayerId = Player.Id, Visitor = Input.ToVisitor() }, Input.Sport, null, Answer);
}
