using Microsoft.Data.Sqlite;

namespace TagPage.Records.Storage;

/// <summary>Writes that only the shop, or only its owner, may make; for everybody else there is nothing there.</summary>
internal static class ShopWrites
{
    public static Outcome WriteAsShop(this Database database, Who who, Func<SqliteConnection, Outcome> work) =>
        who.IsShop ? database.Write(work) : new Outcome.Absent();

    /// <summary>The same once per form key: the form sent again gets the first answer.</summary>
    public static Outcome WriteOnceAsShop(this Database database, Who who, string? formKey, DateTimeOffset now, Func<SqliteConnection, Outcome> make) =>
        database.WriteAsShop(who, c => FormKeys.Once(c, who, formKey, now, () => make(c)));

    public static Outcome WriteAsOwner(this Database database, Who who, Func<SqliteConnection, Outcome> work) =>
        who.IsOwner ? database.Write(work) : new Outcome.Absent();

    public static Outcome WriteOnceAsOwner(this Database database, Who who, string? formKey, DateTimeOffset now, Func<SqliteConnection, Outcome> make) =>
        database.WriteAsOwner(who, c => FormKeys.Once(c, who, formKey, now, () => make(c)));
}
