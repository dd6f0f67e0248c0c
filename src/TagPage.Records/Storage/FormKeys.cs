using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>Remembers which form made which record, so that a form sent twice makes one.</summary>
public static class FormKeys
{
    /// <summary>Characters of a form key; what is shorter or longer was never given out.</summary>
    public const int KeyLength = 32;

    /// <summary>Runs <paramref name="make"/> once per form key, in the caller's write transaction; later calls get the first id.</summary>
    public static long Once(SqliteConnection connection, string formKey, DateTimeOffset now, Func<long> make)
    {
        if (connection.ExecuteScalar<long?>(MadeSql, new { FormKey = formKey }) is { } madeBefore)
            return madeBefore;
        connection.Execute(ForgetSql, new { Before = now.AddDays(-30) });
        var id = make();
        connection.Execute(KeepSql, new { FormKey = formKey, Id = id, Now = now });
        return id;
    }

    /// <summary>
    /// The same for a write that may be refused: sent again, a form that made its record is answered with it before
    /// any check could trip over that very record. What was refused can be sent again. A key is answered only to whoever
    /// sent it first; ask before whether they may.
    /// </summary>
    public static Outcome Once(SqliteConnection connection, Who who, string? formKey, DateTimeOffset now, Func<Outcome> make)
    {
        if (formKey is not { Length: KeyLength })
            return new Outcome.Refused(new FormKeyUnknown());
        formKey = Of(who, formKey);
        if (connection.ExecuteScalar<long?>(MadeSql, new { FormKey = formKey }) is { } madeBefore)
            return new Outcome.Done(madeBefore);
        connection.Execute(ForgetSql, new { Before = now.AddDays(-30) });
        var outcome = make();
        if (outcome is Outcome.Done done)
            connection.Execute(KeepSql, new { FormKey = formKey, done.Id, Now = now });
        return outcome;
    }

    private static string Of(Who who, string formKey) =>
        who.IsShop ? formKey : who.EventId is { } desk ? $"{formKey} desk {desk}" : $"{formKey} {who.ClientId}";

    /// <summary>What a form that the same sender sent before has made.</summary>
    internal static long? Made(SqliteConnection connection, Who who, string formKey) => connection.ExecuteScalar<long?>(MadeSql, new { FormKey = Of(who, formKey) });

    /// <summary>Whether the shop sent this form before, so that there is nothing left to ask about it.</summary>
    internal static bool IsUsed(SqliteConnection connection, string formKey) => connection.ExecuteScalar<long?>(MadeSql, new { FormKey = formKey }) is not null;

    private const string MadeSql = "SELECT made_id FROM used_form_key WHERE form_key = @FormKey";

    private const string ForgetSql = "DELETE FROM used_form_key WHERE made_at < @Before";

    private const string KeepSql = "INSERT INTO used_form_key (form_key, made_id, made_at) VALUES (@FormKey, @Id, @Now)";
}
