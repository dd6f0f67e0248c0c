using TagPage.Core.Text;
using TagPage.Records.Jobs;
using TagPage.Records.Outbox;
using TagPage.Records.Players;
using TagPage.Records.Shop;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Mail;

/// <summary>Mails about a racket at the shop: the owner's own words, or the product's in the client's language.</summary>
public sealed class JobMails(ShopStore shops, ShopClock clock) : IJobMails
{
    /// <param name="Subject">One line.</param>
    /// <param name="Body">Markdown.</param>
    /// <param name="Sms">The same for an app of the owner's.</param>
    public sealed record Notice(string Subject, MailText Body, string Sms);

    /// <summary>"We have your request".</summary>
    WrittenMail IJobMails.Received(JobRow job)
    {
        var shop = shops.Get();
        return Mail(Of([job], shop, m => (Or(shop.Received.Subject, m.ReceivedSubject), Or(shop.Received.Text, m.ReceivedBody), m.ReadySms)));
    }

    WrittenMail IJobMails.Ready(IReadOnlyList<JobRow> jobs) => Mail(Ready(jobs));

    /// <summary>"Ready to collect", of one client's rackets, whether or not an email can be sent.</summary>
    public Notice Ready(IReadOnlyList<JobRow> jobs)
    {
        var shop = shops.Get();
        // The owner’s own words tell of new strings, as the product’s do.
        if (jobs.Any(job => job.IsVisit))
            return Of(jobs, shop, m => (m.DoneSubject, jobs.Count == 1 ? m.DoneBody : m.AllDoneBody, jobs.Count == 1 ? m.DoneSms : m.AllDoneSms), isReady: true);
        return Of(jobs, shop, m => (Or(shop.Ready.Subject, m.ReadySubject), Or(shop.Ready.Text, jobs.Count == 1 ? m.ReadyBody : m.AllReadyBody), jobs.Count == 1 ? m.ReadySms : m.AllReadySms), isReady: true);
    }

    private static WrittenMail Mail(Notice notice) => new(notice.Subject, notice.Body);

    private Notice Of(IReadOnlyList<JobRow> jobs, ShopDetails shop, Func<OwnPageMailPhrases, (string Subject, string Body, string Sms)> which, bool isReady = false)
    {
        var language = OwnPageWords.Fitting(Languages.OfOrEnglish(jobs[0].ClientLanguage));
        var say = OwnPageWords.Of(language).Mail;
        var rackets = Named(Rackets(jobs, language).ToList(), language);
        var price = Price(jobs, shop, language, say);
        (string Name, string Value)[] values =
        [
            ("client", jobs[0].Client), ("shop", shop.Name), ("racket", rackets), ("hours", OpeningWords.Lines(language, shop, clock.Today)), ("price", price ?? ""),
        ];
        var (subject, body, text) = which(say);
        if (price is null)
            (subject, body) = (subject.WithoutClauseOf("price"), body.WithoutClauseOf("price"));
        MailText? places = isReady ? Places(jobs, shop, language, say, name => name) : null, folded = isReady ? Places(jobs, shop, language, say, Sms.Fold) : null;
        var sms = MailText.Fill(folded is null ? text : text + " {places}", ("shop", Sms.Fold(shop.Name)), ("racket", Sms.Fold(rackets)), ("places", folded ?? ""));
        return new Notice(subject.Fill(values), MailText.Fill(places is null ? body : WithPlaces(body), [.. values.Select(v => (v.Name, (MailText)v.Value)), ("places", places ?? "")]), PlainMail.Of(sms));
    }

    /// <summary>After the paragraph that names the rackets, else at the end: the owner’s own words need not know of places.</summary>
    private static string WithPlaces(string body)
    {
        var at = body.IndexOf("{racket}", StringComparison.Ordinal) is >= 0 and var named ? body.IndexOf("\n\n", named, StringComparison.Ordinal) : -1;
        return at < 0 ? body + "\n\n{places}" : body.Insert(at, "\n\n{places}");
    }

    /// <summary>Where they wait, and where they are still to be brought; null where all are at the shop’s own bench.</summary>
    private static MailText? Places(IReadOnlyList<JobRow> jobs, ShopDetails shop, Language language, OwnPageMailPhrases say, Func<string, string> write)
    {
        if (jobs.All(job => job.CollectAt is null))
            return null;
        var places = jobs.GroupBy(job => (Place: job.CollectAt ?? shop.Name, job.IsToBring)).ToList();
        string Name(IGrouping<(string Place, bool IsToBring), JobRow> of) => places.Count == 1 ? of.Key.Place : $"{of.Key.Place} ({Named([.. Rackets([.. of], language)], language)})";
        return MailText.Join(" ", places.GroupBy(of => of.Key.IsToBring).OrderBy(of => of.Key)
            .Select(of => MailText.Fill(of.Key ? say.ComesTo : say.WaitsAt, ("place", write(string.Join("; ", of.Select(Name)))))));
    }

    // Where a racket’s name has a comma of its own.
    private static string Named(List<string> rackets, Language language) =>
        rackets.Count > 1 && rackets.Any(racket => racket.Contains(',', StringComparison.Ordinal)) ? string.Join("; ", rackets) : language.List(rackets);

    private static IEnumerable<string> Rackets(IReadOnlyList<JobRow> jobs, Language language)
    {
        var names = GivenNames.Of(jobs.Select(job => job.Player).Distinct());
        return jobs.Select(job => language.Phrases.Trade.RacketOf.Fill(("player", names[job.Player]), ("number", $"{job.Number}")));
    }

    /// <summary>
    /// What this client still has to pay for all of them, or that it is paid. Null where one to be paid has no price, or somebody else pays,
    /// whom it concerns alone.
    /// </summary>
    private static string? Price(IReadOnlyList<JobRow> jobs, ShopDetails shop, Language language, OwnPageMailPhrases say)
    {
        if (Open(jobs) is not { } open)
            return null;
        return jobs.All(job => job.PaidOn is not null) ? say.Paid : language.Money(open, shop);
    }

    /// <summary>What is still to be paid for all of them; null where one has no price, or somebody else pays.</summary>
    public static long? Open(IReadOnlyList<JobRow> jobs) =>
        jobs.Any(job => job.Payer is not null || job.PriceMinor is null) ? null : jobs.Where(job => job.PaidOn is null).Sum(job => job.OpenMinor!.Value);

    private static string Or(string own, string products) => own.Length > 0 ? own : products;
}
