using System.Data.Common;
using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using TagPage.Records.Storage;

namespace TagPage.Web.Http;

internal static class Health
{
    /// <summary>
    /// /healthz/live touches no database; /healthz/ready reads it and its schema, tells whether it was sound when last
    /// looked through, and whether it can be written. Neither tells more than a word. /healthz/this is how the program knows
    /// itself again: see <see cref="AddressCheck"/>.
    /// </summary>
    public static void MapHealth(this WebApplication app)
    {
        var looking = new HttpMethodMetadata([HttpMethods.Get, HttpMethods.Head]);
        app.MapHealthChecks("/healthz/live", new HealthCheckOptions { Predicate = _ => false }).WithMetadata(looking).AllowAnonymous();
        app.MapHealthChecks("/healthz/ready").WithMetadata(looking).AllowAnonymous();
        app.MapGet("/healthz/this", (string? ask, AddressCheck check) => check.Proof(ask) is { } proof ? Results.Text(proof) : Results.NotFound()).AllowAnonymous();
    }

    public static void AddHealth(this IServiceCollection services)
    {
        services.AddSingleton<DatabaseCheck>();
        services.AddHostedService(provider => provider.GetRequiredService<DatabaseCheck>());
        services.AddSingleton<WriteProbe>();
        services.AddHealthChecks().AddCheck<Readiness>("database");
    }
}

internal sealed class Readiness(Migrator migrator, DatabaseCheck check, WriteProbe probe) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(migrator.IsCurrent && check.IsSound && probe.Works() ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy());
}

/// <summary>Whether the database can be written: tested on request, but not again within seconds, since anybody may ask.</summary>
internal sealed class WriteProbe(Database database, TimeProvider clock, ILogger<WriteProbe> log)
{
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(10);

    private readonly Lock _one = new();
    private DateTimeOffset _tried = DateTimeOffset.MinValue;
    private bool _works;

    public bool Works()
    {
        lock (_one)
        {
            if (clock.GetUtcNow() - _tried >= Rest)
                (_works, _tried) = (Try(), clock.GetUtcNow());
            return _works;
        }
    }

    private bool Try()
    {
        try
        {
            database.TryWriting();
            return true;
        }
        catch (DbException e)
        {
            log.LogError(e, "The database cannot be written.");
            return false;
        }
    }
}
