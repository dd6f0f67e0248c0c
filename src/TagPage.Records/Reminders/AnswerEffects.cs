using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.Jobs;
using TagPage.Core.Rackets;
using TagPage.Records.Jobs;

namespace TagPage.Records.Reminders;

/// <summary>What an answer does to the racket and the bench, and how it is undone. In the caller's transaction.</summary>
internal sealed class AnswerEffects(SqliteConnection connection, DateOnly today, DateTimeOffset now)
{
    public void Change(long reminder, ReminderRacket racket, RacketAnswer answer, AnsweredBy by)
    {
        var keepsJob = IsYes(racket.Answer) && IsYes(answer.Kind) && racket.JobState == JobState.Waiting;
        if (!keepsJob)
            TakeBack(racket);
        var job = racket.JobId;
        if (keepsJob)
            RequestedJob.Reword(connection, job!.Value, answer.AskedWords);
        else
            job = Apply(racket, answer) ?? job;
        connection.Execute(KeepSql, new
        {
            reminder,
            racket.RacketId,
            Answer = answer.Kind.ToString(),
            Now = now,
            By = by.ToString(),
            answer.Weeks,
            answer.ElsewhereOn,
            answer.Strings,
            answer.Tension,
            answer.Note,
            job,
            StateBefore = answer.Kind == AnswerKind.Gone && racket.State != RacketState.Gone ? racket.State.ToString() : null,
            ElsewhereBefore = racket.Answer == AnswerKind.Elsewhere ? racket.ElsewhereBefore : racket.ElsewhereNow,
        });
    }

    private static bool IsYes(AnswerKind? kind) => kind is AnswerKind.Same or AnswerKind.Different;

    private const string KeepSql = """
        UPDATE reminder_racket
        SET answer = @Answer, answered_at = @Now, answered_by = @By, weeks = @Weeks, elsewhere_on = @ElsewhereOn,
            wish_strings = @Strings, wish_tension = @Tension, wish_note = @Note, job_id = @job, state_before = @StateBefore,
            elsewhere_before = @ElsewhereBefore
        WHERE reminder_id = @reminder AND racket_id = @RacketId
        """;

    private long? Apply(ReminderRacket racket, RacketAnswer answer)
    {
        switch (answer.Kind)
        {
            case AnswerKind.NotYet:
                connection.Execute(NotYetSql, new { racket.RacketId, Until = today.AddDays(7 * answer.Weeks!.Value) });
                return null;
            case AnswerKind.Elsewhere:
                connection.Execute(ElsewhereSql, new { racket.RacketId, answer.ElsewhereOn });
                if (BedStore.Current(connection, racket.RacketId) is { } bed)
                    BedStore.End(connection, bed.JobId, answer.ElsewhereOn!.Value, BedEnd.Unknown);
                return null;
            case AnswerKind.Gone:
                connection.Execute(GoneSql, new { racket.RacketId });
                return null;
            case var _ when racket.JobId is { } job && RequestedJob.AskAgain(connection, job, today, answer.AskedWords):
                return job;
            default:
                return RequestedJob.Make(connection, racket.RacketId, (now, today), new JobRequest(AskedIn.Reminder, answer.AskedWords));
        }
    }

    private const string NotYetSql = "UPDATE racket SET not_before = @Until, version = version + 1 WHERE id = @RacketId";

    private const string ElsewhereSql = """
        UPDATE racket SET elsewhere_on = @ElsewhereOn, version = version + 1 WHERE id = @RacketId
        """;

    private const string GoneSql = "UPDATE racket SET state = 'Gone', version = version + 1 WHERE id = @RacketId AND state <> 'Sold'";

    private void TakeBack(ReminderRacket racket)
    {
        switch (racket.Answer)
        {
            case AnswerKind.Same or AnswerKind.Different:
                connection.Execute(CancelSql, new { racket.JobId });
                break;
            case AnswerKind.NotYet:
                connection.Execute(AskAgainSql, new { racket.RacketId });
                break;
            case AnswerKind.Elsewhere:
                connection.Execute(NotElsewhereSql, new { racket.RacketId, racket.ElsewhereBefore, racket.AnsweredElsewhereOn });
                break;
            case AnswerKind.Gone when racket.StateBefore is { } before:
                connection.Execute(BackSql, new { racket.RacketId, State = before.ToString() });
                break;
        }
    }

    private const string CancelSql = "UPDATE job SET state = 'Cancelled', version = version + 1 WHERE id = @JobId AND state = 'Waiting'";

    private const string AskAgainSql = "UPDATE racket SET not_before = NULL, version = version + 1 WHERE id = @RacketId";

    private const string NotElsewhereSql = """
        UPDATE racket SET elsewhere_on = @ElsewhereBefore, version = version + 1 WHERE id = @RacketId;
        UPDATE job SET ended_on = NULL, ended_how = NULL, version = version + 1
        WHERE id = (SELECT job_id FROM bed WHERE racket_id = @RacketId) AND ended_on = @AnsweredElsewhereOn AND ended_how = 'Unknown';
        """;

    private const string BackSql = "UPDATE racket SET state = @State, version = version + 1 WHERE id = @RacketId AND state = 'Gone'";
}
