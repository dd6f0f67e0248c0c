using TagPage.Core.Tags;

namespace TagPage.Labels.Content;

/// <summary>The tag a label carries.</summary>
/// <param name="Code">Its code.</param>
/// <param name="BaseAddress">The shop's own address, such as https://tag.example.</param>
/// <param name="Purpose">Words that say what the square is for.</param>
public sealed record LabelTag(TagCode Code, string BaseAddress, string Purpose)
{
    /// <summary>Whether the address stands in words beside its square; without a square it always does.</summary>
    public bool InWords { get; init; }

    /// <summary>What the square holds.</summary>
    public string Address => $"{BaseAddress}/t/{Code}";

    /// <summary>What a person types: the address without its scheme, and the code in groups.</summary>
    public IReadOnlyList<string> Typed => [$"{ShortBase}/t/", Code.Display];

    private string ShortBase => BaseAddress[(BaseAddress.IndexOf("://", StringComparison.Ordinal) is var at and >= 0 ? at + 3 : 0)..];
}
