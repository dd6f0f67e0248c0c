using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Rackets;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class EditModel(RacketStore store) : RecordPage<RacketStore.Row>
{
    [BindProperty]
    public RacketInput Input { get; set; } = new();

    protected override RacketStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new RacketInput
    {
        Version = Saved.Version,
        Number = Saved.Number,
        State = Saved.State,
        Sport = Saved.Sport,
        Frame = Saved.Frame,
        TapeColour = Saved.TapeColour,
        HeadSize = Saved.HeadSize,
        HeadSizeUnit = Saved.HeadSizeUnit,
        PatternMains = Saved.PatternMains,
        PatternCrosses = Saved.PatternCrosses,
        LengthCm = Saved.LengthCm,
        Grip = Saved.Grip,
        OwnDate = Saved.OwnDate,
        OwnDateNote = Saved.OwnDateNote,
        Note = Saved.Note,
    };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(RacketRules.Oddities(Input.ToEntry(), Saved.IsTagged), Input.Confirmed))
            return Page();
        return this.After(store.Change(User.AtShop(), Id, Input.ToEntry()),
            _ => this.GoOn($"/shop/rackets/{Id}", $"{Saved.PlayerName}’s racket {Input.Number} is saved."), Saved.Version);
    }
}
