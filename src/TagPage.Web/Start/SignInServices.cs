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
        services.AddSingleton<CodeLimits>();
        services.AddSingleton<UsedAnswers>();
        services.AddSingleton<SealedNotes>();
        services.AddSingleton<AuthenticatorKeys>();
        services.AddSingleton<KnownDevice>();
        services.AddSingleton<HalfWay>();
        services.AddSingleton<AccountMails>();
        services.AddSingleton<DecoyHash>();
        services.AddScoped<SessionCookie>();
        services.AddScoped<SignIns>();
        services.AddScoped<SecondFactor>();
        services.AddScoped<PasskeySignIn>();
        services.AddScoped<PasswordAsked>();
        services.AddScoped<Owners>();
        services.AddScoped<Helpers>();
        services.AddSingleton<SharedTablet>();
        services.AddScoped<Pins>();
        services.AddHostedService<SetUpLink>();
        services.AddScoped<IUserStore<Account>, IdentityAccounts>();
        services.AddIdentityCore<Account>(SetRules)
            .AddPasswordValidator<CommonPassword>()
            .AddErrorDescriber<PasswordWords>()
            .AddTokenProvider<AppCodes>(TokenOptions.DefaultAuthenticatorProvider)
            .AddSignInManager();
        services.Configure<PasswordHasherOptions>(o => o.IterationCount = HashRounds);
        services.Configure<IdentityPasskeyOptions>(SetPasskeys);
        var authentication = services.AddAuthentication(IdentityConstants.ApplicationScheme);
        authentication.AddApplicationCookie();
        authentication.AddCookie(IdentityConstants.TwoFactorUserIdScheme, o => SetPasskeyCookie(o, cookies));
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

    /// <summary>The device asks for a finger, a face or a PIN, and knows by itself whose passkey is for this shop: no name is typed.</summary>
    private static void SetPasskeys(IdentityPasskeyOptions options)
    {
        (options.UserVerificationRequirement, options.ResidentKeyRequirement) = ("required", "required");
        // Identity's own check looks at a header that browsers leave empty where a page wants no referrer sent, as all of ours do.
        options.ValidateOrigin = context =>
            ValueTask.FromResult(!context.CrossOrigin && context.Origin == $"{context.HttpContext.Request.Scheme}://{context.HttpContext.Request.Host}");
    }

    /// <summary>Identity keeps in it what a passkey has to answer to.</summary>
    private static void SetPasskeyCookie(CookieAuthenticationOptions options, CookieRules cookies)
    {
        cookies.Apply(options.Cookie, "passkey");
        if (cookies.AlwaysSecure)
            options.Cookie.SecurePolicy = CookieSecurePolicy.Always;
        options.ExpireTimeSpan = TimeSpan.FromMinutes(5);
        options.SlidingExpiration = false;
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
