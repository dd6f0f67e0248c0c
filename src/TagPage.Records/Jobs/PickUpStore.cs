using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Records.Deeds;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Jobs;

/// <summary>Hands out several rackets of a household or of a payer's clients, with one payment for them. All of them, or none. Only the shop may.</summary>
public sealed class PickUpStore(Database database, ShopClock clock)
{
    /// <summary>What whoever pays for them has in credit; null where nothing of theirs is at the shop.</summary>
    public long? Credit(Who who, Party party) => database.Read(c =>
        TogetherStore.Jobs(c, who, party) is [var job, ..] ? ShareStore.Free(c, ShareStore.Of(c, job.Id)!.Party).Sum(f => f.Free) : (long?)null);

    /// <summary>Done carries the first of the jobs.</summary>
    public Outcome Collect(Who who, Party party, PickUpEntry input)
    {
        var (now, today) = (clock.Now, clock.Today);
        return database.WriteOnceAsShop(who, input.FormKey, now, c =>
        {
            List<long> ids = [.. input.Jobs.Distinct()];
            if (ids.Count == 0)
                return new Outcome.Refused(new NoRacketChosen());
            var jobs = ids.Select(id => JobStore.GetWithVisits(c, who, id)).OfType<JobRow>().Where(job => c.ExecuteScalar<bool>(IsTheirsSql, new { job.ClientId, Client = party.ClientId, Payer = party.PayerId })).ToList();
            if (jobs.Count < ids.Count)
                return new Outcome.Absent();
            if ((jobs.Select(job => WhyNot(job, input, today)).FirstOrDefault(why => why is not null) ?? Pay(c, jobs, input, who, (now, today))) is { } why)
                return new Outcome.Refused(why);
            foreach (var job in jobs)
            {
                MoveStore.Collect(c, job.Id, input.CollectedOn, now);
                JobDeedStore.Note(c, who, job.Id, JobDeed.HandedOut, now);
            }
            return new Outcome.Done(jobs[0].Id);
        });
    }

    private const string IsTheirsSql = "SELECT EXISTS (SELECT 1 FROM client WHERE id = @ClientId AND (id = @Client OR payer_id = @Payer))";

    private static Refusal? WhyNot(JobRow job, PickUpEntry input, DateOnly today) =>
        job.State != JobState.Strung
            ? JobMovedOn.Of(job) with { Field = PickUpEntry.Place(job.Id) }
            : new JobDays { StrungOn = job.ReadyOn, CollectedOn = input.CollectedOn }.Faults(today).FirstOrDefault();

    private static Refusal? Pay(SqliteConnection connection, List<JobRow> jobs, PickUpEntry input, Who who, (DateTimeOffset Now, DateOnly Today) at) =>
        jobs.Where(job => job.PaidOn is null).Select(job => ShareStore.Of(connection, job.Id)!).ToList() is { Count: > 0 } unpaid && input.Payment is { } payment
            ? PaymentLineStore.PayTogether(connection, unpaid, payment, who, at)
            : null;
}
