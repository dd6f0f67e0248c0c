using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Core.EventDesk;
using TagPage.Core.Sports;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Records.Events;

/// <summary>What taking a racket in and changing what was said about it have in common.</summary>
internal static class IntakeRules
{
    public static Refusal? WhyNot(SqliteConnection connection, EventRow desk, IntakeEntry input)
    {
        foreach (var (field, time) in new[] { (nameof(input.NeededBy), input.NeededBy), (nameof(input.NotBefore), input.NotBefore) })
        {
            if (time is { } at && (DateOnly.FromDateTime(at) < desk.FromOn || DateOnly.FromDateTime(at) > desk.ToOn.AddDays(1)))
                return new NotAtTheEvent(field);
        }
        return input.KeptFor is { } kept && !connection.ExecuteScalar<bool>(HasTechnicianSql, new { kept, desk.Id }) ? new TechnicianNotThere(nameof(input.KeptFor)) : null;
    }

    private const string HasTechnicianSql = "SELECT EXISTS (SELECT 1 FROM event_technician WHERE id = @kept AND event_id = @Id)";

    public static DateTime? Promise(Desk desk, DeskEntry planned, bool insist) =>
        insist && planned.NeededBy is { } wish ? wish : desk.PromiseFor(planned);

    public static DeskEntry Planned(IntakeEntry input, int number, Sport sport) => new(number, sport)
    {
        NeededBy = input.NeededBy,
        NotBefore = input.NotBefore,
        OnCourt = input.OnCourt,
        KeptFor = input.KeptFor,
        Minutes = input.Minutes,
    };

    /// <summary>As the event's price list has it; null where it has nothing.</summary>
    public static decimal? Price(EventRow desk, IntakeEntry input, ShopDetails shop) =>
        desk.PriceMinor(input.Order.MainsSuppliedBy, input.Order.CrossesSuppliedBy ?? input.Order.MainsSuppliedBy) is { } minor ? Currencies.ToAmount(minor, shop.Currency) : null;
}
