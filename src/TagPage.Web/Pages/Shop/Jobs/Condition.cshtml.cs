using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Condition;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Photos;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>What a racket looked like when it came in, and photos of it. A photo that cannot be kept does not hold up the others, nor what was typed.</summary>
[UploadLimit(PhotoDesk.MostBytes)]
public sealed class ConditionModel(JobStore jobs, ConditionStore conditions, PhotoStore photos) : RecordPage<JobRow>
{
    [BindProperty]
    public ConditionInput Input { get; set; } = new();

    /// <summary>Of the photos: what is noted takes the place of what was, and needs none.</summary>
    [BindProperty]
    public string FormKey { get; set; } = "";

    public ConditionRow Condition => conditions.OfJob(User.AtShop(), Id)!;

    protected override JobRow? Find(long id) => jobs.GetWithVisits(User.AtShop(), id);

    public void OnGet()
    {
        Input = ConditionInput.Of(Condition);
        FormKey = Records.Storage.FormKey.New();
    }

    public async Task<IActionResult> OnPost()
    {
        var (sent, faults) = await PhotoDesk.Read(Input.Files());
        var photographed = sent.Count > 0 ? photos.Add(User.AtShop(), Id, FormKey, sent) : new Outcome.Done(Id);
        if (photographed is Outcome.Refused refused)
            this.Refuse(refused);
        var noted = IsTyped ? conditions.Note(User.AtShop(), Id, Input.ToEntry()) : null;
        if (noted is Outcome.Refused stale)
            this.Refuse(stale, Condition.Version);
        if (photographed is Outcome.Absent || noted is Outcome.Absent)
            return NotFound();
        if (faults.Count > 0)
            this.Refuse(new FieldFault(nameof(Input.Photos), string.Join(' ', faults) + (ModelState.IsValid ? " All else is saved." : "")));
        if (ModelState.IsValid)
            return this.GoOn($"/shop/jobs/{Id}", sent.Count == 0 ? "The condition is saved." : $"Saved, with {ConditionWords.Photos(sent.Count)}.");
        BeginAnew(noted is Outcome.Done, photographed is Outcome.Done && sent.Count > 0);
        return Page();
    }

    /// <summary>Whether what was typed holds, whatever becomes of the photos.</summary>
    private bool IsTyped => ModelState.All(entry => entry.Key is "Input.Photos" or "Input.Camera" || entry.Value!.Errors.Count == 0);

    /// <summary>What is kept already is not sent again with what is put right.</summary>
    private void BeginAnew(bool noted, bool photographed)
    {
        if (noted)
        {
            Input = Input with { Version = Condition.Version };
            this.ShowAnew("Input.Version");
        }
        if (photographed)
        {
            FormKey = Records.Storage.FormKey.New();
            this.ShowAnew(nameof(FormKey));
        }
    }
}
