using TagPage.Core.Forecast;
using TagPage.Core.Jobs;
using TagPage.Core.Money;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Core.Units;
using TagPage.Records.Accounts;
using TagPage.Records.Clients;
using TagPage.Records.Deeds;
using TagPage.Records.Machines;
using TagPage.Records.Stops;

namespace TagPage.Web.Words;

/// <summary>The trade's words for its enumerations, as English pages write them.</summary>
public static class EnglishNames
{
    public static string Of(Material material) => Languages.English.Of(material);

    public static string Of(Sport sport) => Languages.English.Of(sport);

    public static string Of(SignInWay way) => way switch
    {
        SignInWay.Password => "password",
        SignInWay.AppCode => "password and a code",
        SignInWay.RecoveryCode => "password and a recovery code",
        SignInWay.Passkey => "passkey",
        SignInWay.Pin => "PIN",
        _ => "a one-time link",
    };

    public static string Of(RacketState state) => state switch
    {
        RacketState.InTurn => "played regularly",
        RacketState.Spare => "spare",
        RacketState.Resting => "resting",
        RacketState.Damaged => "damaged",
        RacketState.Sold => "sold",
        _ => "gone",
    };

    public static string Of(PrepaidCover covers) => covers switch
    {
        PrepaidCover.Labour => "labour",
        _ => "labour and strings",
    };

    public static string Of(VisitWork work) => Languages.English.Of(work);

    public static string Of(StopKind kind) => kind switch
    {
        StopKind.Bench => "another bench",
        StopKind.Desk => "a desk",
        _ => "a drop box",
    };

    public static string Of(MachineKind kind) => kind switch
    {
        MachineKind.DropWeight => "drop weight",
        MachineKind.Crank => "crank",
        _ => "electronic constant pull",
    };

    public static string Of(JobDeed deed) => deed switch
    {
        JobDeed.TakenIn => "Taken in",
        JobDeed.Came => "Came in",
        JobDeed.Started => "Started",
        JobDeed.Strung => "Strung",
        JobDeed.HandedOut => "Handed out",
        JobDeed.Cancelled => "Cancelled",
        JobDeed.TakenBack => "One step back",
        JobDeed.Changed => "Ticket changed",
        JobDeed.Moved => "Moved to another racket",
        JobDeed.Told => "Client told",
        JobDeed.Measured => "Reading noted",
        JobDeed.Inspected => "Condition noted",
        JobDeed.Photographed => "Photo added",
        JobDeed.PhotoRemoved => "Photo removed",
        JobDeed.Fetched => "Fetched",
        JobDeed.Brought => "Brought",
        JobDeed.Done => "Done",
        _ => throw new ArgumentOutOfRangeException(nameof(deed)),
    };

    public static string Of(RacketPart part) => part switch
    {
        RacketPart.Frame => "Frame",
        RacketPart.Grommets => "Grommets",
        RacketPart.Bumper => "Bumper guard",
        _ => "Grip",
    };

    public static string Of(PartState state) => state switch
    {
        PartState.Fine => "fine",
        PartState.Worn => "worn",
        _ => "damaged",
    };

    public static string Of(JobState state) => state switch
    {
        JobState.Waiting => "waiting",
        JobState.OnMachine => "on the machine",
        JobState.Strung => "strung",
        JobState.Collected => "collected",
        _ => "cancelled",
    };

    public static string Of(JobState state, bool isVisit) => isVisit && state == JobState.Strung ? "done" : Of(state);

    public static string Of(BedEnd end) => end switch
    {
        BedEnd.Wear => "broke from wear",
        BedEnd.Mishit => "broke on a mishit",
        BedEnd.Grommet => "broke at a grommet",
        BedEnd.Machine => "broke on the machine",
        BedEnd.CutOut => "cut out unbroken",
        _ => "unknown",
    };

    public static string Of(Hitting hitting) => hitting switch
    {
        Hitting.Easy => "easy on strings",
        Hitting.Average => "average on strings",
        _ => "hard on strings",
    };

    public static string Of(RestringRule rule) => rule switch
    {
        RestringRule.TimesAWeek => "as many times a year as they play a week",
        RestringRule.WhicheverFirst => "whichever limit comes first",
        RestringRule.Hours => "by hours played",
        RestringRule.EveryWeeks => "every so many weeks",
        _ => "on a fixed date",
    };

    public static string Of(RestringState state) => state switch
    {
        RestringState.Good => "good",
        RestringState.DueSoon => "due soon",
        RestringState.Past => "past its date",
        RestringState.NoStrings => "no strings in it",
        RestringState.NotStrungYet => "not strung here yet",
        _ => "not in play",
    };

    public static string Of(LimitKind kind) => kind switch
    {
        LimitKind.TimesAWeek => "times a week",
        LimitKind.Hours => "hours played",
        LimitKind.Tension => "tension lost",
        LimitKind.Breakage => "breakage",
        LimitKind.EveryWeeks => "weeks agreed",
        LimitKind.Age => "largest age",
        _ => "the shop’s own date",
    };

    public static string Of(FoundChoice choice) => choice switch
    {
        FoundChoice.Shop => "the shop’s contact details only",
        FoundChoice.Message => "messages passed on",
        _ => "contact details shown while lost, and messages",
    };

    public static string Of(Supplier supplier) => supplier == Supplier.Shop ? "the shop" : "the client";

    public static string Of(TensionUnit unit) => unit == TensionUnit.Lb ? "lb" : "kg";

    public static string Of(ReadingScale scale) => scale == ReadingScale.Stiffness ? "stiffness-like number" : "pitch in Hz";
}
