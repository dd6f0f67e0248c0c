using TagPage.Records.Storage;

namespace TagPage.Records.Condition;

/// <summary>A ticket holds no more photos than this.</summary>
/// <param name="Most">As many.</param>
/// <param name="Room">How many more would fit.</param>
public sealed record TooManyPhotos(int Most, int Room) : Refusal("Photos");
