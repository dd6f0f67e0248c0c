using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Style;

public sealed class LockTests
{
    [Fact]
    public void Every_project_has_its_lock_file_and_none_names_where_packages_come_from()
    {
        var projects = Repository.Files("src", "*.csproj").Concat(Repository.Files("tests", "*.csproj")).ToList();

        Assert.NotEmpty(projects);
        Assert.All(projects, project =>
        {
            var text = File.ReadAllText(Path.Combine(Repository.Folder, Path.GetDirectoryName(project)!, "packages.lock.json"));
            Assert.Contains("\"net10.0\"", text, StringComparison.Ordinal);
            Assert.DoesNotContain("://", text, StringComparison.Ordinal);
        });
    }
}
