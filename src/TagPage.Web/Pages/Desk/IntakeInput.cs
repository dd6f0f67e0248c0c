using System.ComponentModel.DataAnnotations;
using TagPage.Core.Jobs;
using TagPage.Core.Units;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Web.Http.Forms;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>What is asked for at the desk.</summary>
public record IntakeInput
{
    /// <summary>What a racket may be said to take.</summary>
    public const int LeastMinutes = 5, MostMinutes = 240;

    public string FormKey { get; init; } = "";

    [StringLength(60, ErrorMessage = "Keep it within 60 characters.")]
    public string? Team { get; init; }

    public long? MainsId { get; init; }

    /// <summary>Null for the same string as the mains.</summary>
    public long? CrossesId { get; init; }

    public NewStringInput NewString { get; init; } = new();

    public Supplier MainsSuppliedBy { get; init; } = Supplier.Client;

    /// <summary>Null for the mains'.</summary>
    public Supplier? CrossesSuppliedBy { get; init; }

    [Required(ErrorMessage = "Enter the tension of the mains.")]
    public decimal? MainsTension { get; init; }

    public decimal? CrossesTension { get; init; }

    public TensionUnit TensionUnit { get; init; }

    public DateOnly? Day { get; init; }

    /// <summary>Times of that day, as typed.</summary>
    [StringLength(5, ErrorMessage = TimeField.Ask)]
    public string? NeededAt { get; init; }

    [StringLength(5, ErrorMessage = TimeField.Ask)]
    public string? NotBeforeAt { get; init; }

    public bool OnCourt { get; init; }

    public long? KeptFor { get; init; }

    [Range(LeastMinutes, MostMinutes, ErrorMessage = "Enter between 5 and 240 minutes.")]
    public int? Minutes { get; init; }

    [StringLength(40, ErrorMessage = "Keep the stencil within 40 characters.")]
    public string? Stencil { get; init; }

    [StringLength(20, ErrorMessage = "Keep the colour within 20 characters.")]
    public string? StencilColour { get; init; }

    /// <summary>In the shop's currency; null for the event's price list.</summary>
    public decimal? Price { get; init; }

    [StringLength(200, ErrorMessage = "Keep the note within 200 characters.")]
    public string? Note { get; init; }

    public string? Confirmed { get; init; }

    /// <summary>Times that are none.</summary>
    public IEnumerable<FieldFault> Faults()
    {
        if (NeededAt is not null && TimeField.Read(NeededAt) is null)
            yield return new FieldFault(nameof(NeededAt), TimeField.Ask);
        if (NotBeforeAt is not null && TimeField.Read(NotBeforeAt) is null)
            yield return new FieldFault(nameof(NotBeforeAt), TimeField.Ask);
    }

    public JobOrder ToOrder() => new()
    {
        MainsId = MainsId,
        CrossesId = CrossesId,
        NewString = NewString.ToEntry(),
        MainsSuppliedBy = MainsSuppliedBy,
        CrossesSuppliedBy = CrossesSuppliedBy,
        MainsTension = MainsTension is { } mains ? new Tension(mains, TensionUnit) : null,
        CrossesTension = CrossesTension is { } crosses ? new Tension(crosses, TensionUnit) : null,
        Price = Price,
    };

    /// <param name="today">The day of times where none was chosen.</param>
    public IntakeEntry ToEntry(DateOnly today) => new()
    {
        FormKey = FormKey,
        Team = Team,
        Order = new JobEntry
        {
            MainsId = MainsId,
            CrossesId = CrossesId,
            NewString = NewString.ToEntry(),
            MainsSuppliedBy = MainsSuppliedBy,
            CrossesSuppliedBy = CrossesSuppliedBy,
            MainsTension = MainsTension ?? 0,
            CrossesTension = CrossesTension,
            TensionUnit = TensionUnit,
            Price = Price,
            Note = Note,
        },
        NeededBy = At(today, NeededAt),
        NotBefore = At(today, NotBeforeAt),
        OnCourt = OnCourt,
        KeptFor = KeptFor,
        Minutes = Minutes,
        Stencil = Stencil,
        StencilColour = StencilColour,
    };

    private DateTime? At(DateOnly today, string? time) => TimeField.Read(time) is { } at ? (Day ?? today).ToDateTime(at) : null;

    /// <summary>The same again as at the last round, or as on the racket's last ticket.</summary>
    public static IntakeInput Fill(IntakeInput empty, EntryRow? round, JobRow? last, DateOnly day, TensionUnit unit)
    {
        var fresh = empty with { FormKey = Records.Storage.FormKey.New(), Day = day, TensionUnit = unit };
        if (round is not null)
            return AsIn(fresh, round);
        return last is null ? fresh : fresh with
        {
            MainsId = last.MainsId,
            CrossesId = last.IsHybrid ? last.CrossesId : null,
            MainsSuppliedBy = last.MainsSuppliedBy,
            CrossesSuppliedBy = last.CrossesSuppliedBy == last.MainsSuppliedBy ? null : last.CrossesSuppliedBy,
            MainsTension = last.MainsTension,
            CrossesTension = last.CrossesTension == last.MainsTension ? null : last.CrossesTension,
            TensionUnit = last.TensionUnit,
        };
    }

    /// <summary>All that is said about a racket at the desk, its times too.</summary>
    public static IntakeInput Of(IntakeInput empty, EntryRow racket, DateOnly day) => AsIn(empty, racket) with
    {
        FormKey = Records.Storage.FormKey.New(),
        Day = day,
        NeededAt = Time(racket.NeededBy),
        NotBeforeAt = Time(racket.NotBefore),
        OnCourt = racket.OnCourt,
        Minutes = racket.Minutes,
        Note = racket.Note,
    };

    private static IntakeInput AsIn(IntakeInput input, EntryRow round) => input with
    {
        Team = round.Team,
        MainsId = round.MainsId,
        CrossesId = round.IsHybrid ? round.CrossesId : null,
        MainsSuppliedBy = round.MainsSuppliedBy,
        CrossesSuppliedBy = round.CrossesSuppliedBy == round.MainsSuppliedBy ? null : round.CrossesSuppliedBy,
        MainsTension = round.MainsTension,
        CrossesTension = round.CrossesTension == round.MainsTension ? null : round.CrossesTension,
        TensionUnit = round.TensionUnit,
        KeptFor = round.KeptFor,
        Stencil = round.Stencil,
        StencilColour = round.StencilColour,
    };

    private static string? Time(DateTime? at) => at is { } known ? DeskWords.Clock(known) : null;
}
