using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;
using ArchUnitNET.Loader;
using Xunit;

namespace Stockwright.Web.Tests.Architecture;

/// <summary>Dependencies point one way: web, storage, core; and inside the core from the plan down to the plain numbers.</summary>
public class DependencyTests
{
    private static readonly System.Reflection.Assembly Core = typeof(Stockwright.Planning.BatchPlan).Assembly;

    private static readonly ArchUnitNET.Domain.Architecture Loaded = new ArchLoader().LoadAssembly(Core).Build();

    /// <summary>What each folder of the core may use besides itself.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Evidence"] = [],
        ["Numerics"] = [],
        ["Files"] = ["Evidence"],
        ["Measures"] = ["Evidence"],
        ["Kitchen"] = ["Evidence"],
        ["Physics"] = ["Evidence", "Numerics", "Kitchen"],
        ["Larder"] = ["Evidence", "Files", "Measures"],
        ["Recipes"] = ["Evidence", "Files", "Measures", "Kitchen", "Larder"],
        ["Simmering"] = ["Evidence", "Files", "Measures", "Numerics", "Physics", "Kitchen", "Larder", "Recipes"],
        ["Planning"] = ["Evidence", "Measures", "Numerics", "Physics", "Kitchen", "Larder", "Recipes", "Simmering"],
        ["Predicting"] = ["Evidence", "Files", "Measures", "Numerics", "Physics", "Kitchen", "Larder", "Recipes", "Simmering", "Planning"],
        ["Cooling"] = ["Evidence", "Files", "Measures", "Numerics", "Physics", "Kitchen", "Simmering"],
        ["Keeping"] = ["Evidence", "Files", "Measures", "Numerics", "Physics", "Kitchen", "Cooling"],
        ["Logbook"] = ["Evidence", "Files", "Measures", "Kitchen", "Simmering", "Predicting", "Planning", "Cooling"],
        ["Cooking"] = ["Evidence", "Measures", "Numerics", "Physics", "Kitchen", "Larder", "Recipes", "Simmering", "Planning", "Predicting", "Cooling", "Keeping", "Logbook", "Strength"],
        ["Strength"] = ["Evidence", "Measures", "Numerics", "Physics", "Kitchen", "Larder", "Simmering", "Planning", "Predicting"],
    };

    public static TheoryData<string> Folders => [.. Loaded.Types
        .Select(type => FolderOf(type.FullName)).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Folders))]
    public void Folders_of_the_core_flow_one_way(string folder)
    {
        Assert.True(Allowed.TryGetValue(folder, out string[]? allowed), $"{folder} is new: say here which folders it may use.");
        List<string> wrong = [.. Loaded.Types
            .Where(type => string.Equals(FolderOf(type.FullName), folder, StringComparison.Ordinal))
            .SelectMany(type => type.Dependencies.Select(dependency => (From: type.FullName, To: dependency.Target.FullName)))
            .Where(pair => FolderOf(pair.To) is { } target && !string.Equals(target, folder, StringComparison.Ordinal) && !allowed.Contains(target, StringComparer.Ordinal))
            .Select(pair => $"{pair.From} uses {pair.To}")
            .Distinct(StringComparer.Ordinal)];
        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    [Theory]
    [InlineData("core")]
    [InlineData("storage")]
    [InlineData("web")]
    public void The_order_of_folders_has_no_circle(string floor)
    {
        Dictionary<string, string[]> order = floor switch { "core" => Allowed, "storage" => AllowedInStorage, _ => AllowedInWeb };
        HashSet<string> settled = new(StringComparer.Ordinal);
        while (settled.Count < order.Count)
        {
            List<string> next = [.. order.Where(pair => !settled.Contains(pair.Key) && pair.Value.All(settled.Contains)).Select(pair => pair.Key)];
            Assert.NotEmpty(next);
            settled.UnionWith(next);
        }
    }

    [Fact]
    public void The_core_does_no_input_or_output_and_reads_no_clock()
    {
        using FileStream file = File.OpenRead(Core.Location);
        using PEReader image = new(file);
        MetadataReader metadata = image.GetMetadataReader();
        List<string> types = [.. metadata.TypeReferences.Select(handle => metadata.GetTypeReference(handle))
            .Select(reference => $"{metadata.GetString(reference.Namespace)}.{metadata.GetString(reference.Name)}")];
        Assert.Contains("System.Math", types, StringComparer.Ordinal);
        Assert.DoesNotContain(types, type => type.StartsWith("System.Net.", StringComparison.Ordinal)
            || type.StartsWith("Microsoft.EntityFrameworkCore", StringComparison.Ordinal)
            || type.StartsWith("Microsoft.AspNetCore", StringComparison.Ordinal)
            || type is "System.IO.File" or "System.IO.Directory" or "System.IO.FileStream" or "System.IO.FileInfo" or "System.IO.DirectoryInfo" or "System.TimeProvider"
                or "System.Diagnostics.Stopwatch" or "System.Console" or "System.Random");

        List<string> clocks = [.. metadata.MemberReferences.Select(handle => metadata.GetMemberReference(handle))
            .Where(member => member.Parent.Kind == HandleKind.TypeReference)
            .Select(member => (Type: metadata.GetTypeReference((TypeReferenceHandle)member.Parent), Name: metadata.GetString(member.Name)))
            .Select(member => $"{metadata.GetString(member.Type.Name)}.{member.Name}")
            // The compiler itself asks Environment for the thread in every iterator.
            .Where(name => (name.StartsWith("Environment.", StringComparison.Ordinal) && name is not "Environment.get_CurrentManagedThreadId")
                || name is "DateTime.get_Now" or "DateTime.get_UtcNow" or "DateTime.get_Today" or "DateTimeOffset.get_Now" or "DateTimeOffset.get_UtcNow")];
        Assert.Empty(clocks);
    }

    [Theory]
    [InlineData("Stockwright", new[] { "Stockwright.Storage", "Stockwright.Storage.Sqlite", "Stockwright.Web", "Microsoft.EntityFrameworkCore", "Microsoft.AspNetCore.Components" })]
    [InlineData("Stockwright.Storage", new[] { "Stockwright.Storage.Sqlite", "Stockwright.Web", "Microsoft.AspNetCore.Components", "Microsoft.AspNetCore.Http" })]
    [InlineData("Stockwright.Storage.Sqlite", new[] { "Stockwright.Web", "Microsoft.AspNetCore.Components", "Microsoft.AspNetCore.Http" })]
    public void Assemblies_point_one_way(string assembly, string[] forbidden)
    {
        System.Reflection.Assembly loaded = System.Reflection.Assembly.Load(assembly);
        Assert.DoesNotContain(loaded.GetReferencedAssemblies(), reference => forbidden.Contains(reference.Name, StringComparer.Ordinal));
    }

    /// <summary>What each folder of the web may use of its others besides itself: a feature is named with its own folder.</summary>
    private static readonly Dictionary<string, string[]> AllowedInWeb = new(StringComparer.Ordinal)
    {
        ["Wording"] = ["Fields"],
        ["Drawing"] = [],
        ["Fields"] = [],
        ["Shell"] = ["Fields"],
        ["Features.Kitchen"] = ["Shell", "Wording", "Drawing", "Fields"],
        ["Features.Larder"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen"],
        ["Features.Recipes"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen", "Features.Larder"],
        ["Features.Cooling"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen"],
        ["Features.Keeping"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen", "Features.Cooling"],
        ["Features.Strength"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen"],
        ["Features.Planning"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen", "Features.Larder", "Features.Cooling", "Features.Strength"],
        ["Features.Cooking"] = ["Shell", "Wording", "Drawing", "Fields", "Features.Kitchen", "Features.Cooling", "Features.Planning"],
    };

    private static readonly ArchUnitNET.Domain.Architecture LoadedWeb = new ArchLoader().LoadAssembly(typeof(Program).Assembly).Build();

    public static TheoryData<string> WebFolders => [.. LoadedWeb.Types
        .Select(type => WebFolderOf(type.FullName)).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(WebFolders))]
    public void Folders_of_the_web_flow_one_way(string folder)
    {
        Assert.True(AllowedInWeb.TryGetValue(folder, out string[]? allowed), $"{folder} is new: say here which folders it may use.");
        List<string> wrong = [.. LoadedWeb.Types
            .Where(type => string.Equals(WebFolderOf(type.FullName), folder, StringComparison.Ordinal))
            .SelectMany(type => type.Dependencies.Select(dependency => (From: type.FullName, To: dependency.Target.FullName)))
            .Where(pair => WebFolderOf(pair.To) is { } target && !string.Equals(target, folder, StringComparison.Ordinal) && !allowed.Contains(target, StringComparer.Ordinal))
            .Select(pair => $"{pair.From} uses {pair.To}")
            .Distinct(StringComparer.Ordinal)];
        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    /// <summary>What each folder of the storage may use of its others besides itself; what they share stands above them.</summary>
    private static readonly Dictionary<string, string[]> AllowedInStorage = new(StringComparer.Ordinal)
    {
        ["Kitchen"] = [],
        ["Larder"] = [],
        ["Recipes"] = [],
        ["Plans"] = ["Larder", "Recipes"],
        ["Batches"] = ["Kitchen", "Plans"],
        ["Demo"] = ["Kitchen", "Plans"],
    };

    private static readonly ArchUnitNET.Domain.Architecture LoadedStorage = new ArchLoader().LoadAssembly(typeof(Stockwright.Storage.StockwrightContext).Assembly).Build();

    public static TheoryData<string> StorageFolders => [.. LoadedStorage.Types
        .Select(type => StorageFolderOf(type.FullName)).OfType<string>().Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(StorageFolders))]
    public void Folders_of_the_storage_flow_one_way(string folder)
    {
        Assert.True(AllowedInStorage.TryGetValue(folder, out string[]? allowed), $"{folder} is new: say here which folders it may use.");
        List<string> wrong = [.. LoadedStorage.Types
            .Where(type => string.Equals(StorageFolderOf(type.FullName), folder, StringComparison.Ordinal))
            .SelectMany(type => type.Dependencies.Select(dependency => (From: type.FullName, To: dependency.Target.FullName)))
            .Where(pair => StorageFolderOf(pair.To) is { } target && !string.Equals(target, folder, StringComparison.Ordinal) && !allowed.Contains(target, StringComparer.Ordinal))
            .Select(pair => $"{pair.From} uses {pair.To}")
            .Distinct(StringComparer.Ordinal)];
        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    private static string? StorageFolderOf(string fullName) => fullName.Split('/', '+', '<')[0].Split('.') is ["Stockwright", "Storage", { } folder and not "Sqlite", _, ..] ? folder : null;

    private static string? WebFolderOf(string fullName) => fullName.Split('.', '/', '+', '<') switch
    {
        ["Stockwright", "Web", "Features", { } feature, _, ..] => $"Features.{feature}",
        ["Stockwright", "Web", { } folder and not "Features", _, ..] => folder,
        _ => null,
    };

    private static string? FolderOf(string fullName)
    {
        string[] parts = fullName.Split('.', 3);
        return parts is ["Stockwright", { } folder, _] && folder.All(char.IsAsciiLetter) ? folder : null;
    }
}
