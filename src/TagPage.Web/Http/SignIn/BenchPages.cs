namespace TagPage.Web.Http.SignIn;

/// <summary>The one list of pages that helpers may open. A shop page that is not on it is the owner's alone.</summary>
public static class BenchPages
{
    private static readonly (string Folder, string[] Pages)[] Folders =
    [
        ("Bench", ["Index", "Due"]),
        ("Clients", ["Client", "Edit", "FirstVisit", "Found", "Index", "New"]),
        ("Customising", ["Piece", "Pieces", "Places", "Plan", "Set"]),
        ("Events", ["Index"]),
        ("Help", ["Index", "Licence"]),
        ("Hours", ["New", "Remove"]),
        ("Jobs", ["Back", "Cancel", "Condition", "DropOff", "Edit", "HandOut", "Index", "Move", "New", "Paid", "Photo", "PickUp", "Picture", "Ready", "ReadyAll", "Received", "Start", "Strung", "Together", "Undo"]),
        ("Labels", ["Desk", "Free", "Index", "Racket", "Roll", "Rolls", "Several", "Today"]),
        ("Loans", ["Back", "Index", "Lend"]),
        ("Machines", ["Index", "Machine"]),
        ("Money", ["Charge", "Receipt", "Receipts"]),
        ("Pauses", ["Edit", "New"]),
        ("Players", ["Edit", "New", "Player"]),
        ("Prepaid", ["Receipt", "Sell", "Use"]),
        ("Rackets", ["Card", "Edit", "HandOver", "Lost", "New", "Pendulum", "Spec", "SpecEdit", "WhatIf"]),
        ("Readings", ["Count", "New", "Remove"]),
        ("Search", ["Index"]),
        ("Stops", ["Round"]),
        ("Strings", ["Edit", "Index", "New"]),
        ("Visits", ["Done", "Edit", "Index", "New"]),
        ("Tags", ["Link", "New", "Qr", "Replace", "Retire"]),
    ];

    public static IReadOnlySet<string> All { get; } =
        Folders.SelectMany(folder => folder.Pages.Select(page => $"/Shop/{folder.Folder}/{page}")).ToHashSet(StringComparer.Ordinal);

    /// <summary>About the sign-in of whoever is signed in.</summary>
    public static IReadOnlySet<string> OfOwnAccount { get; } =
        new HashSet<string>(["/Account/Passkeys", "/Account/Password", "/Account/Pin", "/Account/SecondStep", "/Account/Security"], StringComparer.Ordinal);
}
