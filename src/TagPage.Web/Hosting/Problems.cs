using Microsoft.Data.Sqlite;

namespace TagPage.Web.Hosting;

/// <summary>Which status an exception becomes. Whatever it is, the answer is the one Problem page.</summary>
internal static class Problems
{
    private const int SqliteFull = 13;

    /// <summary>New for each program: the framework keeps its pipeline in it.</summary>
    public static ExceptionHandlerOptions Options => new()
    {
        ExceptionHandlingPath = "/problem/500",
        StatusCodeSelector = StatusOf,
    };

    public static bool IsFullDisk(Exception? broken) => broken is SqliteException { SqliteErrorCode: SqliteFull };

    private static int StatusOf(Exception broken) => broken switch
    {
        BadHttpRequestException bad => bad.StatusCode,
        _ when IsFullDisk(broken) => StatusCodes.Status507InsufficientStorage,
        _ => StatusCodes.Status500InternalServerError,
    };
}
