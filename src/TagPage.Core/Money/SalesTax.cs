namespace TagPage.Core.Money;

/// <summary>What the tax within a price is called: value added tax, Japan's consumption tax, or just tax.</summary>
public enum SalesTax { Tax, Vat, Consumption }

public static class SalesTaxes
{
    /// <summary>
    /// The member states of the Union, whose tax is that of Directive 2006/112/EC; and the United Kingdom (Value Added Tax Act 1994),
    /// Switzerland with Liechtenstein (Mehrwertsteuergesetz), Norway and Iceland, from memory. Everywhere else the name differs too
    /// much to be guessed.
    /// </summary>
    private const string WithVat = "AT BE BG CY CZ DE DK EE ES FI FR GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK GB CH LI NO IS";

    /// <param name="country">ISO 3166-1 alpha-2; empty where it is not known.</param>
    public static SalesTax Of(string country) => country switch
    {
        "JP" => SalesTax.Consumption,
        { Length: 2 } when WithVat.Split(' ').Contains(country) => SalesTax.Vat,
        _ => SalesTax.Tax,
    };
}
