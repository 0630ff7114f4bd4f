using System.Diagnostics;
using Xunit;

namespace Stockwright.Storage.Tests.Sqlite;

/// <summary>A real disk of a few megabytes, in memory, that can be filled and made read-only. Needs Linux and the right to mount.</summary>
public sealed class SmallDisk : IDisposable
{
    private readonly DirectoryInfo folder;

    private SmallDisk(DirectoryInfo folder) => this.folder = folder;

    public string Folder => folder.FullName;

    private string Filler => Path.Combine(Folder, "filler");

    /// <summary>Mounts one; skips the test where that is not allowed.</summary>
    public static SmallDisk Mount(int megabytes)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.IsPrivilegedProcess, "Mounting a small disk needs Linux and root.");
        DirectoryInfo place = Directory.CreateTempSubdirectory("stockwright-disk-");
        if (Run("mount", "-t", "tmpfs", "-o", $"size={megabytes}m", "stockwright-test", place.FullName) != 0)
        {
            place.Delete();
            Assert.Skip("This machine does not let us mount a small disk.");
        }

        return new SmallDisk(place);
    }

    /// <summary>Writes until nothing more goes on it.</summary>
    public void Fill()
    {
        using FileStream file = new(Filler, FileMode.Create, FileAccess.Write, FileShare.None, bufferSize: 0);
        byte[] block = new byte[1024];
        try
        {
            while (true)
            {
                file.Write(block);
                file.Flush(flushToDisk: true);
            }
        }
        catch (IOException)
        {
        }
    }

    public void MakeRoom() => File.Delete(Filler);

    /// <summary>Nothing may have a file open for writing.</summary>
    public void MakeReadOnly() => Assert.Equal(0, Run("mount", "-o", "remount,ro", Folder));

    public void MakeWritable() => Assert.Equal(0, Run("mount", "-o", "remount,rw", Folder));

    public void Dispose()
    {
        if (Run("umount", Folder) != 0)
        {
            Run("umount", "--lazy", Folder);
        }

        folder.Delete();
    }

    private static int Run(string program, params string[] arguments)
    {
        using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true, UseShellExecute = false })!;
        process.WaitForExit();
        return process.ExitCode;
    }
}
