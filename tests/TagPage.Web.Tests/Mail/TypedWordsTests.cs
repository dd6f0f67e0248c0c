using CsCheck;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Reminders;

namespace TagPage.Web.Tests.Mail;

/// <summary>What people typed changes no email's links, whatever it is and whatever words are around it.</summary>
public sealed class TypedWordsTests : IDisposable
{
    private static readonly string[] Pieces =
    [
        "{link}", "{stop}", "{corner}", "{code}", "{answer 1}", "{client}", "{events}", "\uE0000\uE001", "\uE0002\uE001", "\uE000", "\uE001",
        "[x](https://evil.example)", "https://evil.example/a", "www.evil.example", "<https://evil.example>", "{\"link\":\"OwnPage\",\"row\":1}",
        "https://tag.example/n/finder/1-AAAAAAAAAAAAAAAAAAAAAA", "](", "[", "]", "`", "```\n", "**", "\n\n", "\n    ", "\n[a]: https://evil.example\n",
        "# ", "> ", "- ", "<a href=\"//evil.example\">", "<!--", "&#58;", "\\", "é", "鷺", "\u2028", "\u202E", "Zoë ", "\"", "$0", "%s", " ", "\t",
    ];

    private static readonly (string Mail, string Sms, string Words, string Notice)[] Templates =
    [
        ("", "", "", ""),
        ("Hi {client}, **{rackets}**\n\n[answer]({link}) or {link}\n\nNo more: {stop}", "{client} {rackets} {link} {stop} {shop}",
            "Hi {client}, **{racket}** [{shop}](https://heron.example) {price}\n\n{hours}", "{client}, {events}\n\n{shop}"),
        ("# {shop}\n\n    {client}\n\n`{client}` [{client}]({link} \"{shop}\") [x]({client}) [{client}] ![{shop}]({link})\n\n[{client}]: https://heron.example/{client}\n\n> {rackets}\n\nhttps://heron.example <{link}> {stop} ",
            "{link} {client}", "{client}\n===\n\n*{racket}* `{hours}`\n```{shop}\n{hours}\n```\nhttps://heron.example/{client} <{shop}>", "{events} {client}"),
    ];

    private static readonly Gen<string> Nasty = Gen.Int[0, Pieces.Length - 1].Array[1, 5].Select(picks => string.Concat(picks.Select(p => Pieces[p]))).Select(t => t.Length > 60 ? t[..60] : t);

    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Nothing_typed_into_any_field_changes_which_links_a_mail_or_an_sms_holds(int template)
    {
        var mails = new LinksOfMails(_shop, new Household(_shop));
        var (mail, sms, words, notice) = Templates[template];
        foreach (var (purpose, own) in new[] { ("Reminder", mail), ("ReminderSms", sms), ("Ready", words), ("Received", words), ("Notice", notice) })
            _shop.Records.OwnWords(purpose, own);
        var plain = await mails.Of("Zoe");
        Assert.Contains(plain, l => l.StartsWith("Reminder: ", StringComparison.Ordinal) && l.Contains("/n/own", StringComparison.Ordinal) && l.Contains("/n/stop/own", StringComparison.Ordinal));
        Assert.Contains(plain, l => l.StartsWith("OwnPageLink: ", StringComparison.Ordinal) && l.Contains("/my/own", StringComparison.Ordinal));
        Assert.Contains(plain, l => l.StartsWith("FoundNotice: ", StringComparison.Ordinal) && l.Contains("/n/finder/own", StringComparison.Ordinal));

        await Nasty.SampleAsync(async typed => Assert.Equal(plain, await mails.Of(typed)), iter: 25, threads: 1);
    }
}
