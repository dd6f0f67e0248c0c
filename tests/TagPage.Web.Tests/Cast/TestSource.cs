using System.Net;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Web.Http;

namespace TagPage.Web.Tests.Cast;

/// <summary>The test server has no network; a header of the test's choice says where a request seems to come from.</summary>
public sealed class TestSource : IStartupFilter
{
    public const string Header = "X-Test-Source";

    /// <summary>From a range kept for documentation (RFC 5737).</summary>
    public const string Usual = "203.0.113.7";

    public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
    {
        app.Use((context, rest) =>
        {
            var chosen = context.Request.Headers[Header].ToString();
            context.Connection.RemoteIpAddress = IPAddress.Parse(chosen.Length > 0 ? chosen : Usual);
            // Who is signed in by a header is seen by its cookie too, as the browser would send it.
            if (context.Request.Headers.ContainsKey(TestSignIn.Header))
                context.Request.Headers.Append("Cookie", context.RequestServices.GetRequiredService<CookieRules>().Name(CookieRules.Shop) + "=test");
            return rest(context);
        });
        next(app);
    };
}
