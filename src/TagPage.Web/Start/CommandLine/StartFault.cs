using System.Net.Sockets;
using Microsoft.AspNetCore.Connections;
using TagPage.Records.Storage;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Start-up errors that the owner can fix, in words. All others keep their stack trace.</summary>
public static class StartFault
{
    public static string? Sentence(Exception fault) => fault switch
    {
        CannotStartException => fault.Message,
        UnsoundBackupException => $"{fault.Message}. Nothing was changed. See “A bad day” in the manual.",
        IOException { InnerException: AddressInUseException } =>
            $"{fault.Message} Stop the program that listens there, or choose another port: --urls http://localhost:5081",
        SocketException { SocketErrorCode: SocketError.AccessDenied } =>
            "This user is not allowed to listen on that port. Choose one above 1023, such as --urls http://localhost:5080",
        SocketException { SocketErrorCode: SocketError.AddressNotAvailable } or IOException { InnerException: SocketException { SocketErrorCode: SocketError.AddressNotAvailable } } =>
            "This machine does not have the address that --urls names. Choose http://localhost:5080 or http://0.0.0.0:5080",
        FormatException when fault.Message.StartsWith("Invalid url", StringComparison.Ordinal) =>
            "The setting urls cannot be read. Write it as --urls http://localhost:5080",
        UnauthorizedAccessException => $"{fault.Message} Choose a data folder that this user can write to: --TagPage:DataFolder=…",
        _ when DatabaseFault.IsFullDisk(fault) => "The disk is full. Make room and start again.",
        _ when DatabaseFault.IsUnusableFile(fault) =>
            $"The database in the data folder cannot be opened ({fault.Message}) See “A bad day” in the manual.",
        _ => null,
    };
}
