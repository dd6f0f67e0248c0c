using Microsoft.AspNetCore.Identity;
using TagPage.Records.Accounts;
using TagPage.Records.Audit;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Http.SignIn;

/// <summary>Changing over by PIN on a shared tablet. A PIN is weak: it signs in to the bench alone, there alone, and for hours.</summary>
public sealed class Pins(PinStore pins, AccountStore accounts, IPasswordHasher<Account> hasher, PasswordGate gate, SignIns signIns, SecurityLog log)
{
    public const int Shortest = 4, Longest = 8;

    /// <summary>What is wrong with a PIN, as a sentence; null if it will do.</summary>
    public static string? WrongWith(string pin) =>
        pin.Length is < Shortest or > Longest || !pin.All(char.IsAsciiDigit) ? "Enter 4 to 8 digits."
        : IsRow(pin) ? "This PIN is easy to guess. Do not use the same digit throughout, or digits in a row."
        : null;

    private static bool IsRow(string pin) => pin.Zip(pin.Skip(1), (one, next) => next - one).Distinct().ToList() is [0 or 1 or -1];

    public void Set(Account account, string pin) => pins.Set(account.Id, hasher.HashPassword(account, pin));

    /// <summary>Changes over to somebody; else what to answer.</summary>
    public async Task<string?> Change(HttpContext context, TabletRow tablet, string id, string pin)
    {
        if (id.Length == 0)
            return "Type your PIN, then press your name.";
        using var turn = await gate.Enter(isKnown: true, context.RequestAborted);
        if (turn is null)
            return SignIns.Busy;
        if (accounts.Get(id) is not { } account || pins.Take(tablet.Id, id) is not { } may)
            return Wrong;
        if (may.IsLocked)
            return Locked;
        if (may.Wait > TimeSpan.Zero)
            return $"Wait {Math.Ceiling(may.Wait.TotalSeconds):0} seconds, then try again.";
        if (hasher.VerifyHashedPassword(account, may.Hash!, pin) == PasswordVerificationResult.Failed)
        {
            log.Note(context, AuditEvent.PinWrong, id, tablet.Name);
            return Wrong;
        }
        pins.Forgive(tablet.Id, id);
        if (may.OwesSecondStep)
            return SecondStepFirst;
        await signIns.ChangeOver(context, account, tablet);
        return null;
    }

    private const string Wrong = "This is not the PIN. Type it again and press your name.";

    private const string SecondStepFirst = "The shop wants more than a password from helpers. Sign in with your password here and set up codes or a passkey; then the PIN works.";

    private const string Locked = "Too many wrong PINs. Sign in with your password here; then the PIN works again.";
}
