using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

public sealed partial class IdentityAccounts : IUserPasskeyStore<Account>
{
    public Task AddOrUpdatePasskeyAsync(Account user, UserPasskeyInfo passkey, CancellationToken cancellationToken)
    {
        passkeys.Save(user.Id, new PasskeyRow
        {
            Id = passkey.CredentialId,
            Name = passkey.Name ?? "",
            PublicKey = passkey.PublicKey,
            SignCount = passkey.SignCount,
            Transports = string.Join(' ', passkey.Transports ?? []),
            UserVerified = passkey.IsUserVerified,
            BackupEligible = passkey.IsBackupEligible,
            BackedUp = passkey.IsBackedUp,
            Attestation = passkey.AttestationObject,
            ClientData = passkey.ClientDataJson,
            MadeAt = passkey.CreatedAt,
        });
        return Task.CompletedTask;
    }

    public Task<IList<UserPasskeyInfo>> GetPasskeysAsync(Account user, CancellationToken cancellationToken) =>
        Task.FromResult<IList<UserPasskeyInfo>>([.. passkeys.Of(user.Id).Select(Info)]);

    public Task<Account?> FindByPasskeyIdAsync(byte[] credentialId, CancellationToken cancellationToken) =>
        Task.FromResult(passkeys.AccountOf(credentialId) is { } id ? accounts.Get(id) : null);

    public Task<UserPasskeyInfo?> FindPasskeyAsync(Account user, byte[] credentialId, CancellationToken cancellationToken) =>
        Task.FromResult(passkeys.Of(user.Id).FirstOrDefault(row => row.Id.AsSpan().SequenceEqual(credentialId)) is { } row ? Info(row) : null);

    public Task RemovePasskeyAsync(Account user, byte[] credentialId, CancellationToken cancellationToken)
    {
        passkeys.Remove(user.Id, credentialId);
        return Task.CompletedTask;
    }

    private static UserPasskeyInfo Info(PasskeyRow row) => new(
        row.Id, row.PublicKey, row.MadeAt, (uint)row.SignCount, row.Transports.Split(' ', StringSplitOptions.RemoveEmptyEntries),
        row.UserVerified, row.BackupEligible, row.BackedUp, row.Attestation, row.ClientData)
    {
        Name = row.Name,
    };
}
