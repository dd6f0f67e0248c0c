namespace TagPage.Records.Outbox;

/// <summary>Mails that go one after the other; the lanes go beside each other, so that none waits for another's.</summary>
/// <param name="Kinds">Names of the kinds that go in it.</param>
public sealed record MailLane(IReadOnlyList<string> Kinds)
{
    /// <summary>Somebody sits before a screen until it comes: own-page codes, which live ten minutes, and links that were asked for.</summary>
    public static MailLane AwaitedNow { get; } = Of(MailKind.OwnPageCode, MailKind.OwnPageLink);

    /// <summary>All else; what finders and the bench have to say goes before reminders, of which a batch holds hundreds.</summary>
    public static MailLane AllElse { get; } = Of([.. Enum.GetValues<MailKind>().Where(k => !AwaitedNow.Kinds.Contains(k.ToString()))]);

    public static IReadOnlyList<MailLane> All { get; } = [AwaitedNow, AllElse];

    private static MailLane Of(params MailKind[] kinds) => new([.. kinds.Select(k => k.ToString())]);
}
