using TagPage.Records.Storage;

namespace TagPage.Records.Shop;

/// <summary>What an address says when the program calls it.</summary>
public enum AddressAnswer { ThisProgram, AnotherProgram, Redirected, UnknownName, NoConnection, NotTrusted, TooSlow }

/// <summary>It does not lead to this program, as far as that can be tried from here.</summary>
public sealed record AddressUnproven(AddressAnswer Answer) : Oddity(AddressEntry.Field);

/// <summary>Others could read along, and phones warn of it.</summary>
public sealed record AddressNotHttps() : Oddity(AddressEntry.Field);

/// <summary>Labels outlive any change of it.</summary>
public sealed record AddressForLife() : Oddity(AddressEntry.Field);

/// <summary>Tags carry the one before, which has to keep leading here.</summary>
public sealed record AddressChanges(string Old, int InUse, int Blank) : Oddity(AddressEntry.Field);

/// <summary>The form that chooses an address.</summary>
public static class AddressEntry
{
    public const string Field = "Address";
}
