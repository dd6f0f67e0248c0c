using System.ComponentModel.DataAnnotations;
using TagPage.Core.Customising;
using TagPage.Core.Customising.Planning;
using TagPage.Core.Units;
using TagPage.Records.Customising;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>What the forms about plans ask for: what is wanted, and what to keep to. Figures stand in the shop's units.</summary>
public record WantedInput
{
    public string FormKey { get; init; } = "";

    /// <summary>The plan that was shown when it was said to be done.</summary>
    public string Seen { get; init; } = "";

    [Range(0.0, 500.0, ErrorMessage = "A racket weighs between 50 and 500 g.")]
    public decimal? Weight { get; init; }

    [Range(-40.0, 500.0, ErrorMessage = "Check the unit of the balance.")]
    public decimal? Balance { get; init; }

    [Range(30.0, 500.0, ErrorMessage = "A swing weight is between 30 and 500 kg·cm².")]
    public decimal? SwingWeight { get; init; }

    public AddedMaterial? Material { get; init; }

    public bool OnlyHandle { get; init; }

    public bool TakeOff { get; init; }

    /// <summary>Places to leave out, by where they stand in the frame's list.</summary>
    public IList<int> LeaveOut { get; init; } = [];

    /// <summary>What places carry at most in this plan; an empty one keeps to the frame's list.</summary>
    public IList<MostInput> Most { get; init; } = [];

    public PlanLocks Locks(CustomisingValues values) => new()
    {
        OnlyHandle = OnlyHandle,
        TakeOff = TakeOff,
        LeftOut = [.. LeaveOut],
        MostG = Most.Where(most => most is { Place.Length: > 0, Weight: not null }).GroupBy(most => most.Place)
            .ToDictionary(place => place.Key, place => place.Min(most => (double)new Weight(most.Weight!.Value, values.WeightUnit).Grams), StringComparer.Ordinal),
    };

    /// <summary>What no racket can measure, whatever the unit it was asked for in.</summary>
    public static IEnumerable<(string Field, string Says)> Faults(Wanted wanted)
    {
        if (SpecFaults.OfWeight((decimal?)wanted.MassG) is { } weight)
            yield return ("Input.Weight", weight);
        if (SpecFaults.OfBalance((decimal?)wanted.BalanceCm * 10) is { } balance)
            yield return ("Input.Balance", balance);
    }

    public Wanted ToWanted(CustomisingValues values, BalanceUnit balance, double lengthCm) => new()
    {
        MassG = Weight is { } weight ? (double)new Weight(weight, values.WeightUnit).Grams : null,
        BalanceCm = Balance is { } at ? (double)new Balance(at, balance).Mm((decimal)lengthCm * 10)! / 10 : null,
        SwingWeight = (double?)SwingWeight,
    };
}
