namespace TagPage.Web.Pages.Shared;

/// <summary>The form to type a tag's code.</summary>
/// <param name="Typed">What was typed before, shown again.</param>
/// <param name="Error">What to do about it.</param>
public sealed record CodeForm(string? Typed = null, string? Error = null);
