using TagPage.Records.Outbox;
using TagPage.Records.Reminders;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

namespace TagPage.Records.Tests.Reminders;

/// <summary>What Odalys answers about Pim's racket. She may think again, and then only the last answer counts.</summary>
public sealed class AnswerStoreTests : IDisposable
{
    private readonly Street _street = new();

    public void Dispose() => _street.Dispose();

    /// <summary>All that an answer can do, as it stands afterwards; what was cancelled is over.</summary>
    private const string OutcomeSql = """
        SELECT r.state || '|' || COALESCE(r.not_before, '') || '|' || COALESCE(r.elsewhere_on, '')
               || '|' || (SELECT COALESCE(ended_on, '') || COALESCE(ended_how, '') FROM job WHERE id = 1)
               || '|' || COALESCE((SELECT group_concat(j.state || ':' || q.asked_words) FROM job j JOIN job_request q ON q.job_id = j.id WHERE j.state <> 'Cancelled'), '')
        FROM racket r
        """;

    private static RacketAnswer Answer(int kind) => kind switch
    {
        0 => new(1, AnswerKind.Same),
        1 => new(1, AnswerKind.Different) { Strings = "something softer", Tension = "two less" },
        2 => new(1, AnswerKind.NotYet) { Weeks = 3 },
        3 => new(1, AnswerKind.Elsewhere) { ElsewhereOn = new(2026, 11, 20) },
        4 => new(1, AnswerKind.Elsewhere) { ElsewhereOn = new(2026, 11, 18) },
        _ => new(1, AnswerKind.Gone),
    };

    [Theory]
    [InlineData(0, "InTurn||||Waiting:")]
    [InlineData(1, "InTurn||||Waiting:strings: something softer\ntension: two less")]
    [InlineData(2, "InTurn|2026-12-16|||")]
    [InlineData(3, "InTurn||2026-11-20|2026-11-20Unknown|")]
    [InlineData(5, "Gone||||")]
    public void Answer_does_what_it_says(int kind, string outcome)
    {
        Assert.Empty(Save(_street, Remind(_street), Answer(kind)));

        Assert.Equal(outcome, _street.Records.Text(OutcomeSql));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Last_answer_counts_as_if_no_other_had_been_given(int seed)
    {
        var random = new Random(seed);
        var (reminder, last) = (Remind(_street), 0);
        for (var n = 0; n < 12; n++)
        {
            last = random.Next(6);
            Assert.Empty(Save(_street, reminder, Answer(last)));

            using var other = new Street();
            Save(other, Remind(other), Answer(last));
            Assert.Equal($"{n}, {Answer(last).Kind}: {other.Records.Text(OutcomeSql)}", $"{n}, {Answer(last).Kind}: {_street.Records.Text(OutcomeSql)}");
        }
    }

    /// <summary>Told by phone, or by the link of a text message, while the email waited for its hour.</summary>
    [Theory]
    [InlineData("Queued", "Failed|It was answered before this email left.")]
    [InlineData("Leaving", "Leaving|")]
    [InlineData("Sent", "Sent|")]
    public void Household_that_has_answered_is_not_mailed_the_question_any_more(string state, string becomes)
    {
        var reminder = Remind(_street);
        var outbox = new OutboxStore(_street.Database, _street.Time);
        _street.Database.Write(c => outbox.Queue(c, new NewMail(MailKind.Reminder, _street.Odalys, "due", "due") { ReminderId = reminder }));
        _street.Records.Change("UPDATE outbox SET state = @state, sent_at = CASE @state WHEN 'Sent' THEN made_at END", new { state });

        Assert.Empty(Save(_street, reminder, Answer(2)));

        Assert.Equal(becomes, _street.Records.Text("SELECT state || '|' || last_error FROM outbox"));
    }

    [Fact]
    public void Answer_saved_again_unchanged_does_nothing()
    {
        var reminder = Remind(_street);
        for (var kind = 0; kind < 6; kind++)
        {
            Save(_street, reminder, Answer(kind));
            var before = _street.Database.Dump();
            _street.Time.Advance(TimeSpan.FromMinutes(1));

            Save(_street, reminder, Answer(kind));

            Assert.Equal(before, _street.Database.Dump());
        }
    }

    [Theory]
    [InlineData("UPDATE job SET state = 'OnMachine' WHERE state = 'Waiting'")]
    [InlineData("UPDATE job SET state = 'Strung', strung_on = '2026-11-25' WHERE state = 'Waiting'")]
    public void Racket_that_is_being_strung_is_answered_for_no_more_and_nothing_is_saved(string meanwhile)
    {
        var reminder = Remind(_street);
        Save(_street, reminder, Answer(0));
        _street.Records.Change(meanwhile);
        var before = _street.Database.Dump();

        Assert.Equal([_street.Racket], Save(_street, reminder, Answer(5), reminders: false));

        Assert.Equal(before, _street.Database.Dump());
    }

    [Fact]
    public void Racket_of_somebody_else_is_not_reached_through_a_reminder()
    {
        var reminder = Remind(_street);
        var ewans = _street.Records.Racket(_street.Records.Player(_street.Ewan, "Bo Lockyer"));
        var before = _street.Database.Dump();

        Assert.Empty(Save(_street, reminder, new RacketAnswer(ewans, AnswerKind.Gone)));

        Assert.Equal(before, _street.Database.Dump());
    }

    [Fact]
    public void Whoever_wants_no_more_reminders_gets_not_even_those_that_wait()
    {
        var reminder = Remind(_street);
        var outbox = new OutboxStore(_street.Database, _street.Time);
        foreach (var client in new[] { _street.Odalys, _street.Ewan })
            _street.Database.Write(c => outbox.Queue(c, new NewMail(MailKind.Reminder, client, "due", "due") { ReminderId = reminder }));
        _street.Database.Write(c => outbox.Queue(c, new NewMail(MailKind.ClientNotice, _street.Odalys, "ready", "ready")));

        new AnswerStore(_street.Database, _street.Clock).Stop(Who.Client(_street.Odalys), _street.Odalys);

        Assert.Equal("Failed, Queued, Queued", _street.Records.Text("SELECT group_concat(state, ', ' ORDER BY id) FROM outbox"));
        Assert.Equal("0|2026-11-25", _street.Records.Text("SELECT reminders || '|' || reminders_changed_on FROM client WHERE id = 1"));
        Assert.Equal(1, _street.Records.Count("client", "reminders = 1"));
    }

    private static long Remind(Street street) => street.Records.Reminder(street.Odalys, street.Racket);

    private static IReadOnlyList<long> Save(Street street, long reminder, RacketAnswer answer, bool? reminders = null)
    {
        var row = new ReminderStore(street.Database, new LinkTokens(street.Folder), street.Clock).Get(reminder)!;
        return new AnswerStore(street.Database, street.Clock).Save(Who.Client(street.Odalys), row, new AnswerStore.Given([answer], reminders))
            is Outcome.Refused { Why: AnswersShut shut } ? shut.Rackets : [];
    }
}
