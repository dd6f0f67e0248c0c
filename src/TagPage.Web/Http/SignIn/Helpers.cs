using System.Security.Cryptography;
using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Http.SignIn;

/// <summary>Makes the accounts of helpers, and the links with which they choose their passwords.</summary>
public sealed class Helpers(Owners owners, UserManager<Account> users, InvitationStore invitations, AccountMails mails, ShopStore shops, PublicAddress address)
{
    public string Normal(string name) => users.NormalizeName(name)!;

    /// <summary>Done carries the invitation. Until its link was used nobody knows the password.</summary>
    public Outcome Invite(Who who, string name, string? mail, string formKey)
    {
        var account = new Account { Name = name, NormalizedName = Normal(name), Role = Roles.Bench, Mail = mail };
        owners.SetPassword(account, RandomNumberGenerator.GetHexString(64));
        return invitations.Invite(who, account, formKey, id => mails.Invitation(name, id));
    }

    public Outcome Renew(Who who, PersonRow person) => invitations.Renew(who, person.Id, id => mails.Invitation(person.Name, id));

    public InvitationLink Link(Who who, long invitation, string name, string? mail) => new(
        name, invitations.Token(who, invitation) is { } token ? address.Of(InvitationLink.Path(token)) : null, shops.Get().Mail is null ? null : mail);
}
