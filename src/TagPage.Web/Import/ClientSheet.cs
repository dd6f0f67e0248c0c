using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>clients.csv</summary>
internal static class ClientSheet
{
    public const string File = "clients.csv";

    private static readonly Column<string> Key = new("client", CellKinds.Key, "A key of your own, used by players.csv.") { Needed = true };
    private static readonly Column<string> Name = new("name", Kinds.Line(80), "Who is contacted; for a junior, the guardian.") { Needed = true };
    private static readonly Column<string> Phone = new("phone", Kinds.Line(40), "With or without the country’s code.");
    private static readonly Column<string> Mail = new("mail", CellKinds.Mail, "Where reminders go.");
    private static readonly Column<string> Language = new("language", CellKinds.Language, "Empty means en.");
    private static readonly Column<string> Payer = new("payer", Kinds.Line(80), "Who pays, when it is not the client. The same name, phone and email make one payer.");
    private static readonly Column<string> PayerPhone = new("payer_phone", Kinds.Line(40), "The payer’s.");
    private static readonly Column<string> PayerMail = new("payer_mail", CellKinds.Mail, "The payer’s.");
    private static readonly Column<bool?> Reminders = new("reminders", Kinds.YesNo, "Whether this client wants restring reminders. Empty means yes.");
    private static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");

    public static Sheet Sheet { get; } = new(File, "The people you write to and call.",
        [Key, Name, Phone, Mail, Language, Payer, PayerPhone, PayerMail, Reminders, Note]);

    public static void Read(SheetRow row, ImportContext context) => context.Batch.Clients.Add(row, Key, new ClientRow
    {
        Line = row.Line,
        Name = row.Get(Name) ?? "",
        Phone = context.Phone(row, Phone),
        Mail = row.Get(Mail),
        Language = row.Get(Language) ?? "en",
        Payer = ReadPayer(row, context),
        Reminders = row.Get(Reminders) ?? true,
        Note = row.Get(Note) ?? "",
    });

    private static PayerRow? ReadPayer(SheetRow row, ImportContext context)
    {
        var (name, phone, mail) = (row.Get(Payer), context.Phone(row, PayerPhone), row.Get(PayerMail));
        if (name is null && (phone ?? mail) is not null)
            row.Refuse(Payer, "Name the payer whose phone or email this is.");
        return name is null ? null : new PayerRow(name, phone, mail);
    }
}
