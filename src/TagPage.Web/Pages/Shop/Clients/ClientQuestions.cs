using TagPage.Records.Clients;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Clients;

/// <summary>A client who may already be on file.</summary>
internal static class ClientQuestions
{
    public static IReadOnlyList<Question> Of(ClientStore.SameReach same) =>
    [
        .. Of(nameof(ClientInput.Phone), same.Phone, "phone number"),
        .. Of(nameof(ClientInput.Mail), same.Mail, "email address"),
    ];

    private static IEnumerable<Question> Of(string field, string? name, string what)
    {
        if (name is not null)
            yield return new Question(field, $"{name} already has this {what}. Open that record, or tick below to add a second client.");
    }
}
