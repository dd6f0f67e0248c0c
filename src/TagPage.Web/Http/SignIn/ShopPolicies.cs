using Microsoft.AspNetCore.Authorization;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>Who of the shop may open what. Whatever says nothing else is the owner's alone.</summary>
public static class ShopPolicies
{
    /// <summary>The owner and whoever helps at the bench.</summary>
    public const string Bench = "Bench";

    /// <summary>The same for what belongs to one's own sign-in, even while a second step is owed; not after a change-over by PIN.</summary>
    public const string OwnAccount = "OwnAccount";

    public static void AddShopPolicies(this AuthorizationBuilder builder) => builder
        .SetFallbackPolicy(new AuthorizationPolicyBuilder().RequireAuthenticatedUser().RequireRole(Roles.Owner).Build())
        .AddPolicy(Bench, p => p.RequireAuthenticatedUser().RequireRole(Roles.Owner, Roles.Bench).RequireAssertion(who => !who.User.OwesSecondStep()))
        .AddPolicy(OwnAccount, p => p.RequireAuthenticatedUser().RequireRole(Roles.Owner, Roles.Bench).RequireAssertion(who => !who.User.IsByPin()));
}
