using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using QRCoder;
using TagPage.Core.Money;

namespace TagPage.Labels.Papers;

/// <summary>Whose account is paid into, with the address in its parts: since November 2025 no other form is allowed.</summary>
public sealed partial record SwissPayee(string Iban, string Name, string Street, string House, string Zip, string Town, string Country)
{
    /// <summary>
    /// Null where no square can be made: another country's account, a town without its postcode, or an unknown country.
    /// </summary>
    /// <param name="iban">In capitals, without spaces.</param>
    /// <param name="name">Whose account it is.</param>
    /// <param name="street">With its number, if it has one.</param>
    /// <param name="town">“8004 Zürich”.</param>
    /// <param name="country">Two letters.</param>
    public static SwissPayee? Of(string iban, string name, string street, string town, string country)
    {
        if (!IsAccount(iban) || country.Length != 2 || TownOf().Match(town.Trim()) is not { Success: true } place)
            return null;
        var house = StreetOf().Match(street.Trim());
        return new SwissPayee(iban, Plain(name, 70), Plain(house.Success ? house.Groups["street"].Value : street, 70), house.Success ? Plain(house.Groups["house"].Value, 16) : "",
            place.Groups["zip"].Value, Plain(place.Groups["town"].Value, 35), country) is { Name.Length: > 0, Town.Length: > 0 } payee ? payee : null;
    }

    /// <summary>In Switzerland or Liechtenstein.</summary>
    public static bool IsAccount(string iban) => Account().IsMatch(iban);

    /// <summary>Its bank number lies between 30000 and 31999: it takes no payment without a <see cref="QrReference"/>.</summary>
    public static bool IsQrIban(string iban) => (iban[..2], iban[4..6]) is ("CH" or "LI", "30" or "31");

    /// <summary>In letters that every bank takes; others lose their accents, or become a full stop.</summary>
    internal static string Plain(string text, int most)
    {
        var line = string.Join(' ', text.Replace('’', '\'').Replace('–', '-').Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var plain = new StringBuilder();
        foreach (var rune in line.EnumerateRunes())
        {
            var letter = rune.ToString();
            var bare = Letters().IsMatch(letter) ? letter : string.Concat(letter.Normalize(NormalizationForm.FormD).Where(c => CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark));
            plain.Append(Letters().IsMatch(bare) ? bare : ".");
        }
        return plain.Length <= most ? plain.ToString() : plain.ToString(0, most).TrimEnd();
    }

    [GeneratedRegex("^(CH|LI)[0-9]{7}[0-9A-Z]{12}$")]
    private static partial Regex Account();

    [GeneratedRegex(@"^(?:[A-Z]{1,3}[- ])?(?<zip>[0-9]{4,5})\s+(?<town>\S.*)$")]
    private static partial Regex TownOf();

    [GeneratedRegex(@"^(?<street>\S.*?)\s+(?<house>[0-9]+\s?[A-Za-z]?)$")]
    private static partial Regex StreetOf();

    [GeneratedRegex(@"^[a-zA-Z0-9.,;:'+\-/()?*\[\]{}\\`´~ !""#%&<>÷=@_$£àáâäçèéêëìíîïñòóôöùúûüýßÀÁÂÄÇÈÉÊËÌÍÎÏÒÓÔÖÙÚÛÜÑ]+$")]
    private static partial Regex Letters();
}

/// <summary>What the square of a Swiss QR-bill holds, as QRCoder writes it: a reference for a QR-IBAN and no other, nobody named who pays.</summary>
internal static class SwissPayload
{
    public static string Of(SwissPayee payee, string currency, long cents, string text, string reference) => new PayloadGenerator.SwissQrCode(
        new PayloadGenerator.SwissQrCode.Iban(payee.Iban, IsQr(payee) ? PayloadGenerator.SwissQrCode.Iban.IbanType.QrIban : PayloadGenerator.SwissQrCode.Iban.IbanType.Iban),
        Enum.Parse<PayloadGenerator.SwissQrCode.Currency>(currency),
        PayloadGenerator.SwissQrCode.Contact.WithStructuredAddress(payee.Name, payee.Zip, payee.Town, payee.Country, payee.Street.Length > 0 ? payee.Street : null, payee.House.Length > 0 ? payee.House : null),
        IsQr(payee)
            ? new PayloadGenerator.SwissQrCode.Reference(PayloadGenerator.SwissQrCode.Reference.ReferenceType.QRR, reference, PayloadGenerator.SwissQrCode.Reference.ReferenceTextType.QrReference)
            : new PayloadGenerator.SwissQrCode.Reference(PayloadGenerator.SwissQrCode.Reference.ReferenceType.NON),
        new PayloadGenerator.SwissQrCode.AdditionalInformation(SwissPayee.Plain(text, 140)),
        amount: cents / 100m).ToString();

    private static bool IsQr(SwissPayee payee) => SwissPayee.IsQrIban(payee.Iban);
}
