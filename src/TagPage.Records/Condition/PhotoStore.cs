using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Deeds;
using TagPage.Records.Storage;

namespace TagPage.Records.Condition;

/// <summary>Photos of rackets as they came in. The shop alone sees them.</summary>
public sealed class PhotoStore(Database database, TimeProvider clock)
{
    /// <summary>No ticket holds more.</summary>
    public const int MostOfJob = 12;

    public PhotoRow? Get(Who who, long id) => database.Read(c => Get(c, who, id));

    private static PhotoRow? Get(SqliteConnection connection, Who who, long id) => connection.QuerySingleOrDefault<PhotoRow>($"{Select} WHERE p.id = @id AND @IsShop", new { id, who.IsShop });

    private const string Select = "SELECT p.id, p.job_id, j.ticket, p.made_at, p.width, p.height FROM photo p JOIN job j ON j.id = p.job_id";

    internal static IReadOnlyList<PhotoRow> OfJob(SqliteConnection connection, long job) =>
        connection.Query<PhotoRow>($"{Select} WHERE p.job_id = @job ORDER BY p.id", new { job }).AsList();

    /// <summary>The JPEG itself.</summary>
    public byte[]? Picture(Who who, long id) => database.Read(c => c.QuerySingleOrDefault<byte[]>("SELECT picture FROM photo WHERE id = @id AND @IsShop", new { id, who.IsShop }));

    /// <summary>The same for lists.</summary>
    public byte[]? Small(Who who, long id) => database.Read(c => c.QuerySingleOrDefault<byte[]>("SELECT small FROM photo WHERE id = @id AND @IsShop", new { id, who.IsShop }));

    /// <summary>All of them or, where there is no room, none; once per form key.</summary>
    public Outcome Add(Who who, long job, string formKey, IReadOnlyList<PhotoEntry> photos)
    {
        var now = clock.GetUtcNow();
        return database.WriteOnceAsShop(who, formKey, now, c => !ConditionStore.HasJob(c, job) ? new Outcome.Absent() : Add(c, who, job, photos, now));
    }

    /// <summary>In somebody's transaction, who makes sure that the job is there.</summary>
    internal static Outcome Add(SqliteConnection connection, Who who, long job, IReadOnlyList<PhotoEntry> photos, DateTimeOffset now)
    {
        var room = MostOfJob - connection.ExecuteScalar<int>("SELECT COUNT(*) FROM photo WHERE job_id = @job", new { job });
        if (photos.Count > room)
            return new Outcome.Refused(new TooManyPhotos(MostOfJob, Math.Max(0, room)));
        foreach (var photo in photos)
        {
            connection.Execute(AddSql, new { job, now, photo.Width, photo.Height, photo.Small, photo.Picture });
            JobDeedStore.Note(connection, who, job, JobDeed.Photographed, now);
        }
        return new Outcome.Done(job);
    }

    private const string AddSql = "INSERT INTO photo (job_id, made_at, width, height, small, picture) VALUES (@job, @now, @Width, @Height, @Small, @Picture)";

    /// <summary>Its bytes are overwritten. Done tells the job.</summary>
    public Outcome Remove(Who who, long id)
    {
        var now = clock.GetUtcNow();
        return database.WriteAsShop(who, c =>
        {
            if (Get(c, who, id) is not { } photo)
                return new Outcome.Absent();
            c.Execute("DELETE FROM photo WHERE id = @id", new { id });
            JobDeedStore.Note(c, who, photo.JobId, JobDeed.PhotoRemoved, now);
            return new Outcome.Done(photo.JobId);
        });
    }
}
