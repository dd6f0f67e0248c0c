using System.Collections;
using System.Reflection;
using Microsoft.AspNetCore.Http;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>One value that a page binds: the name it has in a form or a query, and its type.</summary>
public sealed record FormField(string Name, Type Type)
{
    private static readonly HashSet<Type> Numbers = [typeof(int), typeof(long), typeof(short), typeof(byte), typeof(decimal), typeof(double), typeof(float)];

    public bool IsNumber => Numbers.Contains(Type);

    /// <summary>The rest are ids, which people choose; one that names nothing is passed over or refused as each page sees fit.</summary>
    public bool IsTyped => IsNumber && Type != typeof(long);

    /// <summary>What is bound under one name: itself, or the properties of an input.</summary>
    public static IEnumerable<FormField> Of(Type given, string name)
    {
        var type = Nullable.GetUnderlyingType(given) ?? given;
        if (type == typeof(string) || type.IsEnum || type.Namespace == nameof(System))
            return [new FormField(name, type)];
        if (typeof(IFormFile).IsAssignableFrom(type) || typeof(IFormFileCollection).IsAssignableFrom(type))
            return [];
        if (typeof(IEnumerable).IsAssignableFrom(type))
            return Of(type.IsArray ? type.GetElementType()! : type.GetGenericArguments()[^1], name + "[0]");
        return type.GetProperties(BindingFlags.Public | BindingFlags.Instance).Where(p => p.CanWrite).SelectMany(p => Of(p.PropertyType, $"{name}.{p.Name}"));
    }
}
