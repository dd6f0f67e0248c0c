using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>Makes owner accounts, with the same rules for everybody who makes one.</summary>
public sealed class Owners(UserManager<Account> users, IPasswordHasher<Account> hasher, AccountStore accounts)
{
    /// <summary>What is wrong with a password for this name, as sentences; none if it is acceptable.</summary>
    public async Task<IReadOnlyList<string>> WrongWith(string name, string password)
    {
        var sentences = new List<string>();
        foreach (var rule in users.PasswordValidators)
            sentences.AddRange((await rule.ValidateAsync(users, new Account { Name = name }, password)).Errors.Select(e => e.Description));
        return sentences;
    }

    /// <summary>Whether a password will do for this name; what is wrong with it is put beside its field.</summary>
    public async Task<bool> WillDo(ModelStateDictionary form, string field, string name, string password)
    {
        var wrong = await WrongWith(name, password);
        foreach (var sentence in wrong)
            form.AddModelError(field, sentence);
        return wrong.Count == 0;
    }

    /// <summary>An account ready to be stored, its password hashed. The caller has asked <see cref="WrongWith"/>.</summary>
    public Account Make(string name, string password)
    {
        var account = new Account { Name = name, NormalizedName = users.NormalizeName(name)! };
        SetPassword(account, password);
        return account;
    }

    /// <summary>Hashes the password and draws new stamps, which end the sessions begun before. The caller has asked <see cref="WrongWith"/> and stores it.</summary>
    public void SetPassword(Account account, string password)
    {
        account.PasswordHash = hasher.HashPassword(account, password);
        account.SecurityStamp = Guid.NewGuid().ToString("N");
        account.ConcurrencyStamp = Guid.NewGuid().ToString("N");
    }

    /// <summary>Makes and stores an owner's account in one go.</summary>
    /// <exception cref="ArgumentException">The password breaks a rule.</exception>
    public async Task Add(string name, string password)
    {
        if (await WrongWith(name, password) is [var first, ..])
            throw new ArgumentException(first, nameof(password));
        accounts.Add(Make(name, password));
    }
}
