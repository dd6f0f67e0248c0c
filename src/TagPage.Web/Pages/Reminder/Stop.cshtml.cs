using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Reminder;

/// <summary>
/// Ends the reminders to one household, and can do nothing else. Mail programs press the button by themselves (RFC
/// 8058): without cookie or form token, and the answer must be no redirect.
/// </summary>
[IgnoreAntiforgeryToken]
public sealed class StopModel(ReminderStore store, AnswerStore answers, ShopStore shops) : LinkPage<ReminderStore.Row>
{
    public bool IsDone => Saved is { Reminders: false };

    public ShopDetails Shop => shops.Get();

    protected override ReminderStore.Row? Find(string key) => store.OfStop(key);

    public void OnPost()
    {
        answers.Stop(Who.Client(Saved.ClientId), Saved.ClientId);
        Saved = Saved with { Reminders = false };
    }
}
