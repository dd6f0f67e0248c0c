using TagPage.Core.Units;

namespace TagPage.Core.Tests;

public class PurityTests
{
    [Fact]
    public void Core_stands_on_the_runtime_alone() =>
        Assert.All(typeof(Tension).Assembly.GetReferencedAssemblies(), name => Assert.StartsWith("System.", name.Name));
}
