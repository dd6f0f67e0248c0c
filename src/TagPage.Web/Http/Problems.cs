using TagPage.Records.Storage;

namespace TagPage.Web.Http;

/// <summary>Which status an exception becomes. Whatever it is, the answer is the one Problem page.</summary>
internal static class Problems
{
    /// <summary>New for each program: the framework keeps its pipeline in it.</summary>
    public static ExceptionHandlerOptions Options => new()
    {
        ExceptionHandlingPath = "/problem/500",
        StatusCodeSelector = StatusOf,
    };

    private static int StatusOf(Exception broken) => broken switch
    {
        BadHttpRequestException bad => bad.StatusCode,
        _ when DatabaseFault.IsFullDisk(broken) => StatusCodes.Status507InsufficientStorage,
        _ => StatusCodes.Status500InternalServerError,
    };
}
