using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Mail;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Reminders;

public sealed class ReminderModel(ReminderListStore store, ReminderStore reminders, ReminderMails texts, ShopStore shops, ShopClock clock) : RecordPage<ReminderRow>
{
    public ReminderMails.Texts Texts { get; private set; } = default!;

    public AnswerForm Answers { get; private set; } = default!;

    protected override ReminderRow? Find(long id) => store.Get(id);

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    public void OnGet()
    {
        Texts = texts.Of(Saved);
        Answers = AnswerForm.Of(new AnswerInput(), reminders.Rackets(Id), Languages.English, clock.Today, shops.Get());
    }
}
