using TagPage.Core.Text;

namespace TagPage.Core.Tests.Text;

/// <summary>What is left of a sentence when a placeholder has no value.</summary>
public class ClauseTests
{
    [Theory]
    [InlineData("It is ready to collect. Price: {price}\n\nMonday 9–12", "It is ready to collect.\n\nMonday 9–12")]
    [InlineData("It is ready to collect. Price: {price}.\n\nMonday 9–12", "It is ready to collect.\n\nMonday 9–12")]
    [InlineData("Price: {price}\nBye", "\nBye")]
    [InlineData("{racket} waits, {price}.", "{racket} waits.")]
    [InlineData("Ready! You owe {price}. See you.", "Ready! See you.")]
    [InlineData("お受け取りいただけます。料金：{price}", "お受け取りいただけます。")]
    [InlineData("可以来取。价格：{price}\n祝好", "可以来取。\n祝好")]
    [InlineData("Ready at {shop}.", "Ready at {shop}.")]
    public void Clause_of_a_placeholder_goes_with_it(string phrase, string left) => Assert.Equal(left, phrase.WithoutClauseOf("price"));
}
