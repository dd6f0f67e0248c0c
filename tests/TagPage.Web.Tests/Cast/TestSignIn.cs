using System.Security.Claims;
using System.Text.Encodings.Web;
using Microsoft.AspNetCore.Authentication;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Options;

namespace TagPage.Web.Tests.Cast;

/// <summary>Signs a visitor in by a header, for tests that are not about signing in.</summary>
public sealed class TestSignIn(IOptionsMonitor<AuthenticationSchemeOptions> options, ILoggerFactory logger, UrlEncoder encoder)
    : AuthenticationHandler<AuthenticationSchemeOptions>(options, logger, encoder)
{
    public const string Header = "X-Test-Sign-In";

    private const string SchemeName = "Test";

    private const string Either = "TestOrReal";

    /// <summary>Without the header the real cookie decides.</summary>
    public static void Add(IServiceCollection services) =>
        services.AddAuthentication(o => o.DefaultAuthenticateScheme = Either)
            .AddScheme<AuthenticationSchemeOptions, TestSignIn>(SchemeName, null)
            .AddPolicyScheme(Either, null, o => o.ForwardDefaultSelector = context =>
                context.Request.Headers.ContainsKey(Header) ? SchemeName : IdentityConstants.ApplicationScheme);

    protected override Task<AuthenticateResult> HandleAuthenticateAsync()
    {
        if (!Request.Headers.TryGetValue(Header, out var role))
            return Task.FromResult(AuthenticateResult.NoResult());
        var identity = new ClaimsIdentity([new(ClaimTypes.Name, "test owner"), new(ClaimTypes.Role, role.ToString())], SchemeName);
        return Task.FromResult(AuthenticateResult.Success(new AuthenticationTicket(new ClaimsPrincipal(identity), SchemeName)));
    }
}
