using TagPage.Records.Shop;

namespace TagPage.Web.Words;

/// <summary>What an address said when the program called it, and what to do.</summary>
public static class AddressWords
{
    public static string Finding(AddressAnswer answer) => answer switch
    {
        AddressAnswer.ThisProgram => "It answers, and it is this program.",
        AddressAnswer.AnotherProgram => "Something answers there, but it is not this program.",
        AddressAnswer.Redirected => "It sends visitors on to another address.",
        AddressAnswer.UnknownName => "No such name exists yet.",
        AddressAnswer.NotTrusted => "Its https certificate is not trusted, so phones would show a warning.",
        AddressAnswer.TooSlow => "It did not answer in time.",
        _ => "Nothing answers there, as far as this machine can see.",
    };

    public static string Advice(AddressAnswer answer) => answer switch
    {
        AddressAnswer.Redirected => "Enter that one, or tick below to use it anyway.",
        AddressAnswer.UnknownName => "Check the spelling, or tick below to use it before it works.",
        AddressAnswer.NotTrusted => "Put that right first, or tick below to use it anyway.",
        AddressAnswer.TooSlow => "Try again, or tick below to use it anyway.",
        _ => "Make the address lead here first, or tick below to use it anyway.",
    };
}
