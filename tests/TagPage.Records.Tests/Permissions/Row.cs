using System.Linq.Expressions;
using System.Reflection;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Permissions;

/// <summary>One call of a store in somebody's name, and who gets what they ask for.</summary>
internal sealed class Row
{
    private readonly Func<Scene, Who, object?> _call;

    /// <param name="may">Those who get it; for everybody else it is not there.</param>
    /// <param name="call">Exactly one call, so that the table itself says what stands in it.</param>
    /// <param name="before">SQL: what is otherwise in the scene.</param>
    public Row(Actor[] may, Expression<Func<Scene, Who, object?>> call, string before = "")
    {
        (May, Before, _call) = (may, before, call.Compile());
        var body = call.Body is UnaryExpression converted ? converted.Operand : call.Body;
        Method = ((MethodCallExpression)body).Method;
    }

    public Actor[] May { get; }

    public string Before { get; }

    public MethodInfo Method { get; }

    public string Name => $"{Method.DeclaringType!.Name}.{Method.Name}";

    public bool Writes => Method.ReturnType == typeof(Outcome);

    public object? Call(Scene scene, Who who) => _call(scene, who);
}
