using System.Runtime.InteropServices;

namespace TagPage.Web.Tests.Cast;

/// <summary>Does something without the powers of the user that runs the tests: to root no folder is read-only.</summary>
internal static class Nobody
{
    public const uint Id = 65534;

    /// <summary>On a thread of its own, because Linux keeps this identity per thread.</summary>
    public static T Does<T>(Func<T> work)
    {
        var result = default(T);
        Exception? broken = null;
        var thread = new Thread(() =>
        {
            try
            {
                if (Environment.IsPrivilegedProcess)
                    _ = SetFileUser(Id);
                result = work();
            }
            catch (Exception e)
            {
                broken = e;
            }
        });
        thread.Start();
        thread.Join();
        return broken is null ? result! : throw new InvalidOperationException("It broke.", broken);
    }

    [DllImport("libc", EntryPoint = "setfsuid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int SetFileUser(uint user);
}
