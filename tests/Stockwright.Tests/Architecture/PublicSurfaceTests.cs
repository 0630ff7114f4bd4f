using System.Reflection;
using System.Runtime.CompilerServices;
using Xunit;

namespace Stockwright.Tests.Architecture;

/// <summary>What other assemblies may use of the core stands in a list, so that a change of it is seen and meant.</summary>
public sealed class PublicSurfaceTests
{
    private const string Renew = "STOCKWRIGHT_RENEW_SURFACE=1 dotnet run --project tests/Stockwright.Tests -- -class \"*PublicSurfaceTests\"";

    private const BindingFlags Own = BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly;

    /// <summary>What the compiler writes for every record.</summary>
    private static readonly HashSet<string> OfRecords =
        new(StringComparer.Ordinal) { "<Clone>$", "Deconstruct", "EqualityContract", "Equals", "GetHashCode", "PrintMembers", "ToString", "op_Equality", "op_Inequality" };

    [Fact]
    public void The_public_surface_is_the_one_recorded()
    {
        string file = Recorded();
        string[] now = [.. typeof(Stockwright.Planning.BatchPlanner).Assembly.GetExportedTypes().SelectMany(Lines).Order(StringComparer.Ordinal)];
        Assert.True(now.Length > 500);
        if (Environment.GetEnvironmentVariable("STOCKWRIGHT_RENEW_SURFACE") is { Length: > 0 })
        {
            File.WriteAllText(file, string.Join('\n', now) + "\n");
        }

        string[] before = File.Exists(file) ? File.ReadAllLines(file) : [];
        string[] changes = [.. now.Except(before, StringComparer.Ordinal).Select(line => "+ " + line), .. before.Except(now, StringComparer.Ordinal).Select(line => "- " + line)];
        Assert.True(changes.Length == 0 && now.Length == before.Length, $"""
            The public surface of the core changed. If that is meant, renew the list and look at its difference:
                {Renew}
            {string.Join('\n', changes)}
            """);
    }

    private static IEnumerable<string> Lines(Type type)
    {
        string name = Name(type);
        yield return $"{name} : {Kind(type)}";
        if (typeof(Delegate).IsAssignableFrom(type))
        {
            yield break;
        }

        foreach (MemberInfo member in type.GetMembers(Own))
        {
            string? text = member switch
            {
                FieldInfo { IsSpecialName: false } field when Shown(field.Attributes & FieldAttributes.FieldAccessMask) => type.IsEnum ? "" : " : " + Name(field.FieldType),
                PropertyInfo property when Accessors(property) is { Length: > 0 } accessors => $" : {Name(property.PropertyType)} {{ {accessors} }}",
                ConstructorInfo { IsStatic: false } made when Shown(made.Attributes) && !IsCopy(made) => Parameters(made),
                MethodInfo { IsSpecialName: false } method when Shown(method.Attributes) => $"{Arguments(method)}{Parameters(method)} : {Name(method.ReturnType)}",
                _ => null,
            };
            if (text is not null && !OfRecords.Contains(member.Name))
            {
                yield return $"{name}.{(member is ConstructorInfo ? "new" : member.Name)}{text}";
            }
        }
    }

    private static string Kind(Type type) => type switch
    {
        { IsEnum: true } => "enum",
        { IsInterface: true } => "interface",
        { IsValueType: true } => "struct",
        _ when typeof(Delegate).IsAssignableFrom(type) => "delegate" + Parameters(type.GetMethod("Invoke")!),
        { IsAbstract: true, IsSealed: true } => "static class",
        { IsAbstract: true } => "abstract class",
        _ => "class",
    };

    private static bool Shown(MethodAttributes attributes) =>
        (attributes & MethodAttributes.MemberAccessMask) is MethodAttributes.Public or MethodAttributes.Family or MethodAttributes.FamORAssem;

    private static bool Shown(FieldAttributes access) => access is FieldAttributes.Public or FieldAttributes.Family or FieldAttributes.FamORAssem;

    private static string Accessors(PropertyInfo property) => string.Join(' ', new[]
    {
        property.GetMethod is { } get && Shown(get.Attributes) ? "get;" : null,
        property.SetMethod is { } set && Shown(set.Attributes) ? set.ReturnParameter.GetRequiredCustomModifiers().Contains(typeof(IsExternalInit)) ? "init;" : "set;" : null,
    }.OfType<string>());

    private static bool IsCopy(ConstructorInfo made) => made.GetParameters() is [{ } only] && only.ParameterType == made.DeclaringType;

    private static string Parameters(MethodBase method) => $"({string.Join(", ", method.GetParameters().Select(parameter =>
        $"{(parameter.IsOut ? "out " : parameter.ParameterType.IsByRef ? "ref " : "")}{Name(parameter.ParameterType)} {parameter.Name}{(parameter.IsOptional ? "?" : "")}"))})";

    private static string Arguments(MethodInfo method) => method.IsGenericMethod ? $"<{string.Join(", ", method.GetGenericArguments().Select(Name))}>" : "";

    private static string Name(Type type)
    {
        if (type.IsByRef)
        {
            return Name(type.GetElementType()!);
        }

        if (type.IsArray)
        {
            return Name(type.GetElementType()!) + "[]";
        }

        if (Nullable.GetUnderlyingType(type) is { } inner)
        {
            return Name(inner) + "?";
        }

        if (type.IsGenericParameter)
        {
            return type.Name;
        }

        bool isOurs = type.Namespace?.StartsWith("Stockwright", StringComparison.Ordinal) == true;
        string name = type.DeclaringType is { } outer ? $"{Name(outer)}.{type.Name}" : isOurs ? $"{type.Namespace}.{type.Name}" : type.Name;
        int tick = name.LastIndexOf('`');
        return tick < 0 ? name : $"{name[..tick]}<{string.Join(", ", type.GetGenericArguments().Select(Name))}>";
    }

    private static string Recorded([CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "public-surface.txt");
}
