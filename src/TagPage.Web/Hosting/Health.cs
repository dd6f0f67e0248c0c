using Microsoft.AspNetCore.Diagnostics.HealthChecks;
using Microsoft.Extensions.Diagnostics.HealthChecks;
using TagPage.Web.Data;

namespace TagPage.Web.Hosting;

internal static class Health
{
    /// <summary>/healthz/live touches no database; /healthz/ready reads it and its schema. Neither tells more than a word.</summary>
    public static void MapHealth(this WebApplication app)
    {
        var looking = new HttpMethodMetadata([HttpMethods.Get, HttpMethods.Head]);
        app.MapHealthChecks("/healthz/live", new HealthCheckOptions { Predicate = _ => false }).WithMetadata(looking).AllowAnonymous();
        app.MapHealthChecks("/healthz/ready").WithMetadata(looking).AllowAnonymous();
    }
}

internal sealed class DatabaseCheck(Migrator migrator) : IHealthCheck
{
    public Task<HealthCheckResult> CheckHealthAsync(HealthCheckContext context, CancellationToken cancellationToken = default) =>
        Task.FromResult(migrator.IsCurrent ? HealthCheckResult.Healthy() : HealthCheckResult.Unhealthy());
}
