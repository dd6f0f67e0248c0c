using TagPage.Records.Outbox;

namespace TagPage.Records.Jobs;

/// <summary>Writes the emails about a job: the shop's own words where it has some, else the product's in the client's language.</summary>
public interface IJobMails
{
    /// <summary>Rackets of one client, at least one, can be collected.</summary>
    WrittenMail Ready(IReadOnlyList<JobRow> jobs);

    /// <summary>The shop got the client's request.</summary>
    WrittenMail Received(JobRow job);
}
