using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Sports;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Desk;

/// <summary>Somebody who is not on file yet, with their first racket.</summary>
public sealed class VisitorModel(DeskStore desks, LiveDesks live, IntakeStore intakes, StringPickStore strings, ShopStore shops)
    : IntakePage(desks, live, intakes, strings, shops)
{
    public sealed record VisitorInput : IntakeInput
    {
        public WhoInput Visitor { get; init; } = new();
    }

    public sealed record WhoInput
    {
        [Required(ErrorMessage = "Enter the player’s name.")]
        [StringLength(80, ErrorMessage = "Keep the name within 80 characters.")]
        public string? Name { get; init; }

        public bool Junior { get; init; }

        public Sport Sport { get; init; }

        [StringLength(80, ErrorMessage = "Keep the frame within 80 characters.")]
        public string? Frame { get; init; }

        [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
        public string? TapeColour { get; init; }

        public VisitorEntry ToEntry() => new() { Name = Name, Junior = Junior, Sport = Sport, Frame = Frame, TapeColour = TapeColour };
    }

    [BindProperty]
    public VisitorInput Input { get; set; } = new();

    [BindProperty]
    public string? Answer { get; set; }

    protected override IntakeInput Form => Input;

    protected override Sport Sport => Input.Visitor.Sport;

    public void OnGet(string? name) => Input = new VisitorInput
    {
        FormKey = Records.Storage.FormKey.New(),
        Day = Today,
        TensionUnit = Shop.TensionUnit,
        Visitor = new WhoInput { Name = name is { Length: <= 80 } ? name : null },
    };

    public IActionResult OnPost() => Save(Input, Input.ToEntry(Today) with { Visitor = Input.Visitor.ToEntry() }, Input.Visitor.Sport, null, Answer);
}
