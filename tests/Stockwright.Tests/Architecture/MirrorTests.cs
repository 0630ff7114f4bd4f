using Xunit;

namespace Stockwright.Tests.Architecture;

/// <summary>A test is found where its subject stands: the folders of the tests are those of the core.</summary>
public sealed class MirrorTests
{
    private const string Tests = "Stockwright.Tests.";

    private static readonly Type[] Core = typeof(Stockwright.Planning.BatchPlanner).Assembly.GetTypes();

    private static readonly Type[] Classes =
    [
        .. typeof(MirrorTests).Assembly.GetTypes().Where(type => type.Name.EndsWith("Tests", StringComparison.Ordinal) && type.Namespace is not "Stockwright.Tests.Architecture"),
    ];

    [Fact]
    public void Every_folder_of_tests_is_one_of_the_core()
    {
        HashSet<string?> folders = [.. Core.Select(type => type.Namespace)];
        Assert.True(Classes.Length > 90);
        Assert.Empty(Classes.Where(type => !folders.Contains(Subject(type))).Select(type => type.FullName));
    }

    [Fact]
    public void A_test_named_after_a_type_stands_in_its_folder()
    {
        ILookup<string, string?> homes = Core.Where(type => !type.IsNested).ToLookup(type => type.Name, type => type.Namespace, StringComparer.Ordinal);
        Assert.Empty(Classes.Where(type => homes[type.Name[..^"Tests".Length]] is var at && at.Any() && !at.Contains(Subject(type), StringComparer.Ordinal)).Select(type => type.FullName));
    }

    private static string Subject(Type test) => "Stockwright." + test.Namespace?[Tests.Length..];
}
