using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Frames;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Frames;

public sealed class EditModel(FrameStore store) : RecordPage<FrameStore.Row>
{
    [BindProperty]
    public FrameInput Input { get; set; } = new();

    protected override FrameStore.Row? Find(long id) => store.Get(id);

    public void OnGet() => Input = new FrameInput
    {
        Version = Saved.Version,
        Sport = Saved.Sport,
        Name = Saved.Name,
        PatternMains = Saved.PatternMains,
        PatternCrosses = Saved.PatternCrosses,
        SkippedHoles = Saved.SkippedHoles,
        TieOffs = Saved.TieOffs,
        LeastTension = Saved.LeastTension,
        MostTension = Saved.MostTension,
        TensionUnit = Saved.TensionUnit,
        Note = Saved.Note,
    };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Change(User.AtShop(), Id, Input.ToEntry()), _ => this.GoOn("/shop/frames", $"{Input.Name} is saved."), Saved.Version)
        : Page();
}
