using Microsoft.AspNetCore.Authentication.Cookies;
using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Http.SignIn.Passwords;

namespace TagPage.Web.Start;

internal static class SignInServices
{
    /// <summary>OWASP asks for this many rounds of PBKDF2 with SHA-256; Identity's SHA-512 makes each of them more expensive.</summary>
    public const int HashRounds = 600_000;

    private static readonly TimeSpan Idle = TimeSpan.FromDays(14);

    /// <summary>
    /// ASP.NET Core Identity on our own store. Its account lockout stays off, since it would let anybody lock the
    /// owner out; <see cref="SignInLimits"/> stands in.
    /// </summary>
    public static void AddSignIn(this IServiceCollection services, CookieRules cookies)
    {
        services.AddSingleton<SignInLimits>();
        services.AddSingleton<PasswordGate>();
        services.AddSingleton<KnownDevice>();
        services.AddSingleton<DecoyHash>();
        services.AddScoped<SessionCookie>();
        services.AddScoped<SignIns>();
        services.AddScoped<PasswordAsked>();
        services.AddScoped<Owners>();
        services.AddHostedService<SetUpLink>();
        services.AddScoped<IUserStore<Account>, IdentityAccounts>();
        services.AddIdentityCore<Account>(SetRules)
            .AddPasswordValidator<CommonPassword>()
            .AddErrorDescriber<PasswordWords>()
            .AddSignInManager();
        services.Configure<PasswordHasherOptions>(o => o.IterationCount = HashRounds);
        services.AddAuthentication(IdentityConstants.ApplicationScheme).AddApplicationCookie();
        services.Configure<CookieAuthenticationOptions>(IdentityConstants.ApplicationScheme, o => SetCookie(o, cookies));
    }

    private static void SetRules(IdentityOptions options)
    {
        options.User.AllowedUserNameCharacters = "";
        options.Password.RequiredLength = AccountLimits.ShortestPassword;
        options.Password.RequireDigit = false;
        options.Password.RequireLowercase = false;
        options.Password.RequireUppercase = false;
        options.Password.RequireNonAlphanumeric = false;
    }

    private static void SetCookie(CookieAuthenticationOptions options, CookieRules cookies)
    {
        cookies.Apply(options.Cookie, CookieRules.Shop);
        if (cookies.AlwaysSecure)
            options.Cookie.SecurePolicy = CookieSecurePolicy.Always;
        options.ExpireTimeSpan = Idle;
        options.SlidingExpiration = true;
        options.EventsType = typeof(SessionCookie);
    }
}
