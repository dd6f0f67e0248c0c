using TagPage.Records.Reminders;
namespace TagPage.Web.Pages.Shop.Reminders;

/// <summary>What the form for a new reminder posts.</summary>
public sealed record NewReminderInput
{
    public string FormKey { get; init; } = "";

    /// <summary>Remind even though the household was reminded recently.</summary>
    public bool Insist { get; init; }

    /// <summary>Nothing is sent: the client said on the phone what to do.</summary>
    public bool ByPhone { get; init; }

    public NewReminderEntry ToEntry() => new()
    {
        FormKey = FormKey,
        Insist = Insist,
        ByPhone = ByPhone,
    };
}
