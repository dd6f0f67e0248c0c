using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.Web.Tests.Cast;

/// <summary>Going back to a copy of the database, as after a bad day.</summary>
public static class Restoring
{
    public static string Copy(this TestShop shop)
    {
        var file = Path.Combine(shop.Folder, "backups", "by-hand.db");
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        shop.Database.CopyTo(file);
        return file;
    }

    public static void GoBackTo(this Database database, string copy) => database.Read(live =>
    {
        using var from = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = copy, Pooling = false }.ToString());
        from.Open();
        from.BackupDatabase(live);
        return 0;
    });
}
