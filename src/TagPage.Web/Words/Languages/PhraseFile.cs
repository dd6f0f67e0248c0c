using System.Text.Json;
using System.Text.Json.Serialization;

namespace TagPage.Web.Words;

/// <summary>Reads a language's file, embedded in the program.</summary>
public static class PhraseFile
{
    private static readonly JsonSerializerOptions Strict = new(JsonSerializerDefaults.Web)
    {
        PropertyNameCaseInsensitive = false,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
    };

    /// <exception cref="InvalidOperationException">A phrase is missing, empty, or unknown.</exception>
    public static Phrases Read(string code) => Read<Phrases>($"TagPage.Web.Words.Languages.{code}.json");

    /// <param name="json">The file.</param>
    /// <param name="name">Its name, for the error.</param>
    /// <exception cref="InvalidOperationException">A phrase is missing, empty, or unknown.</exception>
    public static Phrases Read(Stream json, string name) => Read<Phrases>(json, name);

    /// <summary>Whether the program was built with such a file.</summary>
    public static bool Has(string name) => typeof(PhraseFile).Assembly.GetManifestResourceInfo(name) is not null;

    /// <summary>The same for a file of other words.</summary>
    /// <exception cref="InvalidOperationException">A phrase is missing, empty, or unknown.</exception>
    public static T Read<T>(string name)
    {
        using var stream = typeof(PhraseFile).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"The program was built without {name}.");
        return Read<T>(stream, name);
    }

    private static T Read<T>(Stream json, string name)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            RefuseEmpty(document.RootElement, name);
            return document.Deserialize<T>(Strict)!;
        }
        catch (JsonException e)
        {
            throw new InvalidOperationException($"{name}: {e.Message}", e);
        }
    }

    private static void RefuseEmpty(JsonElement element, string path)
    {
        if (element.ValueKind == JsonValueKind.Object)
            foreach (var property in element.EnumerateObject())
                RefuseEmpty(property.Value, $"{path}/{property.Name}");
        else if (element.ValueKind == JsonValueKind.String && string.IsNullOrWhiteSpace(element.GetString()))
            throw new InvalidOperationException($"{path} is empty.");
    }
}
