using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Import;

internal static class ImportedShop
{
    /// <summary>A shop that is set up and has no records yet.</summary>
    public static void SetUp(TestShop shop) => shop.Database.Write(c => c.Execute("""
        INSERT OR IGNORE INTO shop (id, name, country, time_zone, currency, tension_unit)
        VALUES (1, 'Test Bench', 'GB', 'Europe/London', 'GBP', 'Lb')
        """));
}
