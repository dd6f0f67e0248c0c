namespace TagPage.Web.Words;

/// <summary>Minor units of currencies after ISO 4217, where they are not two.</summary>
public static class Currencies
{
    private static readonly string[] None = ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];
    private static readonly string[] Three = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    public static int Places(string currency) => None.Contains(currency) ? 0 : Three.Contains(currency) ? 3 : 2;
}
