using TagPage.Records.Tests.Cast;
using TagPage.Web.Tests.Cast;

[assembly: AssemblyFixture(typeof(TemplateFile))]

namespace TagPage.Records.Tests.Cast;

/// <summary>Deletes the template after the last test.</summary>
public sealed class TemplateFile : IDisposable
{
    public void Dispose() => Template.Delete();
}
