namespace TagPage.Records.Outbox;

/// <summary>Emails that are sent one after another; the lanes run in parallel, so that none waits for another.</summary>
/// <param name="Kinds">Names of the kinds that go in it.</param>
public sealed record MailLane(IReadOnlyList<string> Kinds)
{
    /// <summary>Somebody is waiting at a screen for it: own-page codes, which are valid for ten minutes, and links asked for.</summary>
    public static MailLane AwaitedNow { get; } = Of(MailKind.OwnPageCode, MailKind.OwnPageLink);

    /// <summary>Everything else; news from finders and the bench goes before reminders, of which a batch holds hundreds.</summary>
    public static MailLane AllElse { get; } = Of([.. Enum.GetValues<MailKind>().Where(k => !AwaitedNow.Kinds.Contains(k.ToString()))]);

    public static IReadOnlyList<MailLane> All { get; } = [AwaitedNow, AllElse];

    private static MailLane Of(params MailKind[] kinds) => new([.. kinds.Select(k => k.ToString())]);
}
