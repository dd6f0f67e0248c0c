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
