using TagPage.Records.Storage;

namespace TagPage.Records.WholeShop;

/// <summary>The shop has records of its own already.</summary>
public sealed record ShopInUse(string Table) : Refusal("Sent");

/// <summary>A file of a shop that moved does not fit.</summary>
/// <param name="File">Whose name it has in the zip.</param>
/// <param name="Line">Counted from 1 with the header; 0 for the file as a whole.</param>
/// <param name="Column">Empty for the whole line.</param>
/// <param name="Why">What is wrong with it.</param>
public sealed record ShopFileWrong(string File, int Line, string Column, ShopFileFault Why) : Refusal("Sent");

public enum ShopFileFault { FileMissing, UnknownColumn, MissingColumn, NoNumber, NoBytes, CellsMissing, NoFile, DoesNotFit, RefersToNothing }
